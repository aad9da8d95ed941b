import { seriesParallel, type Circuit } from '../../engine/index.ts';
import type { Stage } from './stage.ts';
import { walk } from './walk.ts';

/** What pointing at a board asks of it. */
export interface PointedAt {
  readonly circuit: () => Circuit | undefined;
  readonly toggle: (id: string) => void;
  /** Told when another component is pointed at. */
  readonly changed: () => void;
}

/** The component of a group, or of what stands in one. */
function idOf(target: EventTarget | null): string | undefined {
  const group = target instanceof Element ? target.closest('[data-id]') : undefined;
  return group instanceof SVGElement ? group.dataset['id'] : undefined;
}

/** Which component of a drawing is pointed at or focused: by pointer, and by keys that walk along the current. */
export class Pointing {
  /** The component whose readings stand in the caption. */
  id: string | undefined;
  readonly #stage: Stage;
  readonly #board: PointedAt;
  #focused: string | undefined;
  #holds = false;

  constructor(stage: Stage, board: PointedAt) {
    this.#stage = stage;
    this.#board = board;
    const { element } = stage;
    element.addEventListener('pointerover', ({ target }) => this.#show(idOf(target)));
    element.addEventListener('pointerleave', () => this.#show(this.#holds ? this.#focused : undefined));
    element.addEventListener('focusin', ({ target }) => this.#focus(idOf(target)));
    element.addEventListener('focusout', () => (this.#holds = false));
    element.addEventListener('click', ({ target }) => this.#click(idOf(target)));
    element.addEventListener('keydown', (event) => this.#key(event));
  }

  /** The component that the Tab key reaches: the one that was focused last, else the first. */
  get reached(): string | undefined {
    const symbols = this.#stage.drawing?.symbols ?? [];
    return (symbols.find(({ id }) => id === this.#focused) ?? symbols[0])?.id;
  }

  #show(id: string | undefined): void {
    if (id === this.id) return;
    this.id = id;
    this.#board.changed();
  }

  #focus(id: string | undefined): void {
    if (id === undefined) return;
    this.#focused = id;
    this.#holds = true;
    this.#stage.still.reach(id);
    this.#show(id);
  }

  #click(id: string | undefined): void {
    if (id === undefined) return;
    this.#board.toggle(id);
    this.#stage.still.group(id)?.focus();
  }

  #key(event: KeyboardEvent): void {
    const { key, target, ctrlKey, altKey, metaKey } = event;
    const id = idOf(target);
    const circuit = this.#board.circuit();
    if (id === undefined || !circuit || ctrlKey || altKey || metaKey) return;
    const tree = seriesParallel(circuit);
    const next = tree.kind === 'irreducible' ? undefined : walk(tree, id, key);
    if (next !== undefined) this.#stage.still.group(next)?.focus();
    else if (key === 'Enter' || key === ' ') this.#board.toggle(id);
    else return;
    event.preventDefault();
  }
}
