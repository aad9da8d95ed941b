import type { BoardStore } from './store.ts';

/** The boards that stand in the page. */
const present = new Set<BoardStore>();

/** A board comes into the page, with what it remembers. */
export function join(board: BoardStore): void {
  present.add(board);
}

/** A board leaves the page, and its acts leave the page's history. */
export function leave(board: BoardStore): void {
  present.delete(board);
}

/** The turn that an act of this kind would take back. */
function turn({ state }: BoardStore, act: 'undo' | 'redo'): number {
  return (act === 'undo' ? state?.past.at(-1) : state?.future[0])?.turn ?? 0;
}

/** Takes back what was done last on any board of the page, or brings back what was undone last. */
export function onLatest(act: 'undo' | 'redo'): void {
  const [last] = [...present].sort((a, b) => turn(b, act) - turn(a, act));
  last?.[act]();
}
