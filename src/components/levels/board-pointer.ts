import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { BoardFace } from '../link/index.ts';

/** Which component the pupil points at or has the focus on, on the board that its host reads. */
export class BoardPointer implements ReactiveController {
  /** '' for none. */
  id = '';
  readonly #host: ReactiveControllerHost;
  #board: BoardFace | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Follows another board, or none. */
  follow(board: BoardFace | undefined): void {
    if (board === this.#board) return;
    for (const type of ['pointerover', 'pointerleave', 'focusin', 'focusout']) {
      this.#board?.removeEventListener(type, this);
      board?.addEventListener(type, this);
    }
    this.#board = board;
    this.id = '';
  }

  hostDisconnected(): void {
    this.follow(undefined);
  }

  /** The pupil comes to a component of the board's drawing, or leaves it. */
  handleEvent(event: Event): void {
    const group = event
      .composedPath()
      .find((target) => target instanceof SVGGElement && target.dataset['id']);
    const comes = /over|in$/.test(event.type) && group instanceof SVGGElement;
    const id = comes ? (group.dataset['id'] ?? '') : '';
    if (id === this.id) return;
    this.id = id;
    this.#host.requestUpdate();
  }
}
