import { settingOf, type Size } from '../../engine/core.ts';
import { cancelFrame, inTurn, nextFrame, type FrameTask } from '../page/index.ts';
import { follow, lead } from './crowd.ts';
import { layoutOf, type StageStyle, type Undrawn } from './layout.ts';
import type { Moment } from './moment.ts';
import { onWindow } from './on-window.ts';
import { Reserve } from './reserve.ts';
import { Stage } from './stage.ts';
import { margin, watchSight, watchSize } from './watch.ts';

/** What a painter asks of its board. */
export interface Painted {
  readonly snapshot: () => Moment | undefined;
  /** How it is to be drawn, but for the room there is. */
  readonly style: () => Omit<StageStyle, 'width'>;
  /** The component in the Tab order. */
  readonly reached: () => string | undefined;
  /** What decides how much room there is round the drawing, by these readings or the present ones; undefined where it has to be seen. */
  readonly round: (readings?: Moment['readings']) => string | undefined;
  /** Fulfilled once all that stands round the drawing is rendered. */
  readonly rendered: () => Promise<unknown>;
  /** Told of the stage when there is one. */
  readonly staged: (stage: Stage) => void;
  /** Told when the rest is to be rendered again. */
  readonly painted: () => void;
  /** Told when a new drawing is there with all that is said of it. */
  readonly finished: () => void;
}

/** Does something when the browser has nothing else to do, at the latest after the timeout: some are never idle that show nothing new. */
const whenIdle = (work: () => void, by: IdleRequestOptions): void => {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work, by);
  else setTimeout(work);
};

/** Nobody has come to a component by its name so soon. */
const soon: IdleRequestOptions = { timeout: 100 };
/** Nobody has come to a board that was out of sight so soon. */
const inTheEnd: IdleRequestOptions = { timeout: 2000 };

/** What a board keeps free at its sides: the padding of its sheet. */
const edges = 24;

/** The least and the most room that a drawing is planned for. */
const [narrowest, broadest] = [280, 720];

/** Brings a board's drawing up to date in the page's frames: nothing out of sight is touched, but all of it is drawn in the end. */
export class Painter {
  /** Why the circuit is not drawn. */
  undrawn: Undrawn | undefined;
  readonly #board: HTMLElement;
  readonly #ask: Painted;
  /** Fulfilled with the first plan, or once it is known that there is nothing to draw. */
  readonly begun: Promise<void>;
  #begin: () => void = () => undefined;
  #isBegun = false;
  #stage: Stage | undefined;
  /** The room that is kept until the first plan. */
  #reserve: Reserve | undefined;
  #stops: readonly (() => void)[] = [];
  #width = 0;
  #near = false;
  /** Whether the room was measured for the circuit that there is. */
  #measured = false;
  #planned = false;
  #built = false;
  #isNamed = false;
  #states = '';

  constructor(board: HTMLElement, ask: Painted) {
    this.#board = board;
    this.#ask = ask;
    this.begun = new Promise((done) => (this.#begin = done));
  }

  /** What is drawn on: made when it is first needed. */
  get stage(): Stage {
    if (!this.#stage) {
      this.#stage = new Stage();
      this.#ask.staged(this.#stage);
    }
    return this.#stage;
  }

  /** Begins to watch the window; what was never drawn keeps some room free until then. */
  connect(): void {
    const snapshot = this.#ask.snapshot();
    const count = snapshot?.circuit.components.length;
    if (count && !this.#isBegun) this.#keep({ width: narrowest, height: 100 + 40 * Math.min(count, 12) });
    this.#stops = [
      watchSize(this.#board, () => this.#resized()),
      watchSight(this.#board, this.#seen),
      onWindow('beforeprint', this.#print),
    ];
    nextFrame(this.#layout);
  }

  /** Lets go of the window. */
  disconnect(): void {
    for (const stop of this.#stops) stop();
    for (const task of [this.#layout, this.#motion, this.#figures]) cancelFrame(task);
  }

  /** The circuit or its style is new. */
  renew(): void {
    this.#measured = false;
    nextFrame(this.#layout);
  }

  /** A setting has changed: ribbons follow in the next frame, numbers when it is their turn, all of it once it has settled; out of sight, when it is seen. */
  changed(): void {
    if (!this.#planned) return; // what is not laid out yet will be as things stand then
    const snapshot = this.#ask.snapshot();
    const rests = snapshot?.moving === undefined;
    if (rests && this.#states !== statesOf(snapshot)) this.renew();
    if (!this.#near) return;
    nextFrame(this.#motion);
    if (rests) nextFrame(this.#figures);
    else inTurn(this.#figures);
  }

  readonly #layout: FrameTask = {
    measure: () => {
      const { top, bottom } = this.#board.getBoundingClientRect();
      this.#width = this.#board.offsetWidth;
      this.#near = top < innerHeight + margin && bottom > -margin;
    },
    draw: () => {
      this.#measured = true;
      this.#planned = this.#built = false;
      if (this.#near) this.#build();
      else {
        whenIdle(this.#build, inTheEnd);
        if (this.#isBegun || this.#follows()) return;
        this.#plan();
      }
      this.#lead();
    },
  };

  readonly #motion: FrameTask = {
    draw: () => {
      const snapshot = this.#ask.snapshot();
      if (snapshot && this.#built) this.stage.move(snapshot);
    },
  };

  readonly #figures: FrameTask = { draw: () => this.#write() };

  /** What is said of a drawing is not seen: that of the first one comes once it is painted. */
  readonly #finish = (): void => {
    if (!this.#built || !this.#measured) return;
    this.#name();
    this.#isNamed = true;
    this.#ask.finished();
  };

  get #style(): StageStyle {
    const width = this.#width ? Math.min(Math.max(this.#width - edges, narrowest), broadest) : broadest;
    return { ...this.#ask.style(), width };
  }

  /** Keeps the room of the drawing and of what a board like this one has round it; false where there is none. */
  #follows(): boolean {
    const snapshot = this.#ask.snapshot();
    const round = this.#ask.round(snapshot?.live);
    const size = snapshot && layoutOf(snapshot, this.#style)?.size();
    if (!size || round === undefined) return false;
    return follow(`${this.#width} ${round}`, (rest) => this.#keep(size, rest));
  }

  /** Keeps room for a drawing of this size, and below it for what will stand round it. */
  #keep(size: Size, rest = 0): void {
    if (this.#isBegun) return;
    this.#reserve ??= new Reserve();
    this.#reserve.size(size, rest);
    if (!this.#reserve.element.parentNode) this.#board.shadowRoot?.append(this.#reserve.element);
  }

  #lead(): void {
    const round = this.#ask.round();
    if (round === undefined || !this.stage.drawing) return;
    lead(`${this.#width} ${round}`, {
      rendered: this.#ask.rendered(),
      rest: () => restOf(this.#board, this.stage.element),
    });
  }

  /** Takes the room of the drawing, and lets what stands round it be rendered. */
  #plan(): void {
    if (this.#planned) return;
    const snapshot = this.#ask.snapshot();
    this.#planned = this.#isBegun = true;
    this.#states = statesOf(snapshot);
    this.undrawn = snapshot && this.stage.plan(snapshot, this.#style);
    this.#reserve?.element.replaceWith(this.stage.element);
    this.#reserve = undefined;
    if (!this.stage.drawing) this.stage.element.remove();
    this.#begin();
    this.#ask.painted();
  }

  readonly #build = (): void => {
    if (this.#built || !this.#measured || !this.#board.isConnected) return;
    this.#plan();
    const snapshot = this.#ask.snapshot();
    this.#built = true;
    if (snapshot) {
      this.stage.build(snapshot);
      this.stage.move(snapshot);
      this.stage.write(snapshot);
    }
    if (this.#isNamed) this.#finish();
    else whenIdle(this.#finish, soon);
    this.#ask.painted();
  };

  #write(): void {
    const snapshot = this.#ask.snapshot();
    if (snapshot && this.#built) this.stage.write(snapshot);
    this.#name();
    this.#ask.painted();
  }

  #name(): void {
    const snapshot = this.#ask.snapshot();
    const rests = snapshot?.moving === undefined;
    if (snapshot && rests && this.#built) this.stage.name(snapshot, this.#ask.reached());
  }

  #resized(): void {
    if (this.#board.offsetWidth !== this.#width) nextFrame(this.#layout);
  }

  readonly #seen = ({ isIntersecting }: IntersectionObserverEntry): void => {
    const comes = isIntersecting && !this.#near;
    this.#near = isIntersecting;
    if (!comes) return;
    this.#build();
    nextFrame(this.#motion);
    nextFrame(this.#figures);
  };

  readonly #print = (): void => {
    const snapshot = this.#ask.snapshot();
    this.#build();
    if (snapshot) this.stage.move(snapshot);
    this.#write();
  };
}

/** The pixels from the lower edge of a drawing to that of its board's content. */
function restOf(board: HTMLElement, drawing: HTMLElement): number {
  const { paddingBottom, borderBottomWidth } = getComputedStyle(board);
  const below = board.getBoundingClientRect().bottom - drawing.getBoundingClientRect().bottom;
  return Math.max(0, below - parseFloat(paddingBottom) - parseFloat(borderBottomWidth));
}

/** What a drawing shows of its circuit's state, but for what has room in it to be turned: another one wants another drawing. */
function statesOf(snapshot: Moment | undefined): string {
  const states = snapshot?.circuit.components.map((each) =>
    'range' in each || 'internalRange' in each ? each.condition : settingOf(each),
  );
  return String(states);
}
