import {
  html,
  LitElement,
  nothing,
  type CSSResultGroup,
  type PropertyDeclarations,
  type TemplateResult,
} from 'lit';
import {
  CircuitFormatError,
  exactText,
  lastSetting,
  nearestSetting,
  quantity,
  readQuantity,
  say,
  settingAt,
  writeQuantity,
  type Fraction,
} from '../../engine/index.ts';
import { BoardLink, changeOf, fire, spokenQuantity } from '../link/index.ts';
import { ink } from '../page/index.ts';
import { styles } from './styles.ts';
import { turnableOf, type Turnable } from './turnable.ts';

const problem = (sentence: string): TemplateResult => html`<span part="problem">${sentence}</span>`;

/**
 * A slider-driven resistor: a slider, a box to type in, and two step buttons, in a board or anywhere in a page.
 *
 * @tag rheolet-resistor
 * @attr {string} aria-label - Is taken as `label`.
 * @fires {CustomEvent<ChangeDetail>} rheolet-input - The slider is moving.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A new value has settled.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or nothing to be turned.
 * @csspart label - The name beside the slider.
 * @csspart slider - The slider.
 * @csspart value - The box that shows the value and takes a typed one.
 * @csspart step - A step button.
 * @csspart problem - Why there is nothing to turn, or why what was typed cannot be had.
 */
export class RheoletResistor extends LitElement {
  /** It takes part in forms. */
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };
  static override styles: CSSResultGroup = [ink, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    label: { type: String },
    name: { type: String, reflect: true },
    disabled: { type: Boolean, reflect: true },
    value: { type: String, attribute: false, noAccessor: true },
  };

  /** The id of its board; not needed inside a board, or with only one in the page. */
  declare board: string;
  /** The label of the resistor in the circuit; not needed where only one can be turned. */
  declare of: string;
  /** A name for it, in place of its label in the circuit. An `aria-label` is taken as one too. */
  declare label: string;
  /** The name under which its value is sent with a form. */
  declare name: string;
  /** Keeps it from being turned. */
  declare disabled: boolean;

  readonly #link = new BoardLink(this);
  readonly #internals: ElementInternals = this.attachInternals();
  #barred = false;
  /** What is being typed; undefined while the box shows the value. */
  #typed: string | undefined;
  #mistake = '';
  /** What was asked for before there was a board to ask. */
  #wanted: string | undefined;

  constructor() {
    super();
    this.board = this.of = this.label = this.name = '';
    this.disabled = false;
  }

  static override get observedAttributes(): string[] {
    return [...super.observedAttributes, 'aria-label'];
  }

  override attributeChangedCallback(name: string, before: string | null, now: string | null): void {
    if (name !== 'aria-label') super.attributeChangedCallback(name, before, now);
    else if (now !== null) {
      this.label = now;
      this.removeAttribute(name);
    }
  }

  /** Its ohms as an exact text, such as "20" or "1/3"; '' while there is nothing to turn. */
  get value(): string {
    return this.#wanted ?? (this.#turnable ? exactText(this.#turnable.resistance.value) : '');
  }

  set value(ohms: string) {
    if (this.#turnable) this.#ask(ohms);
    else this.#wanted = ohms;
  }

  /** A form is reset: back to the value that the page gave. */
  formResetCallback(): void {
    const start = this.#link.snapshot?.start.components.find(({ id }) => id === this.#turnable?.id);
    if (start?.kind === 'resistor') this.#ask(exactText(start.resistance.value));
  }

  /** The browser brings back what a form held. */
  formStateRestoreCallback(state: string): void {
    this.value = state;
  }

  /** Its form, or a fieldset round it, is disabled or enabled. */
  formDisabledCallback(barred: boolean): void {
    this.#barred = barred;
    this.requestUpdate();
  }

  override disconnectedCallback(): void {
    this.#settle();
    super.disconnectedCallback();
  }

  get #turnable(): Turnable | undefined {
    const circuit = this.#link.snapshot?.circuit;
    const found = circuit && turnableOf(circuit, this.of);
    return found && 'kind' in found ? found : undefined;
  }

  override willUpdate(): void {
    if (this.#wanted !== undefined && this.#turnable) {
      const ohms = this.#wanted;
      this.#wanted = undefined;
      this.#ask(ohms);
    }
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.#link;
    const found = snapshot && turnableOf(snapshot.circuit, this.of);
    if (!found) return problem(trouble);
    if ('code' in found) {
      this.#link.report(found.code, say(found));
      return problem(say(found));
    }
    this.#link.report();
    const { id, range, resistance, hidden } = found;
    const shown = hidden ? '?' : writeQuantity(resistance).text;
    const name = this.label || (this.#internals.labels.item(0)?.textContent?.trim() ?? id);
    const setting = nearestSetting(range, resistance.value);
    const last = lastSetting(range);
    const barred = this.disabled || this.#barred;
    const step = (by: 1 | -1): TemplateResult =>
      html`<button
        type="button"
        part="step"
        aria-label=${say({ code: by > 0 ? 'more' : 'less', data: { id: name } })}
        ?disabled=${barred || (by > 0 ? setting >= last : setting <= 0)}
        @click=${() => this.#step(by)}
      >
        ${by > 0 ? '+' : '−'}
      </button>`;
    return html`<span part="label" ?hidden=${!this.label && name !== id}>${name}</span>
      <input
        type="range"
        part="slider"
        max=${last}
        .value=${`${setting}`}
        ?disabled=${barred}
        aria-label=${name}
        aria-valuetext=${hidden ? '?' : spokenQuantity(resistance)}
        @input=${this.#slide}
        @change=${this.#settle}
        @blur=${this.#settle}
      />
      <span class="exact"
        >${step(-1)}<input
          part="value"
          inputmode="decimal"
          autocomplete="off"
          spellcheck="false"
          .value=${this.#typed ?? shown}
          ?disabled=${barred}
          aria-label=${say({ code: 'typed', data: { id: name } })}
          aria-invalid=${this.#mistake ? 'true' : nothing}
          aria-describedby="mistake"
          @input=${this.#type}
          @change=${this.#read}
        />${step(1)}</span
      >
      <span part="problem" id="mistake">${this.#mistake}</span>`;
  }

  override updated(): void {
    this.#internals.setFormValue(this.value);
  }

  /** Asks for a value that the page wants, not the pupil; what cannot be had is left. */
  #ask(ohms: string): void {
    const id = this.#turnable?.id;
    try {
      if (id !== undefined) this.#link.board?.set(id, ohms);
    } catch (error) {
      if (!(error instanceof CircuitFormatError)) throw error;
      this.#link.report(error.code, error.message);
    }
  }

  /** The pupil's value: shown while it moves, or settled. */
  #turn(to: Fraction, how: 'move' | 'set'): void {
    const { board } = this.#link;
    const id = this.#turnable?.id;
    if (!board || id === undefined) return;
    board[how](id, to);
    const now = this.#turnable;
    if (now) fire(this, how === 'move' ? 'rheolet-input' : 'rheolet-change', changeOf(board.id, now));
  }

  readonly #slide = ({ target }: Event): void => {
    const range = this.#turnable?.range;
    if (!range || !(target instanceof HTMLInputElement)) return;
    if (!this.#moves) addEventListener('pointerup', this.#letGo, { once: true });
    this.#turn(settingAt(range, target.valueAsNumber), 'move');
    this.requestUpdate(); // its own value keeps step with the thumb; other sliders of the resistor follow like digits
  };

  get #moves(): boolean {
    return this.#link.snapshot?.moving === this.#turnable?.id;
  }

  /** A slider brought back to where it was grabbed tells nobody, so the pointer does. */
  readonly #letGo = (): void => void setTimeout(this.#settle);

  readonly #settle = (): void => {
    removeEventListener('pointerup', this.#letGo);
    const turnable = this.#turnable;
    if (turnable && this.#moves) this.#turn(turnable.resistance.value, 'set');
  };

  #step(by: 1 | -1): void {
    const turnable = this.#turnable;
    if (!turnable) return;
    const { range, resistance } = turnable;
    this.#turn(settingAt(range, nearestSetting(range, resistance.value) + by), 'set');
  }

  readonly #type = ({ target }: Event): void => {
    this.#typed = target instanceof HTMLInputElement ? target.value : undefined;
    this.#mistake = '';
    this.requestUpdate();
  };

  readonly #read = (): void => {
    const turnable = this.#turnable;
    const typed = this.#typed;
    if (!turnable || typed === undefined) return;
    const { unit, prefix } = turnable.resistance;
    const read = readQuantity(typed, unit, prefix);
    if ('code' in read) this.#mistake = say(read);
    else this.#take(turnable, read.value);
    this.requestUpdate();
  };

  /** The nearest setting to what was typed; what lies outside is said. */
  #take({ range }: Turnable, ohms: Fraction): void {
    const { min, max } = range;
    if (ohms.compare(min.value) < 0 || ohms.compare(max.value) > 0) {
      const [found, low, high] = [quantity(ohms, 'Ω', min.prefix), min, max].map(
        (each) => writeQuantity(each).text,
      );
      this.#mistake = say({
        code: 'out of range',
        data: { found: found ?? '', low: low ?? '', high: high ?? '' },
      });
    }
    this.#typed = undefined;
    this.#turn(settingAt(range, nearestSetting(range, ohms)), 'set');
  }
}
