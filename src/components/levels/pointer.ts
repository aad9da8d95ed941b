import type { ReactiveController, ReactiveControllerHost } from 'lit';

/** Which component of a drawing the pupil points at or has come to by key. */
export class Pointer implements ReactiveController {
  /** '' for none. */
  id = '';
  readonly #host: ReactiveControllerHost;
  #drawing: ShadowRoot | null | undefined;

  constructor(host: ReactiveControllerHost) {
    this.#host = host;
    host.addController(this);
  }

  /** Watches another drawing, or none, from inside: steps from one component to the next are not heard of outside a shadow root. */
  follow(drawing: ShadowRoot | null | undefined): void {
    if (drawing === this.#drawing) return;
    for (const type of ['pointerover', 'pointerout', 'focusin', 'focusout']) {
      this.#drawing?.removeEventListener(type, this);
      drawing?.addEventListener(type, this);
    }
    this.#drawing = drawing;
    this.id = '';
  }

  hostDisconnected(): void {
    this.follow(undefined);
  }

  /** The pupil comes to a component of the drawing, or leaves it. */
  handleEvent(event: Event): void {
    const group = event.composedPath().find((target) => target instanceof SVGElement && target.dataset['id']);
    const comes = /over|in$/.test(event.type) && group instanceof SVGElement;
    const id = comes ? (group.dataset['id'] ?? '') : '';
    if (id === this.id) return;
    this.id = id;
    this.#host.requestUpdate();
  }
}
