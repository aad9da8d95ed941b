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
 * What tells how far R has come along a line: the resistance that R works against (infinite where the line has no end but goes on with R,
 * through its point at very many ohms), and the least and the most ohms without a fault.
 */
export type Reach = readonly [seen: number, least: number, most: number];

/** All settings, for the resistance that R works against. */
export const reachOf = (seen: number): Reach => [seen, 0, Number.MAX_VALUE];

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
  readonly reach: Reach;
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
    return { shorted, open: far, reach: reachOf(Infinity) };
  }
  const isOnlyShorted = opened.status === 'faulty';
  const open = isOnlyShorted ? shorted : opened;
  const seen = !current || isOnlyShorted ? 1 : isFault ? 0 : (open.voltage(id) ?? NaN) / current;
  const least = shorted.status === 'faulty' ? Infinity : isFault ? few : 0;
  const most = isOnlyShorted ? 0 : Number.MAX_VALUE;
  return { shorted, open, reach: [seen, least, most] };
}

/**
 * Quantities on their lines: the place of each; and the reach, then of each line where it stands with R shorted, with R open, and how far it
 * falls from the open end to the shorted one. Numbers of an object may be objects themselves, new ones at every step of a slider: a list holds none.
 */
export interface Lines {
  readonly places: Int32Array;
  readonly numbers: Float64Array;
}

/** A place, and what stands there where R is shorted and where it is open. */
export type Line = readonly [place: number, shorted: number, open: number];

/** Lines that R goes along in the same way. */
export function together(reach: Reach, lines: readonly Line[]): Lines {
  const places = new Int32Array(lines.length);
  const numbers = new Float64Array(3 + 3 * lines.length);
  for (let at = 0; at < 3; at++) numbers[at] = reach[at] ?? NaN;
  for (let k = 0; k < lines.length; k++) {
    const [place, shorted, open] = lines[k] ?? [0, NaN, NaN];
    places[k] = place;
    numbers[3 * k + 3] = shorted;
    numbers[3 * k + 4] = open;
    numbers[3 * k + 5] = shorted - open;
  }
  return { places, numbers };
}

/** A quantity that grows with R, ohm by ohm, from what it is without. */
export const growing = (place: number, from: number): Lines =>
  together(reachOf(Infinity), [[place, from, from + many]]);

/** The lines of quantities, each with its place among the names; those that have no value have no line. */
export function linesOf({ shorted, open, reach }: Ends, names: readonly string[]): Lines {
  const lines: Line[] = [];
  names.forEach((name, place) => {
    const [one, other] = [shorted.quantity(name), open.quantity(name)];
    if (one !== undefined && other !== undefined) lines.push([place, one, other]);
  });
  return together(reach, lines);
}

/**
 * Writes the quantities for R, each in its place, along the line from the nearer end; false, and nothing written, where the circuit has a
 * fault. All numbers come in lists and none goes through another function, where it might become an object.
 */
export function follow({ places, numbers }: Lines, setting: Float64Array, out: Float64Array): boolean {
  const ohms = setting[0] ?? NaN;
  const seen = numbers[0] ?? NaN;
  if (!(ohms >= (numbers[1] ?? NaN) && ohms <= (numbers[2] ?? NaN) && seen >= 0)) return false;
  // From the nearer end, as a share of the line’s length: from the open end if it is above 0, from the shorted one if not.
  const share =
    seen === Infinity ? -ohms / many : (ohms < seen ? -ohms : Math.max(seen, few)) / (ohms + seen);
  let at = share > 0 ? 4 : 3;
  const toFall = share > 0 ? 1 : 2;
  for (let k = 0; k < places.length; k++, at += 3)
    out[places[k] ?? 0] = (numbers[at] ?? 0) + share * (numbers[at + toFall] ?? 0);
  return true;
}
