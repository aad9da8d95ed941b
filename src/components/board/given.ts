import type { ReactiveController, ReactiveElement } from 'lit';
import { needsMore, prepare, type Circuit } from '../../engine/core.ts';
import { fire } from '../link/index.ts';
import { later } from '../page/index.ts';
import { textOf } from './fallback.ts';
import { onWindow } from './on-window.ts';
import { readSource } from './source.ts';
import { fetchWriter, writer } from './written.ts';

/** The circuit that a page gives a board, as an attribute, a property or the text in it: read, and begun as soon as the engine is ready for it. */
export class Given implements ReactiveController {
  /** What is wrong with it; '' where nothing is. */
  problem = '';
  /** Fulfilled once the board shows what it was given last. */
  ready: Promise<void> = Promise.resolve();
  readonly #board: ReactiveElement;
  readonly #took: (circuit: Circuit | undefined) => void;
  readonly #isWritten: () => boolean;
  #source: string | Circuit | undefined;
  /** What was read last: the board may be out of the page while it is given something else. */
  #read: string | Circuit | undefined;
  /** The circuit that will be there when the engine is ready for it; what is drawn until then is not what was given. */
  #awaiting: Circuit | undefined;
  #reach: () => void = () => undefined;
  #stop: (() => void) | undefined;
  /** The text in the board may change, or come only when the page has been read to its end. */
  readonly #children = (): void => {
    this.#follow();
    this.#board.requestUpdate();
  };
  readonly #observer = new MutationObserver(this.#children);

  /** `took` is called with the circuit that was read last, or with none where it cannot be read; `isWritten` says whether currents and p.d.s are to stand in its drawing. */
  constructor(
    board: ReactiveElement,
    took: (circuit: Circuit | undefined) => void,
    isWritten: () => boolean,
  ) {
    this.#board = board;
    this.#took = took;
    this.#isWritten = isWritten;
    this.#renew();
    board.addController(this);
  }

  hostConnected(): void {
    this.#follow();
    this.#observer.observe(this.#board, { childList: true, characterData: true, subtree: true });
    if (document.readyState === 'loading') this.#stop = onWindow('DOMContentLoaded', this.#children);
  }

  hostDisconnected(): void {
    this.#observer.disconnect();
    this.#stop?.();
  }

  /** Takes another circuit, or where there is none the text in the board. */
  take(source: string | Circuit | undefined): void {
    this.#source = source;
    this.#read = undefined;
    if (this.#board.isConnected) this.#follow();
  }

  /** The board shows all that it holds. */
  shown(): void {
    if (!this.#awaiting) this.#reach();
  }

  /** Reads what is given now, where that is not what was read last. */
  #follow(): void {
    const source = this.#source ?? textOf(this.#board.childNodes);
    if (source === this.#read || (this.#source === undefined && document.readyState === 'loading')) return;
    this.#read = source;
    const read = readSource(source);
    this.#renew();
    if ('sentence' in read) {
      this.problem = read.sentence;
      this.#begin(undefined);
      fire(this.#board, 'rheolet-problem', {
        board: this.#board.id,
        id: '',
        code: read.code,
        text: read.sentence,
      });
      return;
    }
    this.problem = '';
    if (needsMore(read) || (this.#isWritten() && !writer())) void this.#beginPrepared(read);
    else this.#begin(read);
  }

  #begin(circuit: Circuit | undefined): void {
    this.#awaiting = undefined;
    this.#took(circuit);
  }

  /** Begins once the part of the engine is there that the circuit needs, or does not come; unless the page gives another one meanwhile. */
  async #beginPrepared(circuit: Circuit): Promise<void> {
    this.#awaiting = circuit;
    await later(prepare(circuit));
    if (this.#isWritten()) await fetchWriter();
    if (this.#awaiting === circuit) this.#begin(circuit);
  }

  /** Whoever waits for what was there before is let go. */
  #renew(): void {
    this.#reach();
    this.ready = new Promise((done) => (this.#reach = done));
  }
}
