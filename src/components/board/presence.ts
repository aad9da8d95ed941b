import type { ReactiveController, ReactiveElement } from 'lit';
import { say } from '../../engine/core.ts';
import { fire } from '../link/index.ts';
import { settingsIn } from './address.ts';
import { onWindow } from './on-window.ts';
import { join, leave } from './present.ts';
import type { BoardStore } from './store.ts';

/** A board's place in its page: it belongs to the page's history, and stands as the page's address says. */
export class Presence implements ReactiveController {
  readonly #board: ReactiveElement;
  readonly #store: BoardStore;
  #asked = false;
  #stop: (() => void) | undefined;
  /** Why what the address says cannot be used; '' where it says nothing wrong. */
  problem = '';

  constructor(board: ReactiveElement, store: BoardStore) {
    this.#board = board;
    this.#store = store;
    board.addController(this);
  }

  hostConnected(): void {
    join(this.#board, this.#store);
    this.#stop = onWindow('hashchange', this.#ask);
    if (!this.#asked) this.#ask();
    this.#asked = true;
  }

  hostDisconnected(): void {
    leave(this.#board);
    this.#stop?.();
  }

  /** Takes what the address says of this board, and leaves what does not fit. */
  readonly #ask = (): void => {
    this.problem = '';
    try {
      const settings = settingsIn(location.hash, this.#board);
      if (settings) this.#store.recall(settings);
    } catch (error) {
      if (!(error instanceof URIError)) throw error;
      const code = 'address not read';
      this.problem = say({ code, data: {} });
      fire(this.#board, 'rheolet-problem', {
        board: this.#board.id,
        id: '',
        code,
        text: this.problem,
      });
    }
    this.#board.requestUpdate();
  };
}
