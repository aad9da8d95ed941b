import {
  solve,
  solveExact,
  type Circuit,
  type Course,
  type ExactSolution,
  type Solution,
} from '../../engine/core.ts';
import type { Settings, Snapshot } from '../link/index.ts';
import type { BoardState } from './state.ts';

/** What a board shows besides its state. */
export interface Showing {
  readonly held: ExactSolution | undefined;
  readonly course: Course;
  readonly covered: boolean;
}

/** A board's state at one moment, with the readings that follow: they are worked out when first asked for, once. */
export class Moment implements Snapshot {
  readonly circuit: Circuit;
  readonly start: Circuit;
  readonly settings: Settings;
  readonly moving?: string;
  readonly held?: ExactSolution;
  readonly course: Course;
  readonly covered: boolean;
  /** Shared with the moment before where nothing was set in between. */
  #exact: ExactSolution | undefined;
  #live: Solution | undefined;

  constructor(
    { circuit, start, settings, moving }: BoardState,
    { held, course, covered }: Showing,
    before?: Moment,
  ) {
    this.circuit = circuit;
    this.start = start;
    this.settings = settings;
    if (moving !== undefined) this.moving = moving;
    if (held) this.held = held;
    this.course = course;
    this.covered = covered;
    if (before?.circuit === circuit) this.#exact = before.#exact;
  }

  get solution(): ExactSolution {
    return (this.#exact ??= solveExact(this.circuit));
  }

  get readings(): ExactSolution | Solution {
    if (this.moving === undefined) return this.solution;
    return (this.#live ??= solve(this.circuit));
  }
}
