import {
  hasCurve,
  solve,
  solveExact,
  type Circuit,
  type Course,
  type ExactSolution,
  type Solution,
} from '../../engine/core.ts';
import { once, type Settings, type Snapshot } from '../link/index.ts';
import { comparison, type BoardComparison } from './comparing.ts';
import type { BoardState } from './state.ts';

const solvedLive = once(solve);
const solved = once((circuit: Circuit): ExactSolution | Solution =>
  circuit.components.some(hasCurve) ? solvedLive(circuit) : solveExact(circuit),
);

/** What a board shows besides its state. */
export interface Showing {
  readonly held: ExactSolution | Solution | undefined;
  readonly course: Course;
  readonly covered: boolean;
}

/** A board's state at one moment, with the readings that follow: they are worked out when first asked for, once. */
export class Moment implements Snapshot {
  readonly circuit: Circuit;
  readonly start: Circuit;
  readonly settings: Settings;
  readonly moving?: string;
  readonly held?: ExactSolution | Solution;
  readonly comparison?: BoardComparison;
  readonly course: Course;
  readonly covered: boolean;

  constructor({ circuit, start, settings, moving }: BoardState, { held, course, covered }: Showing) {
    this.circuit = circuit;
    this.start = start;
    this.settings = settings;
    if (moving !== undefined) this.moving = moving;
    if (held) this.held = held;
    const comparing = held && comparison();
    if (comparing) this.comparison = comparing;
    this.course = course;
    this.covered = covered;
  }

  get solution(): ExactSolution | Solution {
    return solved(this.circuit);
  }

  get readings(): ExactSolution | Solution {
    if (this.moving === undefined) return this.solution;
    return this.live;
  }

  /** The same in decimals, which are known sooner. */
  get live(): Solution {
    return solvedLive(this.circuit);
  }
}
