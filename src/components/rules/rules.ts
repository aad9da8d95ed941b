import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say } from '../../engine/core.ts';
import { BoardLink, fire } from '../link/index.ts';
import { PageElement, buttons, formulas, ink, later } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { holdingItem, refusalItem } from './line-item.ts';
import type { Holding, Line, Refusal } from './lines.ts';
import type { Predictions } from './prediction.ts';
import { sheet } from './styles.ts';
import { viewOf, type View } from './view.ts';

/** How far each key goes along the lines. */
const steps: Readonly<Record<string, number>> = {
  ArrowDown: 1,
  ArrowUp: -1,
  Home: -Infinity,
  End: Infinity,
};

/**
 * The rule checker: the rules of series and parallel circuits, Kirchhoff's two laws, Ohm's law and the balance of power, each
 * wherever it holds on the board as it stands, with its numbers; folded away, those that do not apply, and why. Pointing at a
 * line or focusing it makes its components stand out on the board; the arrow keys, Home and End go from line to line.
 *
 * @tag rheolet-rules
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, component or rule.
 * @fires {CustomEvent<AnswerDetail>} rheolet-answer - A prediction was compared with the board.
 * @csspart rule - A rule in words, above the places where it holds.
 * @csspart line - The rule at one place.
 * @csspart why - Why it applies there, or why it does not.
 * @csspart symbols - The equation in symbols.
 * @csspart numbers - The equation with its numbers.
 * @csspart verdict - That it holds, and whether its numbers are rounded.
 * @csspart work - A button that shows how the line's first number follows from what the circuit states.
 * @csspart predictions - A table of the pupil's predictions.
 * @csspart prediction - A box for one.
 * @csspart compare - The button that compares them with the board.
 * @csspart others - What is folded away: the rules that do not apply.
 * @csspart obstacle - Why no rule can be checked: what is wrong with the circuit, or where it is open.
 * @csspart problem - What is wrong with what the page asks for.
 */
export class RheoletRules extends PageElement {
  static override styles: CSSResultGroup = [ink, buttons, formulas, sheet];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    rules: { type: String },
    predict: { type: Boolean },
  };

  /** The id of the board; unless said, the one the rules stand in or the only one of the page. */
  declare board: string;
  /** Only rules about this component. */
  declare of: string;
  /**
   * Which rules, by their names or the beginnings of these: `series-current`, `series-p.d.`, `series-resistance`,
   * `parallel-p.d.`, `parallel-current`, `parallel-resistance`, `junction`, `loop`, `ohm`, `power`; `series` is all three.
   * Unless said, every rule.
   */
  declare rules: string;
  /** The numbers are for the pupil to predict, in a table under each rule, and then to compare with the board. */
  declare predict: boolean;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  #view: View | undefined;
  /** The key of the line that the Tab key comes to. */
  #at = '';
  /** The key of the line whose numbers are worked out. */
  #open = '';
  /** What the pupil predicts, by the names of quantities, and whether it is compared with the board. */
  #typed: ReadonlyMap<string, string> = new Map();
  #revealed = false;
  #prediction: typeof import('./prediction.ts') | undefined;
  /** Whether a line has the focus. */
  #focused = false;

  constructor() {
    super();
    this.board = this.of = this.rules = '';
    this.predict = false;
  }

  override willUpdate(): void {
    const { snapshot } = this.#link;
    this.#focused = Boolean(this.shadowRoot?.activeElement?.matches('[part=line]'));
    const predict = this.predict && !this.#revealed;
    this.#view = snapshot && viewOf(snapshot, { rules: this.rules, of: this.of, predict });
    if (this.predict && !this.#prediction) void this.#fetchPrediction();
    const problem = this.#view?.problem;
    if (snapshot) this.#link.report(problem?.code, problem && say(problem));
    const keys = this.#lines.map(({ key }) => key);
    if (!keys.includes(this.#at)) this.#at = keys[0] ?? '';
  }

  override render(): TemplateResult {
    const view = this.#view;
    if (!view) return html`<p part="problem" lang="en" dir="ltr">${this.#link.trouble}</p>`;
    const { problem, obstacles, holding, refusals } = view;
    const rules = [...new Set(holding.map(({ rule }) => rule))];
    return html`<div
      lang="en"
      dir="ltr"
      @mouseover=${this.#shine}
      @mouseleave=${this.#shine}
      @focusin=${this.#enter}
      @focusout=${this.#shine}
      @keydown=${this.#step}
    >
      ${problem ? html`<p part="problem">${say(problem)}</p>` : nothing}
      ${obstacles.map((obstacle) => html`<p part="obstacle">${obstacle}</p>`)}
      ${rules.map((rule) => {
        const lines = holding.filter((line) => line.rule === rule);
        return html`<p part="rule">${rule}</p>
          ${this.#list(rule, lines, this.#holding)} ${this.#table(lines)}`;
      })}
      ${this.predict && holding.length > 0 ? this.#prediction?.compareButton(this.#predictions, this.#compare) : nothing}
      ${refusals.length > 0 ? this.#folded(refusals, holding.length === 0) : nothing}
    </div>`;
  }

  /** The focus stays with what a line says, wherever that has gone in the list. */
  override updated(): void {
    if (this.#focused) this.#items.find(({ tabIndex }) => tabIndex === 0)?.focus();
    this.#shine();
  }

  get #lines(): readonly Line[] {
    return [...(this.#view?.holding ?? []), ...(this.#view?.refusals ?? [])];
  }

  /** The lines that can be seen. */
  get #items(): readonly HTMLElement[] {
    const items = this.renderRoot.querySelectorAll<HTMLElement>('[part=line]');
    return [...items].filter((item) => item.checkVisibility());
  }

  #list<L extends Line>(
    name: string,
    lines: readonly L[],
    item: (line: L, isCurrent: boolean) => TemplateResult,
  ): TemplateResult {
    return html`<ul role="list" aria-label=${name}>
      ${lines.map((line) => item(line, line.key === this.#at))}
    </ul>`;
  }

  /** A line with how its first number follows from what the circuit states; a block too long to be named has no name to ask by. */
  readonly #holding = (line: Holding, isCurrent: boolean): TemplateResult => {
    const first = line.terms.find(({ name }) => !name.includes('…'));
    const isCovered = this.#link.snapshot?.covered === true || (this.predict && !this.#revealed);
    if (!first || isCovered) return holdingItem(line, isCurrent);
    const solution =
      this.#open === line.key
        ? html`<rheolet-steps .board=${this.board} of=${first.name} mode="whole"></rheolet-steps>`
        : nothing;
    return holdingItem(line, isCurrent, { solution, toggle: () => void this.#work(line.key) });
  };

  /** Opens how a line's number is worked out, or closes it; what does that is fetched where it is asked for. */
  async #work(key: string): Promise<void> {
    this.#open = this.#open === key ? '' : key;
    this.requestUpdate();
    await later(import('../steps/define.ts'));
  }

  async #fetchPrediction(): Promise<void> {
    this.#prediction = await later(import('./prediction.ts'));
    if (this.#prediction) this.requestUpdate();
  }

  get #predictions(): Predictions {
    const write = (name: string, text: string): void => {
      this.#typed = new Map([...this.#typed, [name, text]]);
      this.requestUpdate();
    };
    return { typed: this.#typed, revealed: this.#revealed, write };
  }

  #table(lines: readonly Holding[]): TemplateResult | typeof nothing {
    const { snapshot } = this.#link;
    if (!this.predict || !snapshot) return nothing;
    return this.#prediction?.predictionTable(snapshot, lines, this.#predictions) ?? nothing;
  }

  /** Compares the predictions with the board, of which the page is told, or covers the numbers again. */
  readonly #compare = (): void => {
    const { snapshot, board } = this.#link;
    this.#revealed = !this.#revealed;
    this.requestUpdate();
    if (!this.#revealed || !snapshot || !this.#prediction) return;
    for (const one of this.#prediction.predictedOf(snapshot, this.#view?.holding ?? [])) {
      const text = this.#typed.get(one.name) ?? '';
      if (!text.trim()) continue;
      const right = this.#prediction.isRight(text, one);
      fire(this, 'rheolet-answer', {
        board: board?.id ?? '',
        quantity: one.name,
        value: Number(one.value),
        text,
        right,
      });
    }
  };

  #folded(refusals: readonly Refusal[], isOnly: boolean): TemplateResult {
    const count = refusals.flatMap(({ rules }) => rules).length;
    const name = say({ code: 'do not apply', data: { count } });
    return html`<details part="others" ?open=${isOnly} @toggle=${this.#fold}>
      <summary>${name}</summary>
      ${this.#list(name, refusals, refusalItem)}
    </details>`;
  }

  /** A line that is folded away cannot be the one that the Tab key comes to. */
  readonly #fold = (): void => {
    if (!this.#items.some(({ tabIndex }) => tabIndex === 0)) this.#at = '';
    this.requestUpdate();
  };

  readonly #enter = ({ target }: Event): void => {
    const key = target instanceof HTMLElement ? target.dataset['key'] : undefined;
    if (key !== undefined && key !== this.#at) {
      this.#at = key;
      this.requestUpdate();
    }
    this.#shine();
  };

  readonly #step = (event: KeyboardEvent): void => {
    const by = steps[event.key];
    const items = this.#items;
    const at = items.findIndex((item) => item === event.target);
    if (by === undefined || at < 0) return;
    event.preventDefault();
    items[Math.min(Math.max(at + by, 0), items.length - 1)]?.focus();
  };

  /** What is pointed at, else what has the focus, stands out. */
  readonly #shine = (): void => {
    const root = this.renderRoot;
    const item =
      root.querySelector<HTMLElement>('[part=line]:hover') ??
      root.querySelector<HTMLElement>('[part=line]:focus');
    const line = this.#lines.find(({ key }) => key === item?.dataset['key']);
    this.#spotlight.shine(this.#link.board, line?.about ?? []);
  };
}
