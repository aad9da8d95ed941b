import { html, LitElement, type PropertyDeclarations, type TemplateResult } from 'lit';
import { CircuitFormatError, say, type Circuit, type Said } from '../../engine/core.ts';
import { BoardLink } from '../link/index.ts';
import { PageElement } from '../page/index.ts';

/** What a control sets: a component, or the surroundings. */
export interface Subject {
  /** What it is called in the circuit; '' where that has no name for it. */
  readonly id: string;
}

/** What a control shows. */
export interface Shown<S extends Subject> {
  readonly subject: S;
  /** What it is called by. */
  readonly name: string;
  /** Its name for the eye, unless a label in the page says it. */
  readonly label: TemplateResult;
  /** Whether it, or a fieldset round it, is disabled. */
  readonly barred: boolean;
}

const problem = (sentence: string): TemplateResult =>
  html`<span part="problem" lang="en" dir="ltr">${sentence}</span>`;

/** What a pupil sets something of a board with: it finds both, takes part in forms, and says why there is nothing to set. */
export abstract class Control<S extends Subject> extends PageElement {
  /** It takes part in forms. */
  static readonly formAssociated = true;
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    delegatesFocus: true,
  };
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
  /** The label of the component in the circuit; not needed where only one can be meant. */
  declare of: string;
  /** A name for it, in place of its label in the circuit. An `aria-label` is taken as one too. */
  declare label: string;
  /** The name under which its value is sent with a form. */
  declare name: string;
  /** Keeps it from being set. */
  declare disabled: boolean;

  protected readonly link: BoardLink = new BoardLink(this);
  readonly #internals: ElementInternals = this.attachInternals();
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

  /** What it is set to, as an exact text; '' while there is nothing to set. */
  get value(): string {
    return this.#wanted ?? (this.subject ? this.text(this.subject) : '');
  }

  set value(text: string) {
    if (this.subject) this.#ask(text);
    else this.#wanted = text;
  }

  /** A form is reset: back to the value that the page gave. */
  formResetCallback(): void {
    if (this.start) this.#ask(this.text(this.start));
  }

  /** The browser brings back what a form held. */
  formStateRestoreCallback(state: string): void {
    this.value = state;
  }

  /** Its form, or a fieldset round it, is disabled or enabled. */
  formDisabledCallback(): void {
    queueMicrotask(() => {
      this.requestUpdate(); // its own attribute may be written in the midst of an update
    });
  }

  /** What of a circuit it sets, or why there is no such thing. */
  protected abstract find(circuit: Circuit): S | Said;

  /** What that is set to, as a text that `put` reads. */
  protected abstract text(subject: S): string;

  /** What the pupil handles. */
  protected abstract handles(shown: Shown<S>): TemplateResult;

  /** Sets it to what a text says. Throws CircuitFormatError where that cannot be had. */
  protected put({ id }: S, text: string): void {
    this.link.board?.set(id, text);
  }

  /** What it sets, as it stands. */
  protected get subject(): S | undefined {
    return this.#in(this.link.snapshot?.circuit);
  }

  /** The same, as the page gave it. */
  protected get start(): S | undefined {
    return this.#in(this.link.snapshot?.start);
  }

  #in(circuit: Circuit | undefined): S | undefined {
    const found = circuit && this.find(circuit);
    return found && !('code' in found) ? found : undefined;
  }

  override willUpdate(): void {
    if (this.#wanted !== undefined && this.subject) {
      const text = this.#wanted;
      this.#wanted = undefined;
      this.#ask(text);
    }
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.link;
    const found = snapshot && this.find(snapshot.circuit);
    if (!found) return problem(trouble);
    if ('code' in found) {
      this.link.report(found.code, say(found));
      return problem(say(found));
    }
    this.link.report();
    const name = this.label || (this.#internals.labels.item(0)?.textContent?.trim() ?? found.id);
    const label = html`<span part="label" ?hidden=${!name || name !== (this.label || found.id)}
      >${name}</span
    >`;
    return this.handles({
      subject: found,
      name,
      label,
      barred: this.disabled || this.matches(':disabled'),
    });
  }

  override updated(): void {
    this.#internals.setFormValue(this.value);
  }

  /** Asks for a value that the page wants, not the pupil; what cannot be had is left. */
  #ask(text: string): void {
    const { subject } = this;
    try {
      if (subject) this.put(subject, text);
    } catch (error) {
      if (!(error instanceof CircuitFormatError)) throw error;
      this.link.report(error.code, error.message);
    }
  }
}
