import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { sayActivity } from '../../engine/words/activity/index.ts';
import { PageElement, buttons, ink, speak } from '../page/index.ts';
import { partsOf, type Part } from './parts.ts';
import { styles } from './styles.ts';

/**
 * Figures of 14 px become at least this part of the window's height: with a picture 1.35 m high, figures whose capitals are
 * 26 mm high, 9 minutes of arc from ten metres; an eye with full sight reads 5 (ISO 8596, from memory).
 */
const figure = 1 / 36;
/** The least room there must be for a drawing, in pixels of it. */
const narrowest = 340;

/** How much larger everything is in a window of this size. */
export const zoomFor = (width: number, height: number): number =>
  Math.max(1, Math.min((height * figure) / 14, width / narrowest));

/**
 * Boards and what reads them, which fill the screen on request, for the back row: large, in high contrast, their parts revealed one
 * key-press at a time. Page Down and Page Up, which remote controls send, reveal and cover; Escape leaves.
 *
 * @tag rheolet-activity
 * @slot - Boards, meters, values and whatever belongs to them.
 * @csspart bar - The buttons.
 * @csspart act - A button.
 */
export class RheoletActivity extends PageElement {
  static override styles: CSSResultGroup = [ink, buttons, styles];
  static override properties: PropertyDeclarations = { reveal: { type: String } };

  /** What is revealed, in this order: `ribbons` or `readings` (a board’s own, with the glow of its lamps), the last part of a tag (`value`, `meter`, `levels`), or the id of anything inside; `none` covers nothing. */
  declare reveal: string;

  #full = false;
  #parts: readonly Part[] = [];
  #revealed = 0;

  constructor() {
    super();
    this.reveal = '';
  }

  /** Fills the screen, or the window where a page may not have the screen; everything to be revealed is covered. */
  async fill(): Promise<void> {
    if (this.#full) return;
    this.#full = true;
    this.#parts = partsOf(this, this.reveal);
    this.#revealed = 0;
    for (const part of this.#parts) part.cover();
    addEventListener('keydown', this.#key);
    addEventListener('resize', this.#size);
    document.addEventListener('fullscreenchange', this.#screen);
    this.requestUpdate();
    await this.updateComplete;
    this.#size();
    this.#button()?.focus();
    // A frame without leave fills its own window instead, and the console stays quiet.
    if (document.fullscreenEnabled) await this.requestFullscreen().catch(() => undefined);
  }

  /** Gives the page back its screen, with everything revealed. */
  leave(): void {
    if (!this.#full) return;
    this.#full = false;
    for (const part of this.#parts) part.reveal();
    this.#parts = [];
    removeEventListener('keydown', this.#key);
    removeEventListener('resize', this.#size);
    document.removeEventListener('fullscreenchange', this.#screen);
    this.#size();
    if (document.fullscreenElement) void document.exitFullscreen().catch(() => undefined);
    this.requestUpdate();
    void this.updateComplete.then(() => this.#button()?.focus());
  }

  /** Reveals the next part. */
  next(): void {
    const part = this.#parts[this.#revealed];
    if (!part) return;
    part.reveal();
    part.element.scrollIntoView({ block: 'nearest' });
    this.#tell(1);
  }

  /** Covers the part that was revealed last. */
  back(): void {
    this.#parts[this.#revealed - 1]?.cover();
    if (this.#revealed > 0) this.#tell(-1);
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.leave();
  }

  override render(): TemplateResult {
    const button = (
      does: 'fill' | 'leave' | 'next' | 'back',
      act: () => void,
      possible = true,
    ): TemplateResult =>
      html`<button type="button" part="act" ?disabled=${!possible} @click=${act}>
        ${sayActivity({ code: 'activity button', data: { does } })}
      </button>`;
    const count = this.#parts.length;
    const steps = [
      button('next', () => this.next(), this.#revealed < count),
      button('back', () => this.back(), this.#revealed > 0),
    ];
    return html`<div class=${this.#full ? 'full' : ''}>
      <slot></slot>
      <div part="bar" lang="en">
        ${
          this.#full
            ? [count > 0 ? steps : nothing, button('leave', () => this.leave())]
            : button('fill', () => void this.fill())
        }
      </div>
    </div>`;
  }

  #button(): HTMLElement | null {
    return this.renderRoot.querySelector('button');
  }

  #tell(by: 1 | -1): void {
    this.#revealed += by;
    speak(
      this,
      sayActivity({ code: 'revealed', data: { shown: this.#revealed, count: this.#parts.length } }),
    );
    this.requestUpdate();
  }

  readonly #size = (): void => {
    const zoom = this.#full ? String(zoomFor(innerWidth, innerHeight)) : '';
    this.renderRoot.querySelector('div')?.style.setProperty('zoom', zoom);
  };

  /** The browser has left the screen: by Escape, which it keeps to itself there. */
  readonly #screen = (): void => {
    if (!document.fullscreenElement) this.leave();
  };

  /** Keys that a box, a slider or anything else in the activity uses are its own. */
  readonly #key = (event: KeyboardEvent): void => {
    const [target] = event.composedPath();
    if (event.defaultPrevented || event.ctrlKey || event.altKey || event.metaKey) return;
    if (event.key === 'Escape') this.leave();
    else if (target instanceof Element && target.matches('input, select, textarea')) return;
    else if (event.key === 'PageDown') this.next();
    else if (event.key === 'PageUp') this.back();
    else return;
    event.preventDefault();
  };
}
