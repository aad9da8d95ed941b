import type { Circuit, Component } from '../circuit/index.ts';
import { Fraction, quantity, type Quantity } from '../quantity/index.ts';
import type { Fault, Solution } from './solution.ts';
import { solveRounded } from './solve.ts';

/** So few ohms that they only tell how a current grows that nothing else limits. */
const few = 2 ** -100;
const fewOhms = quantity(new Fraction(1n, 2n ** 100n), 'Ω');
/** So many ohms that what they drop is all that counts. */
const many = 2 ** 50;
const manyOhms = quantity(many, 'Ω');

/** The same circuit with another component in the place of one of its. */
function replaced(circuit: Circuit, id: string, change: (part: Component) => Component): Circuit {
  const components = circuit.components.map((part) => {
    if (part.id !== id) return part;
    const { condition, fault } = part;
    return { ...change(part), ...(condition && { condition }), ...(fault && { fault }) };
  });
  return { ...circuit, components };
}

/** The circuit with a resistor in the place of a component. */
const resisting = (circuit: Circuit, id: string, resistance: Quantity): Circuit =>
  replaced(circuit, id, ({ from, to }) => ({ id, kind: 'resistor', from, to, resistance }));

/** The circuit with a switch in the place of a component. */
export function switched(circuit: Circuit, id: string, closed: boolean): Circuit {
  return replaced(circuit, id, ({ from, to }) => ({ id, kind: 'switch', from, to, closed }));
}

/**
 * How far R ohms are from the nearer end of a line, as a share of its length: from the open end if it is above 0, from the shorted one
 * if not. `seen` is the resistance that R works against.
 */
export function shareOf(ohms: number, seen: number): number {
  return (ohms < seen ? -ohms : seen || few) / (ohms + seen);
}

/** The faults of a circuit in which a constant current misses the resistor that was its path. */
const constant: readonly Fault['code'][] = [
  'current without a path',
  'currents in contradiction',
  'p.d. undetermined',
];

/** A circuit with one resistor R shorted and with it open. */
export interface Ends {
  readonly shorted: Solution;
  readonly open: Solution;
  /** See `shareOf`; not a number where the circuit has a fault. */
  share(ohms: number): number;
}

/**
 * Solves the two ends exactly. With R₀ for the resistance that the rest of the circuit shows to R (Thévenin), every current and p.d. is
 *
 *     q(R) = q_shorted + w · (q_open − q_shorted),   w = R / (R + R₀):
 *
 * they all move on straight lines by the same share. As 0 ≤ w ≤ 1 it is a convex combination, so nothing cancels. Where R lies straight
 * across an ideal supply, R₀ is 0 and the short is a fault: there a few ohms stand in for none. Where R carries a constant current,
 * R₀ is infinite and the open end is a fault: the line goes on through its point at very many ohms.
 */
export function endsOf(circuit: Circuit, id: string): Ends {
  const short = solveRounded(switched(circuit, id, true));
  const isFault = short.status === 'faulty';
  const shorted = isFault ? solveRounded(resisting(circuit, id, fewOhms)) : short;
  const current = shorted.current(id) ?? 0;
  // Where no current flows there is nothing that R could change. If it has a fault when open, but none when shorted, the short takes
  // the current away from what cannot share it: then 0 Ω is the only setting without a fault.
  const opened = current ? solveRounded(switched(circuit, id, false)) : shorted;
  const isGiven = opened.faults.some(({ code }) => constant.includes(code));
  if (isGiven && short.status === 'solved') {
    const far = solveRounded(resisting(circuit, id, manyOhms));
    return { shorted, open: far, share: (ohms) => (ohms >= 0 && ohms < Infinity ? -ohms / many : NaN) };
  }
  const isOnlyShorted = opened.status === 'faulty';
  const open = isOnlyShorted ? shorted : opened;
  const seen = !current || isOnlyShorted ? 1 : isFault ? 0 : (open.voltage(id) ?? NaN) / current;
  const least = shorted.status === 'faulty' ? Infinity : isFault ? few : 0;
  const most = isOnlyShorted ? 0 : Number.MAX_VALUE;
  return {
    shorted,
    open,
    share: (ohms) => (ohms >= least && ohms <= most ? shareOf(ohms, seen) : NaN),
  };
}

/** Quantities on their lines, and the place of each. */
export interface Lines {
  readonly places: Int32Array;
  readonly shorted: Float64Array;
  readonly open: Float64Array;
  /** From the open end to the shorted one. */
  readonly falls: Float64Array;
}

/** The lines of quantities, each with its place among the names; those that have no value have no line. */
export function linesOf(ends: Ends, names: readonly string[]): Lines {
  const [places, shorted, open]: [number[], number[], number[]] = [[], [], []];
  names.forEach((name, place) => {
    const [one, other] = [ends.shorted.quantity(name), ends.open.quantity(name)];
    if (one === undefined || other === undefined) return;
    places.push(place);
    shorted.push(one);
    open.push(other);
  });
  return {
    places: new Int32Array(places),
    shorted: new Float64Array(shorted),
    open: new Float64Array(open),
    falls: new Float64Array(shorted.map((value, k) => value - (open[k] ?? 0))),
  };
}

/** Writes the quantities for a share, each in its place, along the line from the nearer end. */
export function follow({ places, shorted, open, falls }: Lines, share: number, out: Float64Array): void {
  const near = share > 0 ? open : shorted;
  for (let k = 0; k < places.length; k++) out[places[k] ?? 0] = (near[k] ?? 0) + share * (falls[k] ?? 0);
}
