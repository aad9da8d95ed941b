import {
  hasCurve,
  isResistor,
  isSettable,
  isSurrounding,
  isTrack,
  nearest,
  surroundingNames,
  twinOf,
  withValue,
  type Circuit,
  type Component,
} from '../circuit/index.ts';
import { Fraction, quantity, type Quantity } from '../quantity/index.ts';
import { say } from '../words/index.ts';

/** What may be varied: the resistance of a resistor, a lamp, a meter or whatever else obeys Ohm’s law, the e.m.f. of a supply, what is inside it (`r_B1`), a constant current, the temperature or the light. */
export type Varied = string;

/** A number as the decimal that it is written as, also where that has an exponent (`1e-9`). Throws RangeError for what is no number. */
export function written(value: number | Fraction): Fraction {
  if (typeof value !== 'number') return value;
  if (!Number.isFinite(value))
    throw new RangeError(say({ code: 'not a number', data: { found: `${value}` } }));
  const [digits = '0', exponent = '0'] = value.toString().split('e');
  const power = new Fraction(10n ** BigInt(Math.abs(Number(exponent))));
  const decimal = new Fraction(digits);
  return exponent.startsWith('-') ? decimal.div(power) : decimal.mul(power);
}

/** The component that is varied, or whose inside is. Throws RangeError, with what may have been meant, where there is none. */
export function meant({ components }: Circuit, what: Varied): Component {
  const component = components.find(({ id }) => what === id || what === `r_${id}`);
  if (component) return component;
  const ids = components.map(({ id }) => id);
  const suggestion = nearest(what, [...ids, ...surroundingNames]);
  throw new RangeError(say({ code: 'no such component', data: { id: what, suggestion } }));
}

/** A resistor in the place of a component, in the state that it is in. */
export const asResistor = (
  { id, from, to, condition, fault }: Component,
  resistance: Quantity,
): Component => ({
  id,
  kind: 'resistor',
  from,
  to,
  resistance,
  ...(condition && { condition }),
  ...(fault && { fault }),
});

/** The component without the ranges that bind its settings; a resistor in place of one whose resistance nobody sets. */
function unbound(component: Component): Component {
  if (!isSettable(component) && !hasCurve(component)) return asResistor(component, quantity(0, 'Ω'));
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
