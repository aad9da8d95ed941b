import { settingOf } from '../../engine/core.ts';
import { cancelFrame, inTurn, nextFrame, type FrameTask } from '../page/index.ts';
import type { Moment } from './moment.ts';
import { boards } from './present.ts';
import { margin, watchSight } from './sight.ts';
import { Stage, type StageStyle, type Undrawn } from './stage.ts';

/** What a painter asks of its board. */
export interface Painted {
  readonly snapshot: () => Moment | undefined;
  /** How it is to be drawn, but for the room there is. */
  readonly style: () => Omit<StageStyle, 'width'>;
  /** The component in the Tab order. */
  readonly reached: () => string | undefined;
  /** Told when the rest is to be rendered again; `whole` where the drawing is new. */
  readonly painted: (whole: boolean) => void;
}

const whenIdle = (work: () => void): void => {
  if ('requestIdleCallback' in globalThis) requestIdleCallback(work);
  else setTimeout(work);
};

/** On a page of no more boards than this, all have their size in the first frame; of more, those out of sight when they have their turn. */
const few = 30;

/** What a board keeps free at its sides: the padding of its sheet. */
const edges = 24;

/** The least and the most room that a drawing is planned for. */
const [narrowest, broadest] = [280, 720];

/** Brings a board's drawing up to date in the page's frames: nothing out of sight is touched, but all of it is drawn in the end. */
export class Painter {
  readonly stage: Stage = new Stage();
  /** Why the circuit is not drawn. */
  undrawn: Undrawn | undefined;
  readonly #board: HTMLElement;
  readonly #ask: Painted;
  readonly #size = new ResizeObserver(() => this.#resized());
  /** Fulfilled with the first plan, or once it is known that there is nothing to draw. */
  readonly begun: Promise<void>;
  #begin: () => void = () => undefined;
  #unwatch: (() => void) | undefined;
  #width = 0;
  #near = false;
  /** Whether the room was measured for the circuit that there is. */
  #measured = false;
  #planned = false;
  #built = false;
  #states = '';

  constructor(board: HTMLElement, ask: Painted) {
    this.#board = board;
    this.#ask = ask;
    this.begun = new Promise((done) => (this.#begin = done));
  }

  /** Begins to watch the window; what was never drawn keeps some room free until then. */
  connect(): void {
    const snapshot = this.#ask.snapshot();
    if (snapshot && !this.stage.element.parentNode) {
      this.stage.wait(snapshot.circuit);
      this.#board.shadowRoot?.append(this.stage.element);
    }
    this.#size.observe(this.#board);
    this.#unwatch = watchSight(this.#board, this.#seen);
    addEventListener('beforeprint', this.#print);
    nextFrame(this.#layout);
  }

  /** Lets go of the window. */
  disconnect(): void {
    this.#size.disconnect();
    this.#unwatch?.();
    removeEventListener('beforeprint', this.#print);
    for (const task of [this.#layout, this.#motion, this.#figures]) cancelFrame(task);
  }

  /** The circuit or its style is new. */
  renew(): void {
    this.#measured = false;
    nextFrame(this.#layout);
  }

  /** A setting has changed: ribbons follow in the next frame, numbers when it is their turn, all of it once it has settled; out of sight, when it is seen. */
  changed(): void {
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
      if (this.#near) {
        this.#build();
        return;
      }
      if (boards().length <= few) this.#plan();
      whenIdle(this.#build);
    },
  };

  readonly #motion: FrameTask = {
    draw: () => {
      const snapshot = this.#ask.snapshot();
      if (snapshot && this.#built) this.stage.move(snapshot);
    },
  };

  readonly #figures: FrameTask = { draw: () => this.#write() };

  /** Takes the room of the drawing, and lets what stands round it be rendered. */
  #plan(): void {
    if (this.#planned) return;
    const snapshot = this.#ask.snapshot();
    this.#planned = true;
    this.#states = statesOf(snapshot);
    const width = this.#width ? Math.min(Math.max(this.#width - edges, narrowest), broadest) : broadest;
    this.undrawn = snapshot && this.stage.plan(snapshot, { ...this.#ask.style(), width });
    if (!this.stage.drawing) this.stage.element.remove();
    this.#begin();
    this.#ask.painted(false);
  }

  readonly #build = (): void => {
    if (this.#built || !this.#measured || !this.#board.isConnected) return;
    this.#plan();
    const snapshot = this.#ask.snapshot();
    this.#built = true;
    if (snapshot) {
      this.stage.build(snapshot);
      this.stage.move(snapshot);
    }
    this.#write();
    this.#ask.painted(true);
  };

  #write(): void {
    const snapshot = this.#ask.snapshot();
    if (snapshot && this.#built) this.stage.write(snapshot, this.#ask.reached());
    this.#ask.painted(false);
  }

  #resized(): void {
    if (this.#board.offsetWidth !== this.#width) nextFrame(this.#layout);
  }

  readonly #seen = (near: boolean): void => {
    const comes = near && !this.#near;
    this.#near = near;
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

/** What a drawing shows of its circuit's state, but for what has room in it to be turned: another one wants another drawing. */
function statesOf(snapshot: Moment | undefined): string {
  const states = snapshot?.circuit.components.map((each) =>
    'range' in each || 'internalRange' in each ? each.condition : settingOf(each),
  );
  return String(states);
}
