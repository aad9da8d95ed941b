import type { Circuit } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { solveExact, type ExactSolution } from '../solve/index.ts';
import { varied, type Varied } from './free.ts';

/** How far on from where it is something is varied: three places tell a derivative exactly. */
export type Step = 0 | 1 | 2;

/** Something that is varied up, or (−1) down, and the solution so far on from where it is. */
export interface Turn {
  readonly what: Varied;
  readonly sign: 1 | -1;
  readonly at: (step: Step) => ExactSolution;
}

/** All that is varied together. */
export type Turns = readonly [Turn, ...(readonly Turn[])];

const zero = new Fraction(0);

/** Varies one thing from its present value, each place solved once. */
export function turned(circuit: Circuit, what: Varied, start: Fraction, sign: Turn['sign'] = 1): Turn {
  const solutions = new Map<Step, ExactSolution>();
  const at = (step: Step): ExactSolution => {
    const solution =
      solutions.get(step) ?? solveExact(step ? varied(circuit, what, start.add(step)) : circuit);
    solutions.set(step, solution);
    return solution;
  };
  return { what, sign, at };
}

/**
 * The derivative of a ratio of two straight lines in what is turned, exactly, from its values at x, x + 1 and x + 2: with u and v for what it
 * has changed by at the last two, u·v / (2 (v − u)).
 */
export function slope({ at, sign }: Turn, read: (solution: ExactSolution) => Fraction): Fraction {
  const [f, g, h] = [read(at(0)), read(at(1)), read(at(2))];
  const [u, v] = [g.sub(f), h.sub(f)];
  return u.n === 0n ? zero : u.mul(v).div(v.sub(u).mul(2)).mul(sign);
}
