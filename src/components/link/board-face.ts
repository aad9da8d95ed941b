import type { Setting } from '../../engine/core.ts';
import type { Settings, Snapshot } from './snapshot.ts';

/** What the elements of a page need of a board. */
export interface BoardFace extends HTMLElement {
  /** Undefined as long as there is no circuit that can be read. */
  readonly snapshot: Snapshot | undefined;
  /** What differs from the start; all of it may be set at once, and undone at once. Throws CircuitFormatError where something cannot be had. */
  settings: Settings;
  /** Calls the listener at every change, in the act; returns how to stop. */
  subscribe(listener: () => void): () => void;
  /** Asks for a new setting, settled: it can be undone. Throws CircuitFormatError where it cannot be had. */
  set(id: string, value: Setting): void;
  /** Shows a setting while it is still moving; `set` settles it. */
  move(id: string, value: Setting): void;
  /** Undoes, redoes, or takes these settings beside the others in one step, as the pupil's act: the page is told. */
  act(does: 'undo' | 'redo' | Settings): void;
  /** Makes components stand out, and these only. */
  light(ids: readonly string[]): void;
}

/** Whether an element is a board already: its tag may stand in a page before it is defined. */
export function isBoard(element: HTMLElement): element is BoardFace {
  return 'snapshot' in element && 'subscribe' in element;
}
