import { settingAt, type Component, type Range, type Resistor } from '../circuit/index.ts';
import { decimalsOf, thinSpace, writeQuantity, type Quantity } from '../quantity/index.ts';
import { bold, textWidth } from './text.ts';

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
    case 'resistor':
    case 'ammeter':
    case 'voltmeter':
      return [component.resistance];
    case 'lamp':
      return [component.resistance, component.ratedVoltage, component.ratedPower, component.ratedCurrent];
    case 'switch':
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
function valueOf(component: Component): string {
  const ratings = ratingsOf(component);
  if (component.hidden && ratings.length > 0) return '?';
  const internal = component.kind === 'supply' ? component.internalResistance : undefined;
  return [...ratings, ...(internal ? [`r ${writeQuantity(internal).text}`] : [])].join(', ');
}

/** As many figures as the widest setting of a range may take, whatever the present one is. */
function widest({ min, max, step }: Range, { resistance }: Resistor): string {
  const { prefix, decimals = 0 } = resistance;
  const steps = [min.value, step?.value ?? settingAt({ min, max, scale: 'log' }, 1)];
  const places = Math.max(decimals, ...steps.map((value) => decimalsOf(value, prefix) ?? 4));
  return writeQuantity({ value: max.value, unit: 'Ω', prefix, decimals: places }).text.replace(/\d/g, '0');
}

/** The caption of a component; `value` instead of its own values as written. */
export function captionOf(component: Component, value: string = valueOf(component)): Caption {
  const label = component.id;
  const ranged = component.kind === 'resistor' && component.range && !component.hidden;
  const room = ranged ? widest(component.range, component) : value;
  return {
    label,
    value,
    labelWidth: Math.ceil(bold * textWidth(label)),
    valueWidth: value === '' ? 0 : textWidth(room),
  };
}
