import {
  html,
  LitElement,
  type CSSResultGroup,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import {
  asMarked,
  readCourse,
  say,
  type Circuit,
  type ExactSolution,
  type Setting,
  type Solution,
} from '../../engine/core.ts';
import { fire, shortcutOf, type BoardFace, type Settings } from '../link/index.ts';
import { PageElement, buttons, ink, later, speak } from '../page/index.ts';
import type { PictureOptions } from '../picture/index.ts';
import { fragmentNow } from './address.ts';
import { standing } from './fallback.ts';
import { Given } from './given.ts';
import { Menu } from './menu.ts';
import { misread } from './misread.ts';
import type { Moment } from './moment.ts';
import { News } from './news.ts';
import { onLatest } from './page-history.ts';
import { Painter } from './painter.ts';
import { fetchPictures } from './pictures.ts';
import { Pointing } from './pointing.ts';
import { Presence } from './presence.ts';
import { Pupil } from './pupil.ts';
import { listed } from './readings-table.ts';
import { coverable, shown, type Word } from './shown.ts';
import { controlsRendered, roundOf } from './round.ts';
import { BoardStore } from './store.ts';
import { styles } from './styles.ts';
import { view, type Act } from './view.ts';
import { fetchWriter, writer } from './written.ts';

const styled = ['course', 'symbols', 'show', 'hide', 'label', 'quantities'] as const;

/**
 * A living circuit: drawn, solved, with its sliders and switches in place.
 *
 * @tag rheolet-board
 * @slot - The circuit as notation, where there is no `circuit` attribute; else a sentence for readers without scripts. Other elements of the library stay visible.
 * @fires {CustomEvent<ChangeDetail>} rheolet-input - A slider is moving.
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A slider, switch, button or key has changed a setting.
 * @fires rheolet-hold - The pupil held the readings, or let go of them.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - The circuit cannot be read.
 * @cssprop [--rheolet-light] - The glow of lamps.
 * @csspart drawing - The circuit diagram.
 * @csspart caption - The strip with the readings of one component.
 * @csspart key - The ribbon of a round current.
 * @csspart controls - The sliders, switches and buttons.
 * @csspart switch - A switch's button.
 * @csspart act - Another button.
 * @csspart notes - Faults, remarks and cautions, and what is wrong with the address.
 * @csspart table - The readings of a circuit that is not drawn.
 * @csspart problem - What is wrong with the circuit.
 */
export class RheoletBoard extends PageElement implements BoardFace {
  static override shadowRootOptions: ShadowRootInit = {
    ...LitElement.shadowRootOptions,
    slotAssignment: 'manual',
  };
  static override styles: CSSResultGroup = [ink, buttons, styles];
  static override properties: PropertyDeclarations = {
    circuit: { type: String, noAccessor: true },
    course: { type: String },
    symbols: { type: String },
    show: { type: String },
    hide: { type: String },
    label: { type: String },
    quantities: { type: String },
  };

  /** What the class uses, in words such as `voltage U 2 comma`; see the documentation of courses. */
  declare course: string;
  /** `iec` (rectangles) or `ansi` (zigzags) for resistors, thermistors and LDRs. */
  declare symbols: string;
  /** What to show besides the usual: `rules`; `ribbons` and `arrows` where the readings are hidden. */
  declare show: string;
  /** What not to show: `values`, `readings` (for a prediction: also the meters', and the ribbons and arrows that give them away), `ribbons`, `arrows`, `meters`, `labels`, `sliders`, `menu`, and `conditions`: components cannot be taken out or bridged then. */
  declare hide: string;
  /** The name of the diagram, for those who hear it. */
  declare label: string;
  /** Currents and p.d.s to be written beside their components, with an arrow: `I_R1 V_R1`; `V_R1=` with its value, `V_R1=?` with a blank to fill. */
  declare quantities: string;

  /** Takes back the last change on any board of the page: `customElements.get('rheolet-board').undo()`. */
  static undo(): void {
    onLatest('undo');
  }

  /** Brings back the last change on any board of the page that was undone. */
  static redo(): void {
    onLatest('redo');
  }

  readonly #store = new BoardStore();
  readonly #presence = new Presence(this, this.#store);
  readonly #pupil = new Pupil(this, this.#store);
  readonly #painter: Painter = new Painter(this, {
    snapshot: () => this.snapshot,
    style: () => ({
      symbols: this.symbols === 'ansi' ? 'ansi' : 'iec',
      shown: this.#shown,
      label: this.#name,
      quantities: this.quantities,
    }),
    reached: () => this.#pointing.reached,
    round: (readings) =>
      this.#presence.problem || this.#misread.length > 0
        ? undefined
        : roundOf(this, this.#store, this.#shown, this.#style, readings),
    rendered: () => this.updateComplete.then(() => controlsRendered(this.renderRoot)),
    staged: (stage) => this.#pointing.attend(stage),
    painted: () => {
      if (this.#news.differs(this.snapshot, this.#pointing.id)) this.requestUpdate();
    },
    finished: () => this.#given.shown(),
  });
  readonly #pointing: Pointing = new Pointing(() => this.#painter.stage, {
    circuit: () => this.circuit,
    toggle: (id) => this.#pupil.toggle(id),
    alter: (id, condition) => {
      if (this.#shown.has('conditions')) this.#pupil.alter(id, condition);
    },
    hold: (does) => this.#pupil.act(does),
    changed: () => this.requestUpdate(),
  });
  readonly #menu: Menu = new Menu(this);
  readonly #given: Given = new Given(
    this,
    (circuit) => {
      this.#store.open(circuit);
      this.#painter.renew();
    },
    () => this.quantities !== '',
  );
  #revealed = false;
  /** The attributes that were last taken on. */
  #style: string | undefined;
  /** What is wrong with them. */
  #misread: readonly string[] = [];
  readonly #news = new News();

  constructor() {
    super();
    this.course = this.symbols = this.show = this.hide = this.label = this.quantities = '';
    this.#store.subscribe(() => this.#changed());
    this.addEventListener('keydown', this.#shortcut);
  }

  /** The circuit as it stands; a new one may be given as notation or as a circuit, and keeps the settings that fit. */
  get circuit(): Circuit | undefined {
    return this.snapshot?.circuit;
  }

  set circuit(given: string | Circuit | null | undefined) {
    this.#given.take(given ?? undefined);
  }

  /** What differs from the circuit that the page gave, by id: an exact text such as "20", "6 r 0.5", "open", "broken". */
  get settings(): Settings {
    return this.snapshot?.settings ?? {};
  }

  set settings(settings: Settings) {
    this.#store.replace(settings);
  }

  /** The exact solution of the circuit as it stands; in decimals where something in it has a curve. */
  get solution(): ExactSolution | Solution | undefined {
    return this.snapshot?.solution;
  }

  /** The readings that are held. */
  get held(): ExactSolution | Solution | undefined {
    return this.snapshot?.held;
  }

  /** All that the board knows at this moment. */
  get snapshot(): Moment | undefined {
    return this.#store.snapshot;
  }

  /** Fulfilled once the circuit is drawn and solved, or what is wrong with it is said. */
  get ready(): Promise<void> {
    return this.#given.ready;
  }

  /** Calls the listener at every change, in the act; returns how to stop. */
  subscribe(listener: () => void): () => void {
    return this.#store.subscribe(listener);
  }

  /** Settles a resistor, a supply or a switch, or what is done to a component: `board.set('L1', 'broken')`, `'bridged'`, `'intact'`; or a fault for a pupil to find, `'secretly broken'` (to mend it, `'secretly intact'`), which no undo, setting or link tells. Throws CircuitFormatError where it cannot be had. */
  set(id: string, value: Setting): void {
    this.#store.set(id, value);
  }

  /** Shows a setting that is still moving; `set` settles it. Throws CircuitFormatError where it cannot be had. */
  move(id: string, value: Setting): void {
    this.#store.move(id, value);
  }

  /** Back to the circuit as the page gave it; can be undone. */
  reset(): void {
    this.#store.reset();
  }

  /** Takes back the last change. */
  undo(): void {
    this.#store.undo();
  }

  /** Brings back the last change that was undone. */
  redo(): void {
    this.#store.redo();
  }

  /** Holds the present readings, to compare later ones with. */
  hold(): void {
    this.#store.hold();
  }

  /** Lets go of the held readings. */
  release(): void {
    this.#store.release();
  }

  /** Makes components stand out, and these only. */
  light(ids: readonly string[]): void {
    this.#painter.stage.still.light(ids);
  }

  /** The drawing as it shows itself at this moment, as an SVG text that stands by itself; '' where there is none. */
  async toSVG(options: PictureOptions = {}): Promise<string> {
    const [shot, pictures] = [this.#painter.stage.shot(this.snapshot), await fetchPictures()];
    return (shot && pictures?.svgOf(shot, options)) ?? '';
  }

  /** The drawing as it shows itself at this moment, as a PNG; undefined where there is none. */
  async toPNG(options: PictureOptions = {}): Promise<Blob | undefined> {
    const [shot, pictures] = [this.#painter.stage.shot(this.snapshot), await fetchPictures()];
    return shot && pictures?.pngOf(shot, options);
  }

  /** The circuit at its present setting, as notation; the values of hidden components stand in it, secret faults do not. '' where there is none. */
  async toText(): Promise<string> {
    const { circuit } = this;
    const format = await later(import('../../engine/notation/format/index.ts'));
    return circuit && format ? format.formatCircuit(asMarked(circuit)) : '';
  }

  /** The page's address with what its boards are set to, in the fragment: it opens the page as it stands now. */
  linkToSetting(): string {
    return location.href.replace(/#.*/s, '') + fragmentNow(location.hash);
  }

  override connectedCallback(): void {
    super.connectedCallback();
    this.#painter.connect();
  }

  override disconnectedCallback(): void {
    super.disconnectedCallback();
    this.#painter.disconnect();
  }

  /** What stands round the drawing is first rendered together with it. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) {
      this.#styled();
      await this.#painter.begun;
    }
    await super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues<RheoletBoard>): void {
    if (changed.has('hide')) this.#revealed = false;
    if (this.quantities && !writer()) void fetchWriter().then(() => this.#restyle());
    this.#styled();
  }

  override render(): TemplateResult {
    const { snapshot } = this;
    const { stage, undrawn } = this.#painter;
    const { state } = this.#store;
    const { problem } = this.#given;
    if (!snapshot || !state)
      return html`<slot></slot>
        <p part="problem" lang="en" dir="ltr" ?hidden=${!problem}>${problem}</p>`;
    return html`${undrawn ? listed(undrawn, snapshot, this.#name) : stage.element}<slot></slot>${view({
        snapshot,
        state,
        pointed: this.#pupil.component(this.#pointing.id),
        chosen: this.#pupil.component(this.#pointing.chosen),
        drawn: undrawn === undefined,
        shown: this.#shown,
        perAmpere: stage.perAmpere,
        misread: [
          ...this.#misread,
          this.#presence.problem,
          writer()?.problemOf(this.quantities, snapshot.circuit) ?? '',
        ],
        menu: this.#menu,
        act: (does) => this.act(does),
        toggle: (id) => this.#pupil.toggle(id),
        alter: (id, condition) => this.#pupil.alter(id, condition),
        leave: () => this.#pointing.leave(),
      })}`;
  }

  /** The text in place of the drawing stands until there is one; other elements of the library stand anyway. */
  override updated(): void {
    this.renderRoot.querySelector('slot')?.assign(...standing(this, this.snapshot === undefined));
  }

  get #name(): string {
    return this.label || say({ code: 'diagram', data: {} });
  }

  get #shown(): ReadonlySet<Word> {
    const words = shown(this.show, this.hide);
    return this.#revealed ? new Set([...words, ...coverable]) : words;
  }

  /** Takes on the style that the attributes ask for now. */
  #styled(): void {
    const style = styled.map((name) => this[name]).join('\n');
    if (style === this.#style) return;
    this.#style = style;
    this.#misread = misread(this);
    for (const text of this.#misread)
      fire(this, 'rheolet-problem', { board: this.id, id: '', code: 'not a choice', text });
    this.#restyle();
  }

  #restyle(): void {
    this.#store.show(readCourse(this.course).course, !this.#shown.has('readings'));
    this.#painter.renew();
  }

  #changed(): void {
    this.#painter.changed();
    const told = this.#news.of(this.snapshot);
    if (told !== undefined) speak(this, told);
  }

  /** Does what its button of this name does, or takes these settings beside the others in one step, as the pupil's act: the page is told. */
  act(does: Act | Settings): void {
    if (does === 'reveal') {
      this.#revealed = true;
      this.#restyle();
    } else this.#pupil.act(does);
  }

  readonly #shortcut = (event: KeyboardEvent): void => {
    const does = shortcutOf(event);
    if (!does) return;
    event.preventDefault();
    this.act(does);
  };
}
