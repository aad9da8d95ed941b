import type { Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveExact } from '../solve/index.ts';

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

/** The charge and the energy of a component in so many seconds, exactly; undefined where it has no current. Its price is kilowatt-hours × price. */
export function overTime(circuit: Circuit, id: string, seconds: number | Fraction): OverTime | undefined {
  const solution = solveExact(circuit);
  const [current, power] = [solution.current(id), solution.power(id)];
  if (!current || !power) return undefined;
  const time = new Fraction(typeof seconds === 'number' ? seconds.toString() : seconds);
  const energy = power.mul(time);
  return { charge: current.mul(time), energy, kilowattHours: energy.div(joules) };
}
