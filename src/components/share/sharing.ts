import { html, nothing, type ReactiveElement, type TemplateResult } from 'lit';
import { say, type Circuit } from '../../engine/core.ts';
import { copy, speak } from '../page/index.ts';
import type { PictureOptions } from '../picture/index.ts';
import { save } from '../save/index.ts';

/** What of a board can be copied, as texts, and saved, as pictures. */
export interface Shareable extends ReactiveElement {
  linkToSetting(): string;
  toText(): Promise<string>;
  toSVG(options: PictureOptions): Promise<string>;
  toPNG(options: PictureOptions): Promise<Blob | undefined>;
}

/** A picture that can be saved: for slides, for paper, and as lines that can be worked on. */
type Saved = 'png' | 'print' | 'svg';

const word = (does: 'link' | 'text' | Saved): string => say({ code: 'button', data: { does } });

/** What a board's menu holds: it copies a board's texts and saves its pictures; where the browser refuses, the text is there to be copied by hand. */
export class Sharing {
  /** What is to be said of the last copy, and the text to be copied by hand. */
  #result: { readonly said: string; readonly text: string } | undefined;
  readonly #board: Shareable;

  constructor(board: Shareable) {
    this.#board = board;
  }

  /** Forgets what was copied last. */
  clear(): void {
    this.#result = undefined;
  }

  /** What can be taken along of a board: a link, where the page has an address, the circuit, unless it would tell a hidden value, and pictures of what is drawn. */
  panel({ components }: Circuit, drawn: boolean): TemplateResult {
    const result = this.#result;
    const button = (does: 'link' | 'text'): TemplateResult =>
      html`<button type="button" part="act" @click=${() => this.#copy(does)}>${word(does)}</button>`;
    const picture = (does: Saved): TemplateResult =>
      html`<button type="button" part="act" @click=${() => this.#save(does)}>${word(does)}</button>`;
    return html`${/^(http|file)/.test(location.protocol) ? button('link') : nothing}
    ${components.some(({ hidden }) => hidden) ? nothing : button('text')}
    ${drawn ? [picture('png'), picture('print'), picture('svg')] : nothing}
    ${
      result &&
      html`<label dir="ltr"
        >${result.said} ${result.text ? html`<input readonly .value=${result.text} />` : nothing}</label
      >`
    }`;
  }

  async #copy(what: 'link' | 'text'): Promise<void> {
    const text = what === 'link' ? this.#board.linkToSetting() : await this.#board.toText();
    const done = text !== '' && (await copy(text));
    this.#tell(say({ code: 'copied', data: { done } }), done ? '' : text);
    await this.#board.updateComplete;
    const box = this.#board.renderRoot.querySelector<HTMLInputElement>('#copy input');
    box?.focus();
    box?.select();
  }

  /** Saves a picture, named after the board. */
  async #save(what: Saved): Promise<void> {
    const board = this.#board;
    const style = what === 'print' ? 'print' : 'light';
    const content =
      what === 'svg'
        ? new Blob([await board.toSVG({ style })], { type: 'image/svg+xml' })
        : await board.toPNG({ style, ...(what === 'print' && { scale: 4 }) });
    const done = Boolean(
      content?.size && save(content, `${board.id || 'circuit'}.${what === 'svg' ? 'svg' : 'png'}`),
    );
    this.#tell(say({ code: 'saved', data: { done } }), '');
  }

  #tell(said: string, text: string): void {
    this.#result = { said, text };
    speak(this.#board, said);
    this.#board.requestUpdate();
  }
}
