import type { ReactiveController, ReactiveControllerHost } from 'lit';
import type { BoardFace } from '../link/index.ts';

/** Makes components stand out on a board as long as its host wants them to, and no longer than the host is on the page. */
export class Spotlight implements ReactiveController {
  #board: BoardFace | undefined;
  #ids: readonly string[] = [];

  constructor(host: ReactiveControllerHost) {
    host.addController(this);
  }

  /** Lights up these components, and no others; asks the board only where something changes. */
  shine(board: BoardFace | undefined, ids: readonly string[]): void {
    const lit = this.#board;
    if (board !== lit && this.#ids.length > 0) lit?.light([]);
    if (board !== lit ? ids.length > 0 : ids.join() !== this.#ids.join()) board?.light(ids);
    this.#board = board;
    this.#ids = board ? ids : [];
  }

  hostDisconnected(): void {
    this.shine(undefined, []);
  }
}
