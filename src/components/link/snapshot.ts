import type { Circuit, Course, ExactSolution, Solution } from '../../engine/core.ts';
import type { Comparison } from './comparison.ts';

/** What differs from the start, by id: a resistor's ohms as an exact text ("20", "1/3"), what of a supply differs ("6", "r 0.5", "6 r 0.5"), a switch ("open", "closed"), what was done to a component ("broken", "20 bridged", "intact"); and by its name what surrounds the circuit ("5" for the temperature in °C, "200" for the light in lx). */
export type Settings = Readonly<Record<string, string>>;

/** All that a board knows at one moment; a change makes a new one. */
export interface Snapshot {
  /** The circuit as it stands, settings worked in. */
  readonly circuit: Circuit;
  /** The circuit that the page gave. */
  readonly start: Circuit;
  /** Where they differ. */
  readonly settings: Settings;
  /** The id of what is being moved; absent at rest. */
  readonly moving?: string;
  /** The exact solution of `circuit`, or where it has curves the one there is; solved when it is first read, once. */
  readonly solution: ExactSolution | Solution;
  /** What is shown: the exact solution at rest, floating-point readings while something moves. */
  readonly readings: ExactSolution | Solution;
  /** The readings that the pupil holds, to compare with. */
  readonly held?: ExactSolution | Solution;
  /** Compares readings with the held ones; absent while nothing is held, and until it has come. */
  readonly comparison?: Comparison;
  /** What the class uses. */
  readonly course: Course;
  /** True while the readings are covered, for the pupil to predict them. */
  readonly covered: boolean;
}
