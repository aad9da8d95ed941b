import type { ReactiveElement } from 'lit';
import { say } from '../../engine/core.ts';
import { copy, speak } from '../page/index.ts';

/** What can be copied of a board, as texts. */
export interface Shareable extends ReactiveElement {
  linkToSetting(): string;
  toText(): string;
}

/** Copies a board's texts; where the browser refuses, the text is there to be copied by hand. */
export class Sharing {
  /** Whether the menu is open. */
  isOpen = false;
  /** What was copied last, while it is open. */
  result: { readonly text: string; readonly done: boolean } | undefined;
  readonly #board: Shareable;

  constructor(board: Shareable) {
    this.#board = board;
  }

  /** Opens the menu, or closes it and gives the focus back to its button. */
  open(isOpen: boolean): void {
    this.isOpen = isOpen;
    this.result = undefined;
    this.#board.requestUpdate();
    if (!isOpen) this.#board.renderRoot.querySelector<HTMLElement>('[aria-controls=copy]')?.focus();
  }

  /** Copies the link or the circuit. */
  async copy(what: 'link' | 'text'): Promise<void> {
    const text = what === 'link' ? this.#board.linkToSetting() : this.#board.toText();
    const done = await copy(text);
    this.result = { text, done };
    speak(this, say({ code: 'copied', data: { done } }));
    this.#board.requestUpdate();
    await this.#board.updateComplete;
    const box = this.#board.renderRoot.querySelector<HTMLInputElement>('#copy input');
    box?.focus();
    box?.select();
  }
}
