import type { ReactiveController, ReactiveElement } from 'lit';
import { onWindow } from './on-window.ts';

/** Tells when the children of a board change, and when the page has been read to its end. */
export class Children implements ReactiveController {
  readonly #board: ReactiveElement;
  readonly #changed: () => void;
  readonly #observer: MutationObserver;
  #stop: (() => void) | undefined;

  constructor(board: ReactiveElement, changed: () => void) {
    this.#board = board;
    this.#changed = changed;
    this.#observer = new MutationObserver(changed);
    board.addController(this);
  }

  hostConnected(): void {
    this.#observer.observe(this.#board, { childList: true, characterData: true, subtree: true });
    if (document.readyState === 'loading') this.#stop = onWindow('DOMContentLoaded', this.#changed);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    this.#stop?.();
  }
}
