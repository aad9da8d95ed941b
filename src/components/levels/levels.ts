import { adoptStyles, html, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { levelPlan, say, type Circuit, type LevelPlan } from '../../engine/core.ts';
import { sayLevels } from '../../engine/words/levels/index.ts';
import { axisOver, type Reach } from '../axis/index.ts';
import { BoardLink, once, type Snapshot } from '../link/index.ts';
import { PageElement, Room, ink, later } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { picture } from './picture.ts';
import { Pointer } from './pointer.ts';
import { reachOf } from './reach.ts';
import { stepOf } from './steps.ts';
import { styles } from './styles.ts';

/** Where everything stands from side to side: a circuit's start tells it. */
const planOf: (start: Circuit) => LevelPlan = once(levelPlan);

/** How far each key goes along the columns. */
const ways: Readonly<Record<string, number>> = {
  ArrowRight: 1,
  ArrowLeft: -1,
  Home: -Infinity,
  End: Infinity,
};

/** The components that are drawn side by side. */
const most = 200;

/** Why nothing can be drawn. */
function obstaclesOf({ covered, circuit, readings }: Snapshot): readonly string[] {
  if (circuit.components.length > most) return [say({ code: 'not drawn', data: { reason: 'too many' } })];
  if (covered) return [say({ code: 'covered', data: {} })];
  if (circuit.terminals) return [sayLevels({ code: 'no levels', data: {} })];
  return readings.faults.map((fault) => say(fault));
}

const heightIn =
  (readings: Snapshot['held']) =>
  (node: string): number | undefined => {
    const volts = readings?.potential(node);
    return volts && Number(volts);
  };

/**
 * The level diagram: height is potential. Every node is a level line, every component a drop from one to another, or, as a supply, a
 * lift; branches side by side fall between the same two heights, and the drops round a loop add up to the lift. Pointing at a
 * component or focusing it makes it stand out on the board, and the other way round; the arrow keys, Home and End go along the current.
 * Its heights stand in a table as well, which the pupil opens.
 *
 * @tag rheolet-levels
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board.
 * @csspart axis - What the axis shows, above it.
 * @csspart levels - The diagram.
 * @csspart values - The heights as a table, closed until the pupil opens them.
 * @csspart table - Their table.
 * @csspart obstacle - Why there is nothing to draw: what is wrong with the circuit, or that the readings are covered.
 * @csspart problem - Why there is no board.
 */
export class RheoletLevels extends PageElement {
  static override styles: CSSResultGroup = [ink, styles];
  static override properties: PropertyDeclarations = { board: { type: String }, label: { type: String } };

  /** The id of the board; unless said, the one it stands in or the only one of the page. */
  declare board: string;
  /** The name of the diagram, for those who hear it. */
  declare label: string;

  readonly #link = new BoardLink(this, true);
  readonly #spotlight = new Spotlight(this);
  readonly #room = new Room(this);
  readonly #here = new Pointer(this);
  readonly #there = new Pointer(this);
  /** What makes the table, once it has been asked for. */
  #values: typeof import('./values.ts') | undefined;
  #start: Circuit | undefined;
  #reach: Reach | undefined;
  /** The component that the Tab key comes to. */
  #at = '';

  constructor() {
    super();
    this.board = this.label = '';
  }

  /** First rendered when it is known how wide it is. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await this.#room.known;
    await super.scheduleUpdate();
  }

  override render(): TemplateResult {
    const { board, snapshot, trouble } = this.#link;
    this.#here.follow(this.shadowRoot);
    this.#there.follow(board?.shadowRoot);
    if (!snapshot) return html`<p part="problem" lang="en" dir="ltr">${trouble}</p>`;
    this.#link.report();
    const obstacles = obstaclesOf(snapshot);
    return obstacles.length > 0
      ? html`${obstacles.map((each) => html`<p part="obstacle" lang="en" dir="ltr">${each}</p>`)}`
      : this.#diagram(snapshot);
  }

  /** What is pointed at or has the focus stands out on the board. */
  override updated(): void {
    const { id } = this.#here;
    this.#spotlight.shine(this.#link.board, id ? [id] : []);
  }

  #diagram(snapshot: Snapshot): TemplateResult {
    const { start, circuit, readings, held } = snapshot;
    this.#reach = reachOf(snapshot, start === this.#start ? this.#reach : undefined);
    this.#start = start;
    const axis = axisOver(this.#reach, 5, 'V', snapshot.course);
    const plan = planOf(start);
    const steps = plan.columns.flatMap((id) =>
      circuit.components.filter((each) => each.id === id).map((each) => stepOf(snapshot, each)),
    );
    this.#at = [this.#here.id, this.#at, ...plan.columns].find((id) => plan.columns.includes(id)) ?? '';
    const name = this.label || sayLevels({ code: 'levels', data: {} });
    return html`<p part="axis" lang="en" dir="ltr" aria-hidden="true">
        ${sayLevels({ code: 'potential', data: { unit: `${axis.prefix}V` } })}
      </p>
      <div part="levels" lang="en" @keydown=${this.#step}>
        ${picture({
          plan,
          axis,
          steps,
          potential: heightIn(readings),
          held: heightIn(held),
          name,
          lit: this.#there.id,
          at: this.#at,
          room: this.#room.width,
        })}
      </div>
      <details part="values" lang="en" dir="ltr" @toggle=${this.#open}>
        <summary>${say({ code: 'readings', data: {} })}</summary>
        ${this.#values?.sheetView(this.#values.valuesOf(snapshot, steps, axis), name)}
      </details>`;
  }

  readonly #open = async (): Promise<void> => {
    if (this.#values) return;
    this.#values = await later(import('./values.ts'));
    if (this.#values && this.shadowRoot) adoptStyles(this.shadowRoot, [ink, this.#values.sheet, styles]);
    this.requestUpdate();
  };

  readonly #step = (event: KeyboardEvent): void => {
    const by = ways[event.key];
    if (by === undefined || event.ctrlKey || event.altKey || event.metaKey) return;
    event.preventDefault();
    const all = [...this.renderRoot.querySelectorAll<SVGElement>('.component')];
    const from = all.findIndex(({ tabIndex }) => tabIndex === 0);
    all[Math.min(Math.max(from + by, 0), all.length - 1)]?.focus();
  };
}
