import type { Moment } from './moment.ts';
import { notes, spokenNotes } from './notes.ts';

/** What is new on a board since it was last looked at, and since it was last listened to. */
export class News {
  #noted = '';
  /** What was last said, once settled. */
  #heard: Moment | undefined;

  /** Whether anything under the drawing changes: while a slider moves, the notes alone do, and the caption of what is pointed at. */
  differs(snapshot: Moment | undefined, pointed: string | undefined): boolean {
    const noted = snapshot ? notes(snapshot).join() : '';
    const same = noted === this.#noted && snapshot?.moving !== undefined && pointed === undefined;
    this.#noted = noted;
    return !same;
  }

  /** What is to be said of a change, once it is settled; nothing of a new circuit. */
  of(snapshot: Moment | undefined): string | undefined {
    const before = this.#heard;
    if (!snapshot || snapshot.moving !== undefined) return undefined;
    this.#heard = snapshot;
    if (before?.start !== snapshot.start || before.circuit === snapshot.circuit) return undefined;
    return spokenNotes(snapshot, before);
  }
}
