import { html, nothing, type TemplateResult } from 'lit';
import { say, type Circuit } from '../../engine/core.ts';
import { later } from '../page/index.ts';
import type { Shareable, Sharing } from '../share/index.ts';

/** A board's menu: its button is there at once, what it holds comes when it is opened for the first time. */
export class Menu {
  #isOpen = false;
  #sharing: Sharing | undefined;
  readonly #board: Shareable;

  constructor(board: Shareable) {
    this.#board = board;
  }

  /** The button that opens and closes the menu. */
  button(): TemplateResult {
    return html`<button
      type="button"
      part="act"
      aria-expanded=${this.#isOpen}
      aria-controls="copy"
      @click=${() => this.#open(!this.#isOpen)}
    >
      ${say({ code: 'button', data: { does: 'copy' } })}
    </button>`;
  }

  /** What can be taken along of a board. */
  panel(circuit: Circuit, drawn: boolean): TemplateResult {
    const escape = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') void this.#open(false);
    };
    return html`<div id="copy" class="acts" lang="en" ?hidden=${!this.#isOpen} @keydown=${escape}>
      ${this.#sharing?.panel(circuit, drawn) ?? nothing}
    </div>`;
  }

  /** Opens the menu, or closes it and gives the focus back to its button. */
  async #open(isOpen: boolean): Promise<void> {
    if (!this.#sharing) {
      // Browsers let a page copy right after a press alone: by then what writes the text has come, too.
      const [share] = await Promise.all([later(import('../share/index.ts')), this.#board.toText()]);
      if (!share) return;
      this.#sharing = new share.Sharing(this.#board);
    }
    this.#isOpen = isOpen;
    this.#sharing.clear();
    this.#board.requestUpdate();
    if (!isOpen) this.#board.renderRoot.querySelector<HTMLElement>('[aria-controls=copy]')?.focus();
  }
}
