import type { Circuit } from '../circuit/index.ts';
import type { Solution } from './solution.ts';

/** A solver for circuits that the core cannot solve: it stands in a file of its own, loaded where one is needed. */
export interface Solver {
  /** Whether a circuit needs it. */
  readonly serves: (circuit: Circuit) => boolean;
  /** `near` is the solution of a circuit that differs little in its values: a start for the steps, where there are steps. */
  readonly solve: (circuit: Circuit, near?: Solution) => Solution;
}

const solvers: Solver[] = [];

/** Makes `solve` hand those circuits over that a further solver serves. */
export function equip(solver: Solver): void {
  if (!solvers.includes(solver)) solvers.push(solver);
}

/** The further solver that a circuit needs, if it is there. */
export const solverFor = (circuit: Circuit): Solver | undefined =>
  solvers.find(({ serves }) => serves(circuit));
