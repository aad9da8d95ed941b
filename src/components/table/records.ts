import { Fraction } from '../../engine/core.ts';
import type { Entry } from './entry.ts';

/** What was recorded at one setting, by the names of the quantities. */
export type RecordedRow = Readonly<Record<string, Entry>>;

/** Rows that a pupil recorded, and all there were before each of the pupil's acts, so that each can be taken back. */
export class Records {
  rows: readonly RecordedRow[] = [];
  #before: (readonly RecordedRow[])[] = [];

  /** Whether there is an act to be taken back. */
  get undoable(): boolean {
    return this.#before.length > 0;
  }

  /** Has these rows now. */
  become(rows: readonly RecordedRow[]): void {
    this.#before.push(this.rows);
    this.rows = rows;
  }

  /** Takes back the last act. */
  undo(): void {
    this.rows = this.#before.pop() ?? [];
  }

  /** Begins anew with these rows. */
  open(rows: readonly RecordedRow[]): void {
    this.rows = rows;
    this.#before = [];
  }
}

/** An entry as a text that can be read back: exact, or the words in place of a value. */
export function entryText({ value, words }: Entry): string {
  return value === undefined ? words : new Fraction(value).toFraction();
}

/** Reads such a text. */
export function entryFrom(text: string): Entry {
  return /^-?\d{1,40}(\/[1-9]\d{0,40})?$/.test(text)
    ? { value: new Fraction(text), words: '' }
    : { value: undefined, words: text };
}
