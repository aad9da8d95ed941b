import type { ReactiveController, ReactiveControllerHost } from 'lit';
import { cancelFrame, nextFrame, type FrameTask } from './frame.ts';

/** How wide its host is; updates the host when that changes. */
export class Room implements ReactiveController, FrameTask {
  /** In pixels; 0 until it is known. */
  width = 0;
  /** Fulfilled once it is known: what waits for it is rendered once. */
  readonly known: Promise<void>;
  #know: () => void = () => undefined;
  readonly #host: ReactiveControllerHost & HTMLElement;
  readonly #size = new ResizeObserver(() => nextFrame(this));
  #measured = 0;

  constructor(host: ReactiveControllerHost & HTMLElement) {
    this.#host = host;
    this.known = new Promise((done) => (this.#know = done));
    host.addController(this);
  }

  hostConnected(): void {
    this.#size.observe(this.#host);
    nextFrame(this);
  }

  hostDisconnected(): void {
    this.#size.disconnect();
    cancelFrame(this);
  }

  measure(): void {
    this.#measured = this.#host.clientWidth;
  }

  draw(): void {
    this.#know();
    if (this.#measured === this.width) return;
    this.width = this.#measured;
    this.#host.requestUpdate();
  }
}
