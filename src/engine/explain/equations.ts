import type { Circuit } from '../circuit/index.ts';
import type { Fraction } from '../quantity/index.ts';
import type { Course } from '../words/index.ts';
import type { Step } from './derivation.ts';

/** So many equations a pupil may be asked to solve together. */
export const mostEquations = 6;

/** What Kirchhoff's laws can do for a circuit. */
export interface Equations {
  readonly count: number;
  /** E.m.f.s and resistances that have to be known; not looked for where there are too many equations. */
  readonly needs: readonly string[];
  /** Whether all of them are. */
  readonly isEnough: boolean;
  /** The components of the first loop. */
  readonly loop: readonly string[];
  /** The currents that follow, by quantity name. */
  readonly currents: ReadonlyMap<string, Fraction>;
  /** The quantities that the way to some of them starts from, and its steps. */
  readonly way: (currents: readonly string[]) => {
    readonly uses: readonly string[];
    readonly steps: readonly Step[];
  };
}

/**
 * Sets up Kirchhoff's equations for a circuit, with what is known of it, and solves them; none where it has no two loops. `isReal` says
 * whether a supply has resistance inside, `find` what they are set up for. It stands in a file of its own, loaded where one is needed.
 */
export type EquationSetter = (
  circuit: Circuit,
  value: (name: string) => Fraction | undefined,
  isReal: (id: string) => boolean,
  find: string,
  course: Course,
) => Equations | undefined;

let setter: EquationSetter | undefined;

/** Makes `explain` set up Kirchhoff's equations where no chain of single rules leads on. */
export function equipEquations(equations: EquationSetter): void {
  setter = equations;
}

/** Kirchhoff's equations, if what sets them up is there. */
export const equationsOf: EquationSetter = (...what) => setter?.(...what);
