import { hasCurve, type Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solve, solveExact } from '../solve/index.ts';
import { evaluate, exactly } from './expression.ts';
import type { Claim } from './read-claim.ts';

/** So near, of the larger side, counts as equal where a curve keeps the readings from being exact. */
const near = 1e-9;

/** The reading of a quantity of a circuit, exact unless it has curves. */
export function reader(circuit: Circuit): (name: string) => Fraction | undefined {
  if (!circuit.components.some(hasCurve)) {
    const solution = solveExact(circuit);
    return (name) => solution.quantity(name);
  }
  const solution = solve(circuit);
  return (name) => {
    const value = solution.quantity(name);
    return value === undefined ? undefined : new Fraction(value);
  };
}

/** Both sides of a claim, and the sign of left less right. */
export interface Sides {
  readonly left: Fraction;
  readonly right: Fraction;
  readonly sign: number;
}

/** Both sides of a claim in a circuit as it is set; undefined where one of them has no value. */
export function sidesIn(circuit: Circuit, claim: Claim): Sides | undefined {
  const field = exactly(reader(circuit));
  const [left, right] = [evaluate(claim.left, field), evaluate(claim.right, field)];
  if (!left || !right) return undefined;
  const difference = left.sub(right);
  const size = Math.max(Math.abs(Number(left)), Math.abs(Number(right)));
  const isEqual = circuit.components.some(hasCurve) && Math.abs(Number(difference)) <= near * size;
  return { left, right, sign: isEqual ? 0 : Math.sign(difference.compare(0)) };
}

/** The sign of left less right in a circuit as it is set; undefined where one of them has no value. */
export const signIn = (circuit: Circuit, claim: Claim): number | undefined => sidesIn(circuit, claim)?.sign;
