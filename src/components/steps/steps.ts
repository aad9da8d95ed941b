import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { nearest } from '../../engine/core.ts';
import type { Step, Worked } from '../../engine/explain/index.ts';
import { say, type GapMistake } from '../../engine/reasons/index.ts';
import { BoardLink, fire, type Snapshot } from '../link/index.ts';
import { PageElement, buttons, formulas, ink, later, speak } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { equation, repeats, lines, rungs, sentence, type Mode } from './line.ts';
import { Solving } from './solving.ts';
import { spoken } from './spoken.ts';
import { styles } from './styles.ts';

const modes: readonly Mode[] = ['steps', 'whole', 'hints', 'gaps'];
const isMode = (text: string): text is Mode => modes.some((mode) => mode === text);

/** How many rungs are uncovered before anything is pressed, and by one press. */
const starts: Readonly<Record<Mode, number>> = { steps: 0, whole: Infinity, hints: 0, gaps: rungs - 1 };
const strides: Readonly<Record<Mode, number>> = { steps: rungs, whole: 0, hints: 1, gaps: rungs };
const words = { steps: 'step', whole: 'step', hints: 'hint', gaps: 'answer' } as const;

/** How far each key goes along the steps. */
const ways: Readonly<Record<string, number>> = { ArrowDown: 1, ArrowUp: -1, Home: -Infinity, End: Infinity };
/** The keys of a presenter's remote control. */
const turns: Readonly<Record<string, 1 | -1>> = { PageDown: 1, PageUp: -1 };

/**
 * The worked solution of a question about a board's circuit: what is asked follows from what is given, one rule and one equation a
 * step, with the numbers of the board as it stands. It is uncovered a step at a time, a hint at a time, or as its numbers are filled
 * in. Pointing at a step or focusing it makes its components stand out on the board; PageDown uncovers, PageUp covers again.
 *
 * @tag rheolet-steps
 * @fires {CustomEvent<RevealDetail>} rheolet-reveal - The pupil uncovered a step or a hint, or covered it again.
 * @fires {CustomEvent<AnswerDetail>} rheolet-answer - The pupil filled in a number.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or not what the page asks for.
 * @csspart given - What the steps start from.
 * @csspart find - What is asked.
 * @csspart step - A step.
 * @csspart look - A hint: where to look.
 * @csspart circuit - The circuit as it is thought of at a step.
 * @csspart note - What else is to be said with a step.
 * @csspart why - The rule, and why it may be used.
 * @csspart symbols - The equation in symbols, and turned round.
 * @csspart numbers - The equation with numbers.
 * @csspart value - What a step gives.
 * @csspart answer - What the last step gives.
 * @csspart gap - A box for a number.
 * @csspart mistake - What is wrong with a number that was filled in.
 * @csspart act - A button.
 * @csspart count - How many steps are uncovered.
 * @csspart reason - Why there is no solution.
 * @csspart problem - What is wrong with what the page asks for.
 */
export class RheoletSteps extends PageElement {
  static override styles: CSSResultGroup = [ink, buttons, formulas, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    given: { type: String },
    mode: { type: String },
    lesson: { type: String },
    redraw: { type: Boolean },
  };

  /** The id of its board; not needed inside a board, or with only one in the page. */
  declare board: string;
  /** What is asked, by its quantity name: `I_R2`, `R_total`. */
  declare of: string;
  /** What is given, with semicolons between: `I_R1 = 0.5 A; R_R1` (as the board has it). Unless said, what the circuit's line states. */
  declare given: string;
  /** `steps`: one by one (usual); `whole`: all at once; `hints`: five for each step, the number last; `gaps`: the numbers are filled in. */
  declare mode: string;
  /** What the class may use: `11-14`, `14-16` or `16-18`, `without-reciprocals`, `product-over-sum`. */
  declare lesson: string;
  /** Draws the circuit anew where resistances are put together, and where currents and p.d.s are handed down again. */
  declare redraw: boolean;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  readonly #solving = new Solving(() => {
    this.requestUpdate();
  });
  #solution: Worked | undefined;
  /** Of each step its picture, and of which solution they are. */
  #pictures: readonly (TemplateResult | undefined)[] = [];
  #pictured: Worked | undefined;
  /** What numbers are filled in with, where they are. */
  #gaps: typeof import('./gap.ts') | undefined;
  /** What must stay the same for the pupil's progress to be kept. */
  #kept = '';
  #rungs = 0;
  /** The step that the Tab key comes to. */
  #at = 0;
  /** What was filled in last, and what is wrong with it. */
  #typed = '';
  #mistake: GapMistake | undefined;

  constructor() {
    super();
    this.board = this.of = this.given = this.mode = this.lesson = '';
    this.redraw = false;
  }

  /** It follows the board when that has come to rest. */
  override willUpdate(): void {
    const { snapshot } = this.#link;
    if (!snapshot) this.#solution = undefined;
    else if (snapshot.moving === undefined || !this.#solution) this.#follow(snapshot);
    this.#report();
    if (this.redraw && this.#pictured !== this.#solution) void this.#draw();
    if (this.#mode === 'gaps' && !this.#gaps) void this.#fetchGaps();
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.#link;
    const solution = this.#solution;
    if (!snapshot || !solution) return html`<p part="problem" lang="en" dir="ltr">${trouble}</p>`;
    const { derivation } = solution;
    const problem = this.#problem;
    const bars = this.#bars(snapshot);
    return html`<div
      lang="en"
      dir="ltr"
      @mouseover=${this.#shine}
      @mouseleave=${this.#shine}
      @focusin=${this.#enter}
      @focusout=${this.#shine}
      @keydown=${this.#key}
    >
      ${problem ? html`<p part="problem">${this.#sentence(say(problem))}</p>` : nothing}
      ${derivation ? this.#question(snapshot, solution) : nothing}
      ${bars.map((bar) => html`<p part="reason">${this.#sentence(bar)}</p>`)}
      ${bars.length === 0 && derivation ? this.#list(snapshot) : nothing}
    </div>`;
  }

  override updated(): void {
    this.#shine();
  }

  get #mode(): Mode {
    return isMode(this.mode) ? this.mode : 'steps';
  }

  get #steps(): readonly Step[] {
    return this.#solution?.derivation?.steps ?? [];
  }

  /** How many rungs there are. */
  get #all(): number {
    return this.#steps.length * rungs;
  }

  get #problem(): Worked['problem'] {
    if (!this.mode || isMode(this.mode)) return this.#solution?.problem;
    const data = { found: this.mode, of: 'mode', suggestion: nearest(this.mode, modes), choices: modes };
    return this.#solution?.problem ?? { code: 'not a choice', data };
  }

  #report(): void {
    const problem = this.#problem;
    if (this.#solution) this.#link.report(problem?.code, problem && say(problem));
  }

  #follow(snapshot: Snapshot): void {
    this.#solution = this.#solving.of(snapshot, this);
    const mode = this.#mode;
    const kept = [
      mode,
      this.of,
      ...this.#steps.map((step) => step[mode === 'gaps' ? 'substituted' : 'equation']),
    ].join();
    if (kept === this.#kept) return;
    this.#kept = kept;
    this.#rungs = this.#past(starts[mode], 1);
    this.#at = 0;
    this.#forget();
  }

  async #fetchGaps(): Promise<void> {
    this.#gaps = await later(import('./gap.ts'));
    if (this.#gaps) this.requestUpdate();
  }

  /** What draws is fetched where it is asked for. */
  async #draw(): Promise<void> {
    const solution = this.#solution;
    this.#pictured = solution;
    const drawer = await later(import('./pictures.ts'));
    const { snapshot, board } = this.#link;
    if (!drawer || !snapshot || solution !== this.#solution) return;
    const symbols = board?.getAttribute('symbols') === 'ansi' ? 'ansi' : 'iec';
    this.#pictures = drawer.picturesOf(snapshot.circuit, this.#steps, symbols);
    this.requestUpdate();
  }

  /** Why no steps are shown: there is no way, nothing to do, or the pupil is to predict first. */
  #bars({ covered }: Snapshot): readonly string[] {
    const derivation = this.#solution?.derivation;
    if (!derivation) return [];
    if (derivation.reason) return [say(derivation.reason)];
    if (derivation.steps.length === 0) return [say({ code: 'is given', data: {} })];
    return covered && this.#mode === 'whole' ? [say({ code: 'solution covered', data: {} })] : [];
  }

  #question({ course }: Snapshot, { given, find }: Worked): TemplateResult {
    return html`${
        given.length > 0
          ? html`<p part="given">
              <strong>${say({ code: 'solution heading', data: { part: 'given' } })}</strong>
              ${given.map((one) => html`<span class="one">${equation(one, course)}</span>`)}
            </p>`
          : nothing
      }
      <p part="find">
        <strong>${say({ code: 'solution heading', data: { part: 'find' } })}</strong>
        ${equation(find, course)}
      </p>`;
  }

  #list(snapshot: Snapshot): TemplateResult {
    const mode = this.#mode;
    const steps = this.#steps;
    const shown = Math.min(this.#rungs, this.#all);
    const rest = snapshot.covered ? steps.slice(0, Math.ceil(shown / rungs)) : steps;
    return html`<ol role="list" aria-label=${say({ code: 'worked solution', data: {} })}>
        ${rest.map((step, place) => this.#item(snapshot, step, place))}
      </ol>
      ${
        mode === 'whole'
          ? nothing
          : html`<p class="row">
              ${this.#button(words[mode], 1, shown >= this.#all)}
              ${mode === 'gaps' ? nothing : this.#button('back', -1, shown === 0)}
              <span part="count"
                >${say({ code: 'step count', data: { shown: Math.floor(shown / rungs), steps: steps.length } })}</span
              >
            </p>`
      }`;
  }

  #sentence(text: string): readonly unknown[] {
    return sentence(text, { letter: this.#link.snapshot?.course.letter ?? 'V' });
  }

  #button(does: 'step' | 'hint' | 'answer' | 'back', way: 1 | -1, barred: boolean): TemplateResult {
    return html`<button type="button" part="act" ?disabled=${barred} @click=${() => this.#turn(way)}>
      ${say({ code: 'steps button', data: { does } })}
    </button>`;
  }

  #item(snapshot: Snapshot, step: Step, place: number): TemplateResult {
    const mode = this.#mode;
    const { course } = snapshot;
    const shown = Math.min(Math.max(this.#rungs - place * rungs, 0), rungs);
    const isOpen = mode === 'gaps' && shown < rungs && !step.unknowns;
    const typed = { typed: this.#typed, mistake: this.#mistake, isNow: shown > 0 };
    return html`<li
      part="step"
      data-step=${place}
      class=${shown > 0 ? '' : 'later'}
      tabindex=${place === this.#at ? 0 : -1}
    >
      ${this.redraw ? this.#pictures[place] : nothing}
      ${lines(step, {
        mode,
        course,
        rungs: shown,
        isLast: place === this.#steps.length - 1,
        gap: isOpen ? (this.#gaps?.gap(step, course, typed, this.#fill) ?? html``) : nothing,
      })}
    </li>`;
  }

  /**
   * Where numbers are filled in, an equation has none: on to the next step that has. Of hints the equation with numbers is passed over where it
   * repeats another.
   */
  #past(rung: number, way: 1 | -1): number {
    const step = (at: number): Step | undefined => this.#steps[Math.floor(at / rungs)];
    let next = rung;
    while (this.#mode === 'gaps' && step(next)?.unknowns) next += rungs;
    const { course } = this.#link.snapshot ?? {};
    const same = step(next);
    if (this.#mode === 'hints' && next % rungs === rungs - 1 && course && same && repeats(same, course))
      next += way;
    return Math.min(next, this.#all);
  }

  #forget(): void {
    this.#typed = '';
    this.#mistake = undefined;
  }

  /** Uncovers what comes next, or covers what came last; tells the page, and says what has come, or `word` instead. */
  #turn(way: 1 | -1, word?: string): void {
    const { snapshot, board } = this.#link;
    const mode = this.#mode;
    const before = this.#rungs;
    const next = this.#past(Math.min(Math.max(before + way * strides[mode], starts[mode]), this.#all), way);
    if (!snapshot || next === before) return;
    this.#rungs = next;
    this.#at = Math.max(0, Math.ceil(next / rungs) - 1);
    this.#forget();
    const shown = Math.floor(next / rungs);
    fire(this, 'rheolet-reveal', { board: board?.id ?? '', of: this.of, shown, steps: this.#steps.length });
    if (way > 0) speak(this, word ?? this.#said(mode === 'gaps' ? before : next - 1, snapshot));
    this.requestUpdate();
    const focused = this.shadowRoot?.activeElement;
    void this.updateComplete.then(() => this.#stay(focused));
  }

  /** A rung in words; where steps are uncovered as wholes, the step. */
  #said(rung: number, { course }: Snapshot): string {
    const step = this.#steps[Math.floor(rung / rungs)];
    const mode = this.#mode;
    const all = step ? spoken(step, { mode, course }) : [];
    return mode === 'steps' ? all.filter(Boolean).join(' ') : (all[rung % rungs] ?? '');
  }

  /** The focus is not lost with a button that has nothing more to do (browsers take it away at once), and goes on to the next number to be filled in. */
  #stay(focused: Element | null | undefined): void {
    const box = this.renderRoot.querySelector<HTMLElement>('[part=gap]:not(.later *)');
    const last = this.renderRoot.querySelector<HTMLElement>('[part=step][tabindex="0"]');
    if (this.#mode === 'gaps') (box ?? last)?.focus();
    else if (focused?.matches(':disabled')) last?.focus();
  }

  readonly #fill = (typed: string): void => {
    const step = this.#steps[Math.floor(this.#rungs / rungs)];
    if (!step || !this.#gaps || !typed.trim()) return;
    const mistake = this.#gaps.mistakeIn(typed, step);
    const right = mistake === undefined;
    this.#typed = typed;
    this.#mistake = mistake;
    const board = this.#link.board?.id ?? '';
    fire(this, 'rheolet-answer', {
      board,
      quantity: step.gives,
      value: Number(step.value),
      text: typed,
      right,
    });
    if (right) this.#turn(1, say({ code: 'gap right', data: {} }));
    else speak(this, say({ code: 'gap mistake', data: { mistake } }));
    this.requestUpdate();
  };

  readonly #enter = ({ target }: Event): void => {
    const step = target instanceof HTMLElement ? target.dataset['step'] : undefined;
    if (step !== undefined && Number(step) !== this.#at) {
      this.#at = Number(step);
      this.requestUpdate();
    }
    this.#shine();
  };

  readonly #key = (event: KeyboardEvent): void => {
    const way = turns[event.key];
    const by = ways[event.key];
    if (way && this.#mode !== 'whole' && this.#mode !== 'gaps') {
      event.preventDefault();
      this.#turn(way);
    } else if (
      by !== undefined &&
      event.target instanceof HTMLElement &&
      event.target.matches('[part=step]')
    ) {
      event.preventDefault();
      const items = [...this.renderRoot.querySelectorAll<HTMLElement>('[part=step]:not(.later)')];
      const at = items.indexOf(event.target);
      items[Math.min(Math.max(at + by, 0), items.length - 1)]?.focus();
    }
  };

  /** The components of the step that is pointed at stand out, else of the one that has the focus, else of the one that came last. */
  readonly #shine = (): void => {
    const root = this.renderRoot;
    const item =
      root.querySelector<HTMLElement>('[part=step]:hover') ??
      root.querySelector<HTMLElement>('[part=step]:focus-within') ??
      (root.querySelector('button:focus') &&
        root.querySelector<HTMLElement>('[part=step][tabindex="0"]:not(.later)'));
    const step = item ? this.#steps[Number(item.dataset['step'])] : undefined;
    this.#spotlight.shine(this.#link.board, step?.about ?? []);
  };
}
