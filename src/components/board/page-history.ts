import { boards } from './present.ts';
import type { BoardStore } from './store.ts';

/** The turn that an act of this kind would take back. */
function turn({ state }: BoardStore, act: 'undo' | 'redo'): number {
  return (act === 'undo' ? state?.past.at(-1) : state?.future[0])?.turn ?? 0;
}

/** Takes back what was done last on any board of the page, or brings back what was undone last. */
export function onLatest(act: 'undo' | 'redo'): void {
  const [last] = boards()
    .map(([, store]) => store)
    .sort((a, b) => turn(b, act) - turn(a, act));
  last?.[act]();
}
