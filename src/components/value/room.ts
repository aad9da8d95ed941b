import type { Circuit } from '../../engine/core.ts';
import { extremesOf } from '../extremes/index.ts';
import type { Snapshot } from '../link/index.ts';

const even = (text: string): string => text.replace(/\d/g, '0');

/** Room for a text that changes: as wide as any that it is likely to become, so that the sentence it stands in does not jump. */
export class Room {
  #widest = '';
  #start: Circuit | undefined;
  #held: Snapshot['held'];

  /** A text, its digits made alike, as wide as this one and all others that may come in its place. */
  for(snapshot: Snapshot, text: string, write: (at: Snapshot) => string): string {
    const { start, held, covered } = snapshot;
    if (start !== this.#start || held !== this.#held) {
      this.#widest = '';
      if (!covered) for (const at of elsewhere(snapshot)) this.#take(write(at));
    }
    this.#start = covered ? undefined : start;
    this.#held = held;
    this.#take(text);
    return this.#widest;
  }

  #take(text: string): void {
    if (text.length > this.#widest.length) this.#widest = even(text);
  }
}

/** The board as it would be where its readings go furthest. */
function elsewhere(snapshot: Snapshot): readonly Snapshot[] {
  const { start, settings, solution, held, comparison, course, covered } = snapshot;
  const compared = held && comparison ? { held, comparison } : {};
  return extremesOf(start).map((extreme) => ({
    start,
    settings,
    solution,
    course,
    covered,
    ...compared,
    ...extreme,
  }));
}
