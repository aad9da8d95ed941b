import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { say, type Said } from '../../engine/core.ts';
import { cancelFrame, inTurn, nextFrame, type FrameTask } from '../page/index.ts';
import { isBoard, type BoardFace } from './board-face.ts';
import { fire } from './events.ts';
import { boardTag, findBoard, rootsOf } from './find-board.ts';
import type { Snapshot } from './snapshot.ts';
import { shortcutOf } from './shortcut.ts';
import { watchBoards } from './watch-boards.ts';

/** An element that reads a board. */
export type LinkHost = HTMLElement &
  ReactiveControllerHost & { readonly board: string; readonly of?: string };

/**
 * Finds the board of its host and keeps it found, whatever comes, goes, moves or changes its name; updates the host when
 * the board changes. It gives a `snapshot`, else the `trouble` why there is none.
 */
export class BoardLink implements ReactiveController, FrameTask {
  readonly #host: LinkHost;
  readonly #everyFrame: boolean;
  #board: HTMLElement | undefined;
  #problem: Said<'no board'> | undefined;
  #unsubscribe: (() => void) | undefined;
  #unwatch: (() => void)[] = [];
  #wanted = '';
  #reported = '';

  /** While something moves, the host is told as often as digits can be read; one that draws lines asks for every frame. */
  constructor(host: LinkHost, everyFrame = false) {
    this.#host = host;
    this.#everyFrame = everyFrame;
    host.addEventListener('keydown', this.#key);
    host.addController(this);
  }

  /** The board, once it is found and defined; the one that the host names now, even in the midst of the update that brings a new name. */
  get board(): BoardFace | undefined {
    if (this.#host.isConnected && this.#host.board !== this.#wanted) this.#find();
    return this.#board && isBoard(this.#board) ? this.#board : undefined;
  }

  /** The board's present state; undefined without a board, or with one whose circuit cannot be read. */
  get snapshot(): Snapshot | undefined {
    return this.board?.snapshot;
  }

  /** The sentence why there is no snapshot; '' where there is one, and while the page is still being read. */
  get trouble(): string {
    const { board } = this;
    if (this.#problem) return say(this.#problem);
    return board && !board.snapshot ? say({ code: 'no circuit to show', data: {} }) : '';
  }

  hostConnected(): void {
    this.#unwatch = rootsOf(this.#host).map((root) => watchBoards(root, this.#find));
    if (document.readyState === 'loading') {
      document.addEventListener('DOMContentLoaded', this.#find, { once: true });
    }
    this.#find();
  }

  hostDisconnected(): void {
    for (const stop of this.#unwatch.splice(0)) stop();
    document.removeEventListener('DOMContentLoaded', this.#find);
    cancelFrame(this);
    this.#join(undefined);
  }

  /** The frame's turn to bring the host up to date. */
  draw(): void {
    this.#host.requestUpdate();
  }

  readonly #find = (): void => {
    if (!this.#host.isConnected) return;
    this.#wanted = this.#host.board;
    const { board, present } = findBoard(this.#host, this.#wanted);
    this.#join(board);
    const waits = board !== undefined || document.readyState === 'loading';
    this.#problem = waits ? undefined : { code: 'no board', data: { wanted: this.#wanted, present } };
    if (this.#problem) this.report(this.#problem.code, say(this.#problem));
    else this.report();
  };

  #join(board: HTMLElement | undefined): void {
    if (board?.matches(':not(:defined)')) {
      void customElements.whenDefined(boardTag).then(this.#find);
    } else if (board === this.#board && this.#unsubscribe) {
      return;
    }
    this.#unsubscribe?.();
    this.#unsubscribe = board && isBoard(board) ? board.subscribe(this.#changed) : undefined;
    this.#board = board;
    this.#host.requestUpdate();
  }

  /** Inside a board or anywhere in the page: what its pupil turned is undone on the board that it reads. */
  readonly #key = (event: KeyboardEvent): void => {
    const does = shortcutOf(event);
    if (!does || !this.board) return;
    event.preventDefault();
    this.board.act(does);
  };

  readonly #changed = (): void => {
    if (this.snapshot?.moving !== undefined && !this.#everyFrame) inTurn(this);
    else nextFrame(this);
  };

  /** Tells the page, once, what its host cannot show, by a code and a sentence; none of them when all is well again. */
  report(code = '', text = ''): void {
    if (text === this.#reported) return;
    this.#reported = text;
    if (text)
      fire(this.#host, 'rheolet-problem', { board: this.#wanted, id: this.#host.of ?? '', code, text });
  }
}
