import type { Fraction } from '../quantity/index.ts';
import type { ExactSolution } from '../solve/index.ts';
import { say } from '../words/index.ts';

/** A quantity of a solution; throws RangeError, which says why, where it has no value. */
export function read(solution: ExactSolution, name: string): Fraction {
  const value = solution.quantity(name);
  if (value !== undefined) return value;
  const why = solution.faults[0] ?? solution.reason(name);
  throw new RangeError(`${name} has no value here${why ? `: ${say(why)}` : '.'}`);
}
