import {
  isResistor,
  isSurrounding,
  isTrack,
  twinOf,
  withValue,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';

/** What may be varied: the resistance of a resistor, the e.m.f. of a supply, what is inside it (`r_B1`), a constant current, the temperature or the light. */
export type Varied = string;

/** A number as the decimal that it is written as, also where that has an exponent (`1e-9`). */
function written(value: number | Fraction): Fraction {
  if (typeof value !== 'number') return value;
  const [digits = '0', exponent = '0'] = value.toString().split('e');
  const power = new Fraction(10n ** BigInt(Math.abs(Number(exponent))));
  const decimal = new Fraction(digits);
  return exponent.startsWith('-') ? decimal.div(power) : decimal.mul(power);
}

/** The component without the ranges that bind its settings. */
function unbound(component: Component): Component {
  if (isResistor(component) || component.kind === 'source') {
    const { range, ...free } = component;
    return range ? free : component;
  }
  if (component.kind !== 'supply') return component;
  const { range, internalRange, ...free } = component;
  return range || internalRange ? free : component;
}

/**
 * The circuit with one thing at any value, also where no slider could put it. Throws CircuitFormatError where there is no such thing
 * or where it cannot have that value.
 */
export function varied(circuit: Circuit, what: Varied, value: number | Fraction): Circuit {
  if (isSurrounding(what)) return withValue(circuit, what, Number(value));
  const [, supply] = /^r_(.+)/.exec(what) ?? [];
  const id = supply ?? what;
  const components = circuit.components.map((each) =>
    each.id === id || (isTrack(each) && twinOf(each.id) === id) ? unbound(each) : each,
  );
  const exact = written(value);
  return withValue({ ...circuit, components }, id, supply ? `r ${exact.toFraction()}` : exact);
}
