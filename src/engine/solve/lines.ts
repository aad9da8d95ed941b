import type { Circuit, Component } from '../circuit/index.ts';
import { Fraction, quantity } from '../quantity/index.ts';
import type { Solution } from './solution.ts';
import { solveRounded } from './solve.ts';

/** So few ohms that they only tell how a current grows that nothing else limits. */
const few = 2 ** -100;
const fewOhms = quantity(new Fraction(1n, 2n ** 100n), 'Ω');

/** A circuit with one resistor R shorted and with it open. */
export interface Ends {
  readonly shorted: Solution;
  readonly open: Solution;
  /**
   * How far R ohms are from the nearer end, as a share of the way between the two: from the open one if it is above 0, from the
   * shorted one if not. Not a number where the circuit has a fault.
   */
  share(ohms: number): number;
}

/**
 * Solves the two ends exactly. With R₀ for the resistance that the rest of the circuit shows to R (Thévenin), every current and p.d. is
 *
 *     q(R) = q_shorted + w · (q_open − q_shorted),   w = R / (R + R₀):
 *
 * they all move on straight lines by the same share. As 0 ≤ w ≤ 1 it is a convex combination, so nothing cancels. Where R lies straight
 * across an ideal supply, R₀ is 0 and the short is a fault: there a few ohms stand in for none.
 */
export function endsOf(circuit: Circuit, id: string): Ends {
  const solveWith = (change: (part: Component) => Component): Solution => {
    const components = circuit.components.map((part) => (part.id === id ? change(part) : part));
    return solveRounded({ ...circuit, components });
  };
  const put = (closed: boolean): Solution =>
    solveWith(({ from, to }) => ({ id, kind: 'switch', from, to, closed }));
  let shorted = put(true);
  const isFault = shorted.status === 'faulty';
  if (isFault)
    shorted = solveWith(({ from, to }) => ({ id, kind: 'resistor', from, to, resistance: fewOhms }));
  const current = shorted.current(id);
  // Where no current flows there is nothing that R could change.
  const open = current ? put(false) : shorted;
  const seen = !current ? 1 : isFault ? 0 : (open.voltage(id) ?? NaN) / current;
  const scale = current === undefined ? NaN : seen || few;
  return {
    shorted,
    open,
    share(ohms) {
      const whole = ohms + seen;
      if (!(scale > 0 && ohms >= 0 && whole > 0 && whole < Infinity)) return NaN;
      return (ohms < seen ? -ohms : scale) / whole;
    },
  };
}

/** A quantity on its line. */
export interface Line {
  readonly place: number;
  readonly shorted: number;
  readonly open: number;
  readonly fall: number;
}

/** The lines of quantities, each with its place among the names; those that have no value have no line. */
export function linesOf(ends: Ends, names: readonly string[]): readonly Line[] {
  return names.flatMap((name, place) => {
    const [shorted, open] = [ends.shorted.quantity(name), ends.open.quantity(name)];
    return shorted === undefined || open === undefined
      ? []
      : [{ place, shorted, open, fall: shorted - open }];
  });
}

/** Writes the quantities for a share, each in its place, along the line from the nearer end. */
export function follow(lines: readonly Line[], share: number, out: Float64Array): void {
  if (share > 0) for (const { place, open, fall } of lines) out[place] = open + share * fall;
  else for (const { place, shorted, fall } of lines) out[place] = shorted + share * fall;
}
