import { html, LitElement, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say, type Circuit } from '../../engine/core.ts';
import { BoardLink, type Snapshot } from '../link/index.ts';
import { ink } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { axisOf, type Axis } from './axis.ts';
import { BoardPointer } from './board-pointer.ts';
import { picture, planOf } from './picture.ts';
import { stepOf, type Step } from './steps.ts';
import { sheet } from './styles.ts';

/** How far each key goes along the columns. */
const ways: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowLeft: -1,
  Home: -Infinity,
  End: Infinity,
};

/**
 * The level diagram: height is potential. Every node is a level line, every component a drop from one to another, or, as a supply, a
 * lift; branches side by side fall between the same two heights, and the drops round a loop add up to the lift. Pointing at a
 * component or focusing it makes it stand out on the board, and the other way round; the arrow keys, Home and End go along the current.
 *
 * @tag rheolet-levels
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board.
 * @csspart axis - What the axis shows, above it.
 * @csspart levels - The diagram.
 * @csspart obstacle - Why there is nothing to draw: what is wrong with the circuit, or that the readings are covered.
 * @csspart problem - Why there is no board.
 */
export class RheoletLevels extends LitElement {
  static override styles: CSSResultGroup = [ink, sheet];
  static override properties: PropertyDeclarations = { board: { type: String }, label: { type: String } };

  /** The id of the board; unless said, the one it stands in or the only one of the page. */
  declare board: string;
  /** The name of the diagram, for those who hear it. */
  declare label: string;

  readonly #link = new BoardLink(this, true);
  readonly #spotlight = new Spotlight(this);
  readonly #pointer = new BoardPointer(this);
  #start: Circuit | undefined;
  #axis: Axis | undefined;
  #ids: readonly string[] = [];
  /** The component that the Tab key comes to. */
  #at = '';

  constructor() {
    super();
    this.board = this.label = '';
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.#link;
    this.#pointer.follow(this.#link.board);
    if (!snapshot) return html`<p part="problem" lang="en" dir="ltr">${trouble}</p>`;
    this.#link.report();
    const obstacles = this.#obstacles(snapshot);
    if (obstacles.length > 0)
      return html`${obstacles.map((each) => html`<p part="obstacle" lang="en" dir="ltr">${each}</p>`)}`;
    return this.#diagram(snapshot);
  }

  override updated(): void {
    this.#shine();
  }

  /** Why nothing can be drawn. */
  #obstacles({ covered, circuit, readings }: Snapshot): readonly string[] {
    if (covered) return [say({ code: 'covered', data: {} })];
    if (circuit.terminals) return [say({ code: 'no levels', data: {} })];
    return readings.faults.map((fault) => say(fault));
  }

  #diagram(snapshot: Snapshot): TemplateResult {
    const { start, circuit, readings, held } = snapshot;
    this.#axis = axisOf(snapshot, start === this.#start ? this.#axis : undefined);
    this.#start = start;
    const plan = planOf(start);
    this.#ids = plan.columns;
    if (!plan.columns.includes(this.#at)) this.#at = plan.columns[0] ?? '';
    const steps = plan.columns.flatMap((id) =>
      circuit.components.filter((each) => each.id === id).map((each) => stepOf(snapshot, each)),
    );
    const height =
      (of: Snapshot['readings'] | undefined) =>
      (node: string): number | undefined => {
        const volts = of?.potential(node);
        return volts === undefined ? undefined : Number(volts);
      };
    const name = this.label || say({ code: 'levels', data: {} });
    return html`<p part="axis" lang="en" aria-hidden="true">
        ${say({ code: 'potential', data: { unit: `${this.#axis.prefix}V` } })}
      </p>
      <div
        part="levels"
        lang="en"
        @pointerover=${this.#shine}
        @pointerleave=${this.#shine}
        @focusin=${this.#enter}
        @focusout=${this.#shine}
        @keydown=${this.#step}
      >
        ${picture({
          plan,
          axis: this.#axis,
          steps,
          potential: height(readings),
          held: height(held),
          name,
          lit: this.#pointer.id,
          at: this.#at,
        })}
      </div>
      ${this.#text(steps, name)}`;
  }

  /** The diagram in words, for those who do not see it. */
  #text(steps: readonly Step[], name: string): TemplateResult {
    return html`<ul class="heard" lang="en" aria-label=${name}>
      ${steps.map(({ spoken }) => html`<li>${spoken}</li>`)}
    </ul>`;
  }

  readonly #enter = ({ target }: Event): void => {
    const id = target instanceof SVGElement ? target.dataset['id'] : undefined;
    if (id !== undefined && id !== this.#at) {
      this.#at = id;
      this.requestUpdate();
    }
    this.#shine();
  };

  readonly #step = (event: KeyboardEvent): void => {
    const by = ways[event.key];
    if (by === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const to = Math.min(Math.max(this.#ids.indexOf(this.#at) + by, 0), this.#ids.length - 1);
    this.renderRoot.querySelectorAll<SVGElement>('.component')[to]?.focus();
  };

  /** What is pointed at, else what has the focus, stands out on the board. */
  readonly #shine = (): void => {
    const root = this.renderRoot;
    const found =
      root.querySelector<SVGElement>('.component:hover') ??
      root.querySelector<SVGElement>('.component:focus');
    const id = found?.dataset['id'];
    this.#spotlight.shine(this.#link.board, id === undefined ? [] : [id]);
  };
}
