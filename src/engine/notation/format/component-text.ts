import { defaultStep, formOf, isSecondTwin, type Component, type Range } from '../../circuit/index.ts';
import { exactText, quantity, type Quantity } from '../../quantity/index.ts';
import { kindOfLabel } from '../fields.ts';
import { bareText, quantityText } from '../quantity-text.ts';

/** Cells as `3 × 1.5 V`; as a fraction of the whole where its decimals do not suffice for one cell. */
function cellsText(emf: Quantity, cells: number): string {
  const whole = { ...emf, value: emf.value.abs() };
  const one = bareText({ ...whole, value: whole.value.div(cells) });
  const all = bareText(whole);
  const number = one.includes('/') && /^[\d.]*$/.test(all) ? `${all}/${cells}` : one;
  return `${emf.value.s < 0n ? '-' : ''}${cells} × ${number} ${emf.prefix}${emf.unit}`;
}

/** The range of a value: bare where an end has the prefix of the value, and without the step that is understood. */
function rangeText({ value, unit, prefix }: Quantity, { min, max, step, scale }: Range): string {
  const text = (end: Quantity): string => (end.prefix === prefix ? bareText(end) : quantityText(end));
  const understood = defaultStep(min.value, max.value, value);
  const same =
    step && understood && quantityText(step) === quantityText(quantity(understood, unit, min.prefix));
  const manner = scale ?? (step && !same && `step ${text(step)}`);
  return `[${text(min)}..${text(max)}${manner ? ` ${manner}` : ''}]`;
}

/** The properties of a component in the order of the canonical form; what is absent is undefined. */
function propertyTexts(component: Component): readonly (string | undefined)[] {
  const text = (value: Quantity | undefined): string | undefined => value && quantityText(value);
  switch (component.kind) {
    case 'supply': {
      const { emf, cells, range, internalResistance: inside, internalRange } = component;
      const insideRange = inside && internalRange && rangeText(inside, internalRange);
      return [
        range && rangeText(emf, range),
        cells ? cellsText(emf, cells) : text(emf),
        inside && ['r', insideRange, quantityText(inside)].filter(Boolean).join(' '),
      ];
    }
    case 'source': {
      const { current, range } = component;
      return [range && rangeText(current, range), text(current)];
    }
    case 'resistor': {
      const { resistance, range, ratedPower, tolerance } = component;
      const percent = tolerance && `±${exactText(tolerance)}%`;
      return [range && rangeText(resistance, range), text(resistance), text(ratedPower), percent];
    }
    case 'potentiometer': {
      const { resistance, range, ratedPower } = component;
      // What both parts state is written with the first of them.
      return isSecondTwin(component)
        ? [text(resistance)]
        : [range && rangeText(resistance, range), text(resistance), text(ratedPower)];
    }
    case 'lamp':
    case 'heater':
    case 'motor': {
      const { resistance, ratedVoltage, ratedPower, ratedCurrent } = component;
      const filament = component.kind === 'lamp' && component.filament ? 'filament' : undefined;
      return [...[resistance, ratedVoltage, ratedPower, ratedCurrent].map(text), filament];
    }
    case 'diode':
    case 'led':
      return [text(component.forwardVoltage), text(component.ratedCurrent)];
    case 'fuse': {
      const { ratedCurrent, resistance, blown } = component;
      return [text(ratedCurrent), text(resistance), blown && 'blown'];
    }
    case 'switch':
    case 'push':
    case 'changeover':
      return [component.closed ? 'closed' : 'open'];
    case 'thermistor':
    case 'ldr':
    case 'ammeter':
    case 'voltmeter':
      return [text(component.resistance)];
    case 'wire':
      return [];
  }
}

/** A component in its canonical form: a kind word where the label does not say the kind, label, properties, `reversed`, `broken`
 * or `bridged`, `secretly` so, `hidden`. */
export function componentText(component: Component, reversed: boolean): string {
  const { id, kind, condition, fault, hidden } = component;
  const named = kindOfLabel(id) === kind;
  const word = kind === 'supply' ? (component.form ?? (named ? undefined : formOf(component))) : kind;
  const texts = [
    named && kind !== 'supply' ? undefined : word,
    id,
    ...propertyTexts(component),
    reversed ? 'reversed' : undefined,
    condition,
    fault && `secretly ${fault}`,
    hidden && 'hidden',
  ];
  return texts.filter((text) => text !== undefined).join(' ');
}
