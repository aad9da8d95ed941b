import {
  usualCourse,
  type Circuit,
  type Course,
  type ExactSolution,
  type Setting,
  type Solution,
} from '../../engine/core.ts';
import type { Settings } from '../link/index.ts';
import { fetchComparison } from './comparing.ts';
import { Moment } from './moment.ts';
import {
  fitting,
  moved,
  opened,
  redone,
  replaced,
  reset,
  settled,
  undone,
  type BoardState,
} from './state.ts';

/** What a board holds, and what may be done with it; whoever listens is told of every change, in the act. */
export class BoardStore {
  readonly #listeners = new Set<() => void>();
  #state: BoardState | undefined;
  #settings: Settings = {};
  #held: ExactSolution | Solution | undefined;
  #course: Course = usualCourse;
  #covered = false;
  #moment: Moment | undefined;

  /** The present; undefined while there is no circuit. */
  get snapshot(): Moment | undefined {
    return this.#moment;
  }

  /** What can be undone and redone. */
  get state(): BoardState | undefined {
    return this.#state;
  }

  /** Calls the listener at every change; returns how to stop. */
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }

  /** Takes a new circuit, or none; settings that still fit are kept, what was held is let go. */
  open(circuit: Circuit | undefined): void {
    this.#held = undefined;
    this.#become(circuit && opened(circuit, this.#settings));
  }

  /** Settles a setting. Throws CircuitFormatError where it cannot be had. */
  set(id: string, value: Setting): void {
    this.#change((state) => settled(state, id, value));
  }

  /** Shows a setting that is still moving. Throws CircuitFormatError where it cannot be had. */
  move(id: string, value: Setting): void {
    this.#change((state) => moved(state, id, value));
  }

  /** Replaces all settings. Throws CircuitFormatError where one cannot be had. */
  replace(settings: Settings): void {
    if (this.#state) this.#change((state) => replaced(state, settings));
    else this.#settings = settings;
  }

  /** Takes of these settings, in place of all others, those that fit: now, or as soon as there is a circuit. */
  recall(settings: Settings): void {
    this.replace(this.#state ? fitting(this.#state.start, settings) : settings);
  }

  /** Back to the circuit as the page gave it. */
  reset(): void {
    this.#change(reset);
  }

  /** Takes back the last change. */
  undo(): void {
    this.#change(undone);
  }

  /** Brings back the last change that was undone. */
  redo(): void {
    this.#change(redone);
  }

  /** Holds the present readings, to compare with, in place of those that are held; tells once more when what compares has come. */
  hold(): void {
    this.#held = this.#moment?.solution;
    this.#tell();
    if (this.#held && !this.#moment?.comparison) void fetchComparison().then(() => this.#tell());
  }

  /** Lets go of what is held. */
  release(): void {
    this.#held = undefined;
    this.#tell();
  }

  /** Says what the class uses, and whether the readings are covered. */
  show(course: Course, covered: boolean): void {
    if (course === this.#course && covered === this.#covered) return;
    this.#course = course;
    this.#covered = covered;
    this.#tell();
  }

  #change(act: (state: BoardState) => BoardState): void {
    if (!this.#state) return;
    const next = act(this.#state);
    if (next !== this.#state) this.#become(next);
  }

  #become(state: BoardState | undefined): void {
    this.#state = state;
    if (state) this.#settings = state.settings;
    this.#tell();
  }

  #tell(): void {
    const showing = { held: this.#held, course: this.#course, covered: this.#covered };
    this.#moment = this.#state && new Moment(this.#state, showing);
    for (const listener of [...this.#listeners]) listener();
  }
}
