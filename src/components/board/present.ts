import type { BoardStore } from './store.ts';

/** The boards that stand in the page, with what they remember. */
const present = new Map<HTMLElement, BoardStore>();

/** A board comes into the page. */
export function join(board: HTMLElement, store: BoardStore): void {
  present.set(board, store);
}

/** A board leaves the page, and takes what it remembers with it. */
export function leave(board: HTMLElement): void {
  present.delete(board);
}

/** All boards of the page. */
export function boards(): readonly (readonly [HTMLElement, BoardStore])[] {
  return [...present];
}
