import { feltBy, isSwitch } from '../../engine/core.ts';
import { isContent } from './fallback.ts';
import { notes } from './notes.ts';
import type { Word } from './shown.ts';
import type { Snapshot } from '../link/index.ts';
import type { BoardStore } from './store.ts';

/**
 * What decides how much room is taken by all that stands round a drawing: boards where it is the same are alike. Undefined
 * where other elements stand there, which take what they need. The style says in which letters it is written, the readings what there is to note.
 */
export function roundOf(
  board: HTMLElement,
  { snapshot, state }: BoardStore,
  shown: ReadonlySet<Word>,
  style = '',
  readings?: Snapshot['readings'],
): string | undefined {
  if (!snapshot || !state || shown.has('rules') || [...board.childNodes].some(isContent)) return undefined;
  const { circuit, held, covered } = snapshot;
  const felt = feltBy(circuit);
  const settable = circuit.components.filter(
    (each) => isSwitch(each) || 'range' in each || 'internalRange' in each,
  );
  const controls = settable.map((each) => `${each.kind} ${each.id} ${isSwitch(each) ? each.closed : ''}`);
  return [
    style,
    ...(shown.has('sliders') ? [...controls, ...felt] : [settable.length + felt.length > 0]),
    state.past.length + state.future.length > 0,
    held !== undefined,
    covered,
    ...notes({ covered, readings: readings ?? snapshot.readings }),
  ].join();
}

/** Fulfilled once the sliders under a drawing are rendered. */
export async function controlsRendered(root: ParentNode): Promise<void> {
  const controls = root.querySelectorAll('[part=controls] > *');
  await Promise.all([...controls].map((each) => 'updateComplete' in each && each.updateComplete));
}
