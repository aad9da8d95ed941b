import { isSwitch, say, type Circuit, type Component, type Condition } from '../../engine/core.ts';
import { changesOf, fire, type Settings } from '../link/index.ts';
import { speak } from '../page/index.ts';
import type { BoardStore } from './store.ts';

/** What a pupil does on a board: the page is told of it, a change at a time. */
export class Pupil {
  readonly #board: HTMLElement;
  readonly #store: BoardStore;

  constructor(board: HTMLElement, store: BoardStore) {
    this.#board = board;
    this.#store = store;
  }

  /** Presses a button of the board, or its keys; or takes these settings beside the others, in one step. */
  act(does: 'reset' | 'undo' | 'redo' | 'hold' | 'release' | Settings): void {
    const board = this.#board.id;
    this.#tell(() => {
      if (typeof does === 'string') this.#store[does]();
      else this.#store.replace({ ...this.#store.snapshot?.settings, ...does });
    });
    if (does !== 'hold' && does !== 'release') return;
    const held = does === 'hold';
    fire(this.#board, 'rheolet-hold', { board, held });
    speak(this, say({ code: 'held', data: { held } }));
  }

  /** Opens or closes a switch; any other component stays as it is. */
  toggle(id: string): void {
    const component = this.component(id);
    if (component && isSwitch(component)) this.#tell(() => this.#store.set(id, !component.closed));
  }

  /** Takes a component out or puts a wire across it, and undoes just that. */
  alter(id: string, condition: Condition): void {
    const now = this.component(id)?.condition;
    this.#tell(() => this.#store.set(id, now === condition ? 'intact' : condition));
  }

  /** A component as it is now. */
  component(id: string | undefined): Component | undefined {
    return this.#circuit?.components.find((component) => component.id === id);
  }

  get #circuit(): Circuit | undefined {
    return this.#store.snapshot?.circuit;
  }

  #tell(act: () => void): void {
    const before = this.#circuit;
    act();
    const now = this.#circuit;
    for (const change of before && now ? changesOf(this.#board.id, before, now) : [])
      fire(this.#board, 'rheolet-change', change);
  }
}
