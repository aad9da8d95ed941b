import { html, nothing, type ReactiveControllerHost, type TemplateResult } from 'lit';
import {
  lastSetting,
  nearestSetting,
  quantity,
  readQuantity,
  say,
  settingAt,
  writeQuantity,
  type Fraction,
} from '../../engine/core.ts';
import { changeOfQuantity, fire, spokenQuantity, type BoardLink } from '../link/index.ts';
import { nameOf, settingText, type Dial } from './dial.ts';

/** Three ways to set one quantity: a native slider, a box to type in, and two step buttons. */
export class Slider {
  readonly #host: ReactiveControllerHost & EventTarget;
  readonly #link: BoardLink;
  readonly #dial: () => Dial | undefined;
  /** What is being typed; undefined while the box shows the value. */
  #typed: string | undefined;
  #mistake = '';
  /** Whether it is this slider that last began to move. */
  #moved = false;

  /** The dial is asked for anew whenever it is turned: it is as its board stands. */
  constructor(host: ReactiveControllerHost & EventTarget, link: BoardLink, dial: () => Dial | undefined) {
    this.#host = host;
    this.#link = link;
    this.#dial = dial;
  }

  /** What stands in the element; its parts are called by the name. */
  render(dial: Dial, name: string, barred: boolean): TemplateResult {
    const { hidden, letter, quantity, range } = dial;
    const shown = hidden ? '?' : writeQuantity(quantity).text;
    const setting = nearestSetting(range, quantity.value);
    const last = lastSetting(range);
    const mistake = `mistake-${letter}`;
    const step = (by: 1 | -1): TemplateResult =>
      html`<button
        type="button"
        part="step"
        lang="en"
        aria-label=${say({ code: by > 0 ? 'more' : 'less', data: { id: name } })}
        ?disabled=${barred || (by > 0 ? setting >= last : setting <= 0)}
        @click=${() => this.#step(by)}
      >
        ${by > 0 ? '+' : '−'}
      </button>`;
    return html`<input
        type="range"
        part="slider"
        lang="en"
        max=${last}
        .value=${`${setting}`}
        ?disabled=${barred}
        aria-label=${name}
        aria-valuetext=${hidden ? '?' : spokenQuantity(quantity)}
        @input=${this.#slide}
        @change=${this.settle}
        @blur=${this.settle}
      />
      <span class="exact"
        >${step(-1)}<input
          part="value"
          lang="en"
          dir="ltr"
          inputmode="decimal"
          autocomplete="off"
          spellcheck="false"
          .value=${this.#typed ?? shown}
          ?disabled=${barred}
          aria-label=${say({ code: 'typed', data: { id: name } })}
          aria-invalid=${this.#mistake ? 'true' : nothing}
          aria-describedby=${mistake}
          @input=${this.#type}
          @change=${this.#read}
        />${step(1)}</span
      >
      <span part="problem" id=${mistake} lang="en" dir="ltr">${this.#mistake}</span>`;
  }

  /** What is still moving stays where it is. */
  readonly settle = (): void => {
    removeEventListener('pointerup', this.#letGo);
    const dial = this.#dial();
    if (dial && this.#moves) this.#turn(dial.quantity.value, 'set');
  };

  /** The pupil's value: shown while it moves, or settled. */
  #turn(to: Fraction, how: 'move' | 'set'): void {
    const { board } = this.#link;
    const dial = this.#dial();
    if (!board || !dial) return;
    this.#moved = how === 'move';
    board[how](dial.id, settingText(dial, to));
    const now = this.#dial();
    const name = how === 'move' ? 'rheolet-input' : 'rheolet-change';
    if (now) fire(this.#host, name, changeOfQuantity(board.id, now.id, nameOf(now), now.quantity));
  }

  readonly #slide = ({ target }: Event): void => {
    const range = this.#dial()?.range;
    if (!range || !(target instanceof HTMLInputElement)) return;
    if (!this.#moves) addEventListener('pointerup', this.#letGo, { once: true });
    this.#forget();
    this.#turn(settingAt(range, target.valueAsNumber), 'move');
    this.#host.requestUpdate(); // its own value keeps step with the thumb; other sliders of the quantity follow like digits
    void this.#host.updateComplete.then(() => {
      const now = this.#dial(); // the page may have set it otherwise at once, which the template takes for no change
      if (now) target.value = `${nearestSetting(now.range, now.quantity.value)}`;
    });
  };

  get #moves(): boolean {
    return this.#moved && this.#link.snapshot?.moving === this.#dial()?.id;
  }

  /** A slider brought back to where it was grabbed tells nobody, so the pointer does. */
  readonly #letGo = (): void => void setTimeout(this.settle);

  #step(by: 1 | -1): void {
    const dial = this.#dial();
    if (!dial) return;
    const { range, quantity } = dial;
    this.#forget();
    this.#turn(settingAt(range, nearestSetting(range, quantity.value) + by), 'set');
    this.#host.requestUpdate();
  }

  /** What could not be read has been set another way: the box shows that again. */
  #forget(): void {
    this.#typed = undefined;
    this.#mistake = '';
  }

  readonly #type = ({ target }: Event): void => {
    this.#typed = target instanceof HTMLInputElement ? target.value : undefined;
    this.#mistake = '';
    this.#host.requestUpdate();
  };

  readonly #read = (): void => {
    const dial = this.#dial();
    const typed = this.#typed;
    if (!dial || typed === undefined) return;
    const { unit, prefix } = dial.quantity;
    const read = readQuantity(typed, unit, prefix);
    if ('code' in read) this.#mistake = say(read);
    else this.#take(dial, read.value);
    this.#host.requestUpdate();
  };

  /** What was typed, else the nearest that can be had; what lies outside is said. */
  #take({ range, between }: Dial, value: Fraction): void {
    const { min, max } = range;
    const outside = value.compare(min.value) < 0 || value.compare(max.value) > 0;
    if (outside) {
      const [found, low, high] = [quantity(value, min.unit, min.prefix), min, max].map(
        (each) => writeQuantity(each).text,
      );
      this.#mistake = say({
        code: 'out of range',
        data: { found: found ?? '', low: low ?? '', high: high ?? '' },
      });
    }
    this.#typed = undefined;
    const taken = between && !outside ? value : settingAt(range, nearestSetting(range, value));
    this.#turn(taken, 'set');
  }
}
