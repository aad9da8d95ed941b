import {
  prepareEquations,
  workedSolution,
  type Worked,
  type WorkedWish,
} from '../../engine/explain/index.ts';
import { figuresOf, type Snapshot } from '../link/index.ts';
import { later } from '../page/index.ts';

/**
 * Works out what a page asks, anew only where something has changed. What sets up Kirchhoff's equations is fetched where single rules
 * lead to no answer; until it has come, or cannot be had, there is no solution.
 */
export class Solving {
  readonly #changed: () => void;
  #from: readonly unknown[] = [];
  #solution: Worked | undefined;
  #isComplete = false;

  /** `changed` is called when there is a solution that there was not when it was asked for. */
  constructor(changed: () => void) {
    this.#changed = changed;
  }

  /** The solution of what is asked of a board. */
  of(snapshot: Snapshot, { of, given, lesson }: WorkedWish): Worked | undefined {
    const { circuit, course, solution } = snapshot;
    const from = [circuit, course, of, given, lesson, this.#isComplete];
    if (from.every((each, place) => each === this.#from[place])) return this.#solution;
    this.#from = from;
    const style = { ...course, figures: figuresOf(snapshot) };
    const worked = workedSolution(circuit, solution, style, { of, given, lesson });
    const isOpen = worked.derivation?.status === 'not enough' && !this.#isComplete;
    if (isOpen) void this.#complete();
    this.#solution = isOpen ? undefined : worked;
    return this.#solution;
  }

  async #complete(): Promise<void> {
    await later(prepareEquations());
    this.#isComplete = true;
    this.#changed();
  }
}
