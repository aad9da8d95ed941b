import {
  html,
  LitElement,
  nothing,
  type CSSResultGroup,
  type PropertyDeclarations,
  type TemplateResult,
} from 'lit';
import { testClaim, unset, type ClaimMistake, type ClaimVerdict } from '../../engine/claims/index.ts';
import { say } from '../../engine/reasons/index.ts';
import { asRead, BoardLink, fire, inLetters, type Snapshot } from '../link/index.ts';
import { PageElement, buttons, ink, speak } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { failsText, nowText, verdictText } from './finding.ts';
import { heard, named, seen } from './statement.ts';
import { styles } from './styles.ts';

/**
 * Tests a statement of the pupil over the quantities of a board (`V_R1 = 2 V_R2`): whether it holds always, never or only sometimes
 * when sliders and switches are turned. Where it fails the board can be moved to, and back by undoing.
 *
 * @tag rheolet-claim
 * @fires {CustomEvent<ClaimDetail>} rheolet-claim - The pupil tested a statement.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - From its board: the pupil moved it to where the statement fails.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board.
 * @fires change - The pupil wrote or picked a statement.
 * @csspart label - What the box is called.
 * @csspart statement - The box with the statement.
 * @csspart act - A button.
 * @csspart choice - A statement to pick.
 * @csspart verdict - Whether it holds always, never or sometimes, and where it fails.
 * @csspart now - Whether it holds as the board stands, with both sides.
 * @csspart mistake - The statement that is not understood, its mistake marked.
 * @csspart problem - Why it is not understood, or why there is no board.
 */
export class RheoletClaim extends PageElement {
  /** It takes part in forms. */
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };
  static override styles: CSSResultGroup = [ink, buttons, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    claim: { type: String },
    choices: { type: String },
    label: { type: String },
    name: { type: String, reflect: true },
    disabled: { type: Boolean, reflect: true },
  };

  /** The id of its board; not needed inside a board, or with only one in the page. */
  declare board: string;
  /** The statement that stands in the box at first, such as `I_A1 + I_A2 = I_A3`. */
  declare claim: string;
  /** Statements to pick from, with semicolons between: `V_R1 = V_R2; V_R1 > V_R2`. */
  declare choices: string;
  /** What the box is called. */
  declare label: string;
  /** The name under which the statement is sent with a form. */
  declare name: string;
  /** Keeps it from being tested. */
  declare disabled: boolean;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  readonly #internals: ElementInternals = this.attachInternals();
  /** What the pupil wrote; undefined while the page's own statement stands there. */
  #typed: string | undefined;
  #barred = false;
  /** What was found out, of which circuit, whatever it is set to; undefined while the statement is not tested. */
  #found: { readonly verdict: ClaimVerdict; readonly circuit: string } | undefined;

  constructor() {
    super();
    this.board = this.claim = this.choices = this.label = this.name = '';
    this.disabled = false;
  }

  /** The statement in the box. */
  get value(): string {
    return this.#typed ?? this.claim;
  }

  set value(text: string) {
    this.#write(text);
  }

  /** A form is reset: back to the statement that the page gave. */
  formResetCallback(): void {
    this.#write(undefined);
  }

  /** The browser brings back what a form held. */
  formStateRestoreCallback(state: string): void {
    this.value = state;
  }

  /** Its form, or a fieldset round it, is disabled or enabled. */
  formDisabledCallback(barred: boolean): void {
    this.#barred = barred;
    queueMicrotask(() => this.requestUpdate()); // its own attribute may be written in the midst of an update
  }

  /** What holds at all settings of a circuit is found out again when it becomes another one. */
  override willUpdate(): void {
    const { snapshot } = this.#link;
    if (!snapshot || snapshot.moving !== undefined || !this.#found) return;
    if (this.#found.circuit !== unset(snapshot.circuit)) this.#find(snapshot);
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.#link;
    if (!snapshot) return html`<p part="problem" lang="en" dir="ltr">${trouble}</p>`;
    const { course } = snapshot;
    const barred = this.disabled || this.#barred;
    const mistake = this.#found?.verdict.mistake;
    return html`<div
      @focusin=${this.#shine}
      @focusout=${this.#shine}
      @mouseenter=${this.#shine}
      @mouseleave=${this.#shine}
    >
      <label part="label" for="statement" lang=${this.label ? nothing : 'en'}
        >${this.label || say({ code: 'statement', data: {} })}</label
      >
      <div class="row">
        <input
          id="statement"
          part="statement"
          dir="ltr"
          autocomplete="off"
          autocapitalize="off"
          spellcheck="false"
          .value=${this.#typed ?? inLetters(this.claim, course)}
          ?disabled=${barred}
          aria-invalid=${mistake ? 'true' : nothing}
          aria-describedby="mistake"
          @input=${this.#type}
          @change=${this.#changed}
          @keydown=${this.#enter}
        />
        <button type="button" part="act" lang="en" ?disabled=${barred} @click=${this.#test}>
          ${say({ code: 'claim button', data: { does: 'test' } })}
        </button>
      </div>
      ${this.#choices(snapshot, barred)}
      <div class="found" lang="en" dir="ltr">
        ${mistake ? this.#refusal(snapshot, mistake) : this.#finding(snapshot)}
      </div>
    </div>`;
  }

  override updated(): void {
    this.#internals.setFormValue(this.value);
  }

  #choices({ course }: Snapshot, barred: boolean): TemplateResult | typeof nothing {
    const choices = this.choices.split(';').flatMap((text) => inLetters(text.trim(), course) || []);
    if (choices.length === 0) return nothing;
    return html`<ul class="row" role="list" lang="en" dir="ltr">
      ${choices.map(
        (text) =>
          html`<li>
            <button
              type="button"
              part="choice"
              aria-pressed=${text === this.value}
              ?disabled=${barred}
              @click=${() => this.#pick(text)}
            >
              <span aria-hidden="true">${seen(text)}</span><span class="heard">${heard(text, course)}</span>
            </button>
          </li>`,
      )}
    </ul>`;
  }

  /** Why it is not understood, where, and what to write instead. */
  #refusal({ course }: Snapshot, { wrong, at, end, suggestion }: ClaimMistake): TemplateResult {
    const text = this.value;
    const better = inLetters(suggestion, course);
    const instead = text.slice(0, at) + better + text.slice(end);
    return html`<p part="problem" id="mistake">${inLetters(say(wrong), course)}</p>
      <p part="mistake" aria-hidden="true">
        ${text.slice(0, at)}<mark>${text.slice(at, end) || '\u2002'}</mark>${text.slice(end)}
      </p>
      ${
        better
          ? html`<button type="button" part="act" @click=${() => this.#pick(instead)}>
              ${say({ code: 'write so', data: { text: better } })}
            </button>`
          : nothing
      }`;
  }

  #finding(snapshot: Snapshot): TemplateResult | typeof nothing {
    const verdict = this.#found?.verdict;
    if (!verdict) return nothing;
    const { counterexample } = verdict;
    return html`<p part="verdict">${this.#said(snapshot, verdict)}</p>
      ${
        counterexample
          ? html`<button type="button" part="act" @click=${() => this.#link.board?.act(counterexample)}>
              ${say({ code: 'claim button', data: { does: 'go' } })}
            </button>`
          : nothing
      }
      <p part="now">${nowText(snapshot, asRead(this.value))}</p>`;
  }

  #said(snapshot: Snapshot, verdict: ClaimVerdict): string {
    const { counterexample } = verdict;
    const fails = counterexample ? failsText(snapshot, counterexample) : '';
    return [verdictText(snapshot, verdict), fails].filter(Boolean).join(' ');
  }

  /** Another statement, which is not tested yet. */
  #write(text: string | undefined): void {
    this.#typed = text;
    this.#found = undefined;
    this.requestUpdate();
  }

  readonly #type = ({ target }: Event): void => {
    if (target instanceof HTMLInputElement) this.#write(target.value);
  };

  readonly #changed = (): void => void this.dispatchEvent(new Event('change', { bubbles: true }));

  readonly #enter = ({ key }: KeyboardEvent): void => {
    if (key === 'Enter') this.#test();
  };

  #pick(text: string): void {
    this.#write(text);
    this.#changed();
    this.#test();
  }

  #find({ circuit }: Snapshot): ClaimVerdict {
    const verdict = testClaim(circuit, asRead(this.value));
    this.#found = { verdict, circuit: unset(circuit) };
    return verdict;
  }

  /** The pupil's test is heard and told to the page; where it is not understood the mistake stands selected. */
  readonly #test = (): void => {
    const { snapshot, board } = this.#link;
    if (!snapshot || this.disabled || this.#barred) return;
    const { mistake, ...found } = this.#find(snapshot);
    const said = mistake ? inLetters(say(mistake.wrong), snapshot.course) : this.#said(snapshot, found);
    speak(this, said);
    fire(this, 'rheolet-claim', {
      board: board?.id ?? '',
      claim: this.value,
      verdict: found.verdict,
      proved: found.proved,
    });
    this.requestUpdate();
    if (mistake) void this.updateComplete.then(() => this.#select(mistake));
  };

  #select({ at, end }: ClaimMistake): void {
    const box = this.renderRoot.querySelector<HTMLInputElement>('[part=statement]');
    box?.focus();
    box?.setSelectionRange(at, end);
  }

  /** While it is pointed at or has the focus, the components of the statement stand out. In Firefox `:hover` is true only from the mouse's events on. */
  readonly #shine = (): void => {
    const { snapshot, board } = this.#link;
    const isMeant = this.matches(':hover, :focus-within');
    this.#spotlight.shine(board, isMeant && snapshot ? named(this.value, snapshot.circuit) : []);
  };
}
