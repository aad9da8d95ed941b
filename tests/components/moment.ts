import { parseCircuit, readCourse } from '../../src/engine/index.ts';
import type { Moment } from '../../src/components/board/moment.ts';
import { BoardStore } from '../../src/components/board/store.ts';

/** What a class sees of a board: how it writes, and whether the readings are covered. */
interface Seen {
  readonly course?: string;
  readonly covered?: boolean;
}

/** What a board remembers and tells, without the board: nothing is drawn. */
export function storeOf(line: string, { course = '', covered = false }: Seen = {}): BoardStore {
  const store = new BoardStore();
  store.open(parseCircuit(line));
  store.show(readCourse(course).course, covered);
  return store;
}

/** The present of such a store. */
export function momentIn({ snapshot }: BoardStore): Moment {
  if (!snapshot) throw new Error('no circuit');
  return snapshot;
}

/** A board at the moment when it comes to a page. */
export const momentOf = (line: string, seen?: Seen): Moment => momentIn(storeOf(line, seen));

/** Blanks of every kind made one plain space. */
export const plain = (text: string): string => text.replace(/\s+/g, ' ');
