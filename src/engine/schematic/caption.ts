import { isResistor, settingAt, type Component, type Range } from '../circuit/index.ts';
import { decimalsOf, thinSpace, writeQuantity, type Quantity } from '../quantity/index.ts';
import { labelWidth, textWidth } from './text.ts';

/** What stands beside a symbol: its label, its values, and the widths to keep free for them. */
export interface Caption {
  readonly label: string;
  /** '' if it has none. */
  readonly value: string;
  readonly labelWidth: number;
  readonly valueWidth: number;
}

function quantitiesOf(component: Component): readonly (Quantity | undefined)[] {
  switch (component.kind) {
    case 'supply':
      return [component.emf];
    case 'source':
      return [component.current];
    case 'resistor':
    case 'potentiometer':
    case 'thermistor':
    case 'ldr':
    case 'ammeter':
    case 'voltmeter':
      return [component.resistance];
    case 'diode':
    case 'led':
      return [component.forwardVoltage, component.ratedCurrent];
    case 'fuse':
      return [component.ratedCurrent, component.resistance];
    case 'lamp':
    case 'heater':
    case 'motor':
      return [component.resistance, component.ratedVoltage, component.ratedPower, component.ratedCurrent];
    case 'switch':
    case 'push':
    case 'changeover':
    case 'wire':
      return [];
  }
}

/** What is written of a component's values, its internal resistance apart. */
export function ratingsOf(component: Component): string[] {
  const ratings = quantitiesOf(component).flatMap((value) => (value ? [writeQuantity(value).text] : []));
  const tolerance = component.kind === 'resistor' ? component.tolerance : undefined;
  return tolerance ? [...ratings, `±${tolerance.toString()}${thinSpace}%`] : ratings;
}

/** The values beside a symbol: as written, '?' where they are hidden, '' where there are none. */
export function valueText(component: Component): string {
  const ratings = ratingsOf(component);
  if (component.hidden && ratings.length > 0) return '?';
  const internal = component.kind === 'supply' ? component.internalResistance : undefined;
  return [...ratings, ...(internal ? [`r ${writeQuantity(internal).text}`] : [])].join(', ');
}

/** The end of a range that takes more room, with as many figures as any setting may take. */
function widest({ unit, prefix, decimals = 0 }: Quantity, { min, max, step }: Range): Quantity {
  const steps = [min.value, step?.value ?? settingAt({ min, max, scale: 'log' }, 1)];
  const places = Math.max(decimals, ...steps.map((value) => decimalsOf(value, prefix) ?? 4));
  const [low, high] = [min, max].map(({ value }) => ({ value, unit, prefix, decimals: places }));
  const length = (end: Quantity): number => writeQuantity(end).text.length;
  return low && (!high || length(low) > length(high)) ? low : (high ?? max);
}

/** The component at the setting that takes the most room; undefined where it cannot be set. */
function atWidest(component: Component): Component | undefined {
  if (isResistor(component)) {
    const { range, resistance } = component;
    return range && { ...component, resistance: widest(resistance, range) };
  }
  if (component.kind === 'source') {
    const { range, current } = component;
    return range && { ...component, current: widest(current, range) };
  }
  if (component.kind !== 'supply') return undefined;
  const { range, internalRange, emf, internalResistance } = component;
  if (!range && !internalRange) return undefined;
  return {
    ...component,
    ...(range && { emf: widest(emf, range) }),
    ...(internalRange && {
      internalResistance: widest(internalResistance ?? internalRange.min, internalRange),
    }),
  };
}

/** The caption of a component; `value` instead of its own values as written. */
export function captionOf(component: Component, value: string = valueText(component)): Caption {
  const label = component.id;
  const ranged = component.hidden ? undefined : atWidest(component);
  const room = ranged ? valueText(ranged).replace(/\d/g, '0') : value;
  return {
    label,
    value,
    labelWidth: labelWidth(label),
    valueWidth: value === '' ? 0 : textWidth(room),
  };
}
