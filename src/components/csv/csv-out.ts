import {
  html,
  nothing,
  type ReactiveController,
  type ReactiveControllerHost,
  type TemplateResult,
} from 'lit';
import { say } from '../../engine/core.ts';
import { copy, speak } from '../page/index.ts';
import { save } from './save.ts';

/** Whoever has a table that goes out. */
export type CSVHost = ReactiveControllerHost & HTMLElement & { toCSV(): string };

/** The two buttons by which a table goes out as CSV; where the page may neither copy nor save, the text stands in a box, selected. */
export class CSVOut implements ReactiveController {
  readonly #host: CSVHost;
  /** What the file is called, without its ending. */
  readonly #name: () => string;
  #notice = '';
  #text = '';
  /** Whether the box has come with this update. */
  #fresh = false;

  constructor(host: CSVHost, name: () => string) {
    this.#host = host;
    this.#name = name;
    host.addController(this);
  }

  /** A box that has come is selected. */
  hostUpdated(): void {
    if (this.#fresh) this.#host.shadowRoot?.querySelector<HTMLTextAreaElement>('[part=csv]')?.select();
    this.#fresh = false;
  }

  /** The buttons, and what became of a press. */
  get buttons(): TemplateResult {
    const button = (does: 'copy' | 'save'): TemplateResult =>
      html`<button type="button" part="act" @click=${() => void this.#export(does)}>
        ${say({ code: 'table button', data: { does } })}
      </button>`;
    return html`${button('copy')}${button('save')}
      <span part="notice" id="notice" aria-hidden="true">${this.#notice}</span>`;
  }

  /** The text to be copied by hand, if it has to be. */
  get box(): TemplateResult | typeof nothing {
    return this.#text
      ? html`<textarea
          part="csv"
          lang="en"
          readonly
          aria-labelledby="notice"
          .value=${this.#text}
        ></textarea>`
      : nothing;
  }

  async #export(how: 'copy' | 'save'): Promise<void> {
    const csv = this.#host.toCSV();
    const done = how === 'copy' ? await copy(csv) : save(csv, this.#name());
    this.#text = done ? '' : csv;
    this.#fresh = !done;
    this.#notice = done && how === 'save' ? '' : say({ code: 'copied', data: { done } });
    if (done && this.#notice) speak(this.#host, this.#notice);
    this.#host.requestUpdate();
  }
}
