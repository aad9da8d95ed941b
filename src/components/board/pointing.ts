import type { Circuit, Condition } from '../../engine/core.ts';
import type { Stage } from './stage.ts';
import { walk, walkable } from './walk.ts';

/** What pointing at a board asks of it. */
export interface PointedAt {
  readonly circuit: () => Circuit | undefined;
  readonly toggle: (id: string) => void;
  readonly alter: (id: string, condition: Condition) => void;
  readonly hold: (does: 'hold' | 'release') => void;
  /** Told when another component is pointed at or chosen. */
  readonly changed: () => void;
}

/** The keys that take a component out or put a wire across it. */
const alterations: Readonly<Record<string, Condition>> = {
  Delete: 'broken',
  Backspace: 'broken',
  b: 'bridged',
};

/** The keys that hold the readings, and let go of them. */
const holds: Readonly<Record<string, 'hold' | 'release'>> = { h: 'hold', H: 'release' };

/** The component of a group, or of what stands in one. */
function idOf(target: EventTarget | null): string | undefined {
  const group = target instanceof Element ? target.closest('[data-id]') : undefined;
  return group instanceof SVGElement ? group.dataset['id'] : undefined;
}

/** Which component of a drawing is pointed at and which is chosen: by pointer, and by keys that walk along the current. */
export class Pointing {
  /** The component that was clicked or focused last, until Escape. */
  chosen: string | undefined;
  readonly #stage: () => Stage;
  readonly #board: PointedAt;
  #over: string | undefined;
  #focused: string | undefined;

  constructor(stage: () => Stage, board: PointedAt) {
    this.#stage = stage;
    this.#board = board;
  }

  /** Listens to what is done on a stage. */
  attend({ element }: Stage): void {
    element.addEventListener('pointerover', ({ target }) => this.#point(idOf(target)));
    element.addEventListener('pointerleave', () => this.#point(undefined));
    element.addEventListener('focusin', ({ target }) => this.#choose(idOf(target)));
    element.addEventListener('click', ({ target }) => this.#click(idOf(target)));
    element.addEventListener('keydown', (event) => this.#key(event));
  }

  /** The component whose readings stand in the caption. */
  get id(): string | undefined {
    return this.#over ?? this.chosen;
  }

  /** The component that the Tab key reaches: the one that was focused last, else the first. */
  get reached(): string | undefined {
    const symbols = this.#stage().drawing?.symbols ?? [];
    return (symbols.find(({ id }) => id === this.#focused) ?? symbols[0])?.id;
  }

  /** Nothing is chosen any more; the focus goes back into the drawing. */
  leave(): void {
    if (this.chosen !== undefined) this.#stage().still.group(this.chosen)?.focus();
    this.chosen = this.#over = undefined;
    this.#board.changed();
  }

  #point(id: string | undefined): void {
    if (id === this.#over) return;
    this.#over = id;
    this.#board.changed();
  }

  #choose(id: string | undefined): void {
    if (id === undefined) return;
    this.chosen = this.#focused = id;
    this.#over = undefined;
    this.#stage().still.reach(id);
    this.#board.changed();
  }

  #click(id: string | undefined): void {
    if (id === undefined) return;
    this.#board.toggle(id);
    this.#stage().still.group(id)?.focus();
    this.#choose(id);
  }

  #key(event: KeyboardEvent): void {
    const { key, target, ctrlKey, altKey, metaKey } = event;
    const id = idOf(target);
    const circuit = this.#board.circuit();
    if (id === undefined || !circuit || ctrlKey || altKey || metaKey) return;
    if (key === 'Escape') this.leave(); // and what else the page may do
    const next = walk(walkable(circuit), id, key);
    const alteration = Object.hasOwn(alterations, key) ? alterations[key] : undefined;
    if (next !== undefined) this.#stage().still.group(next)?.focus();
    else if (alteration) this.#board.alter(id, alteration);
    else if (Object.hasOwn(holds, key)) this.#board.hold(holds[key] ?? 'hold');
    else if (key === 'Enter' || key === ' ') this.#board.toggle(id);
    else return;
    event.preventDefault();
  }
}
