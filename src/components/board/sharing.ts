import type { ReactiveElement } from 'lit';
import { say } from '../../engine/core.ts';
import { copy, later, speak } from '../page/index.ts';
import type { PictureOptions } from '../picture/index.ts';

type Pictures = typeof import('../picture/index.ts');

/** What makes pictures of a board, once it has come; undefined where it does not. */
export const fetchPictures = (): Promise<Pictures | undefined> => later(import('../picture/index.ts'));

/** What of a board can be copied, as texts, and saved, as pictures. */
export interface Shareable extends ReactiveElement {
  linkToSetting(): string;
  toText(): string;
  toSVG(options: PictureOptions): Promise<string>;
  toPNG(options: PictureOptions): Promise<Blob | undefined>;
}

/** A picture that can be saved: for slides, for paper, and as lines that can be worked on. */
export type Saved = 'png' | 'print' | 'svg';

/** Copies a board's texts and saves its pictures; where the browser refuses, the text is there to be copied by hand. */
export class Sharing {
  /** Whether the menu is open. */
  isOpen = false;
  /** What is to be said of the last copy, and the text to be copied by hand, while it is open. */
  result: { readonly said: string; readonly text: string } | undefined;
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
    this.#tell(say({ code: 'copied', data: { done } }), done ? '' : text);
    await this.#board.updateComplete;
    const box = this.#board.renderRoot.querySelector<HTMLInputElement>('#copy input');
    box?.focus();
    box?.select();
  }

  /** Saves a picture, named after the board. */
  async save(what: Saved): Promise<void> {
    const board = this.#board;
    const style = what === 'print' ? 'print' : 'light';
    const content =
      what === 'svg'
        ? new Blob([await board.toSVG({ style })], { type: 'image/svg+xml' })
        : await board.toPNG({ style, ...(what === 'print' && { scale: 4 }) });
    const pictures = await fetchPictures();
    const name = `${board.id || 'circuit'}.${what === 'svg' ? 'svg' : 'png'}`;
    const done = Boolean(content?.size && pictures?.save(content, name));
    this.#tell(say({ code: 'saved', data: { done } }), '');
  }

  #tell(said: string, text: string): void {
    this.result = { said, text };
    speak(this, said);
    this.#board.requestUpdate();
  }
}
