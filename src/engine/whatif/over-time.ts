import type { Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solve, solveExact } from '../solve/index.ts';
import { meant, written } from './free.ts';

/** What passes a component in a time. */
export interface OverTime {
  /** Coulombs: Q = It. */
  readonly charge: Fraction;
  /** Joules: W = Pt. */
  readonly energy: Fraction;
  /** The same in kilowatt-hours, as it is billed. */
  readonly kilowattHours: Fraction;
}

const joules = new Fraction(3_600_000);

/**
 * The charge and the energy of a component, or (`total`) of the one supply, in so many seconds; undefined where it has no current.
 * Throws RangeError, with what may have been meant, where there is no such component. Exactly, but as near as readings are where something has a curve. The price is kilowatt-hours × price.
 */
export function overTime(circuit: Circuit, id: string, seconds: number | Fraction): OverTime | undefined {
  if (id !== 'total') meant(circuit, id);
  const exact = solveExact(circuit);
  const solution = exact.status === 'solved' ? exact : solve(circuit);
  const [current, power] = ['I', 'P'].map((letter) => {
    const value = solution.quantity(`${letter}_${id}`);
    return value === undefined ? undefined : written(value);
  });
  if (!current || !power) return undefined;
  const time = written(seconds);
  const energy = power.mul(time);
  return { charge: current.mul(time), energy, kilowattHours: energy.div(joules) };
}
