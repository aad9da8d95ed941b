import { html, LitElement, type PropertyDeclarations, type TemplateResult } from 'lit';
import {
  BoardLink,
  type BoardFace,
  type Settings,
  type Snapshot,
} from '../../../src/components/link/index.ts';

/** A board without a circuit: enough to be found. */
export class StubBoard extends HTMLElement implements BoardFace {
  readonly #listeners = new Set<() => void>();
  snapshot: Snapshot | undefined = undefined;
  settings: Settings = {};
  readonly set = (): void => undefined;
  readonly move = (): void => undefined;
  readonly acts: (string | Settings)[] = [];
  readonly act = (does: string | Settings): void => void this.acts.push(does);
  readonly light = (): void => undefined;
  get listeners(): ReadonlySet<() => void> {
    return this.#listeners;
  }
  subscribe(listener: () => void): () => void {
    this.#listeners.add(listener);
    return () => this.#listeners.delete(listener);
  }
  change(snapshot: Partial<Snapshot>): void {
    this.snapshot = snapshot as Snapshot;
    for (const listener of this.#listeners) listener();
  }
}

/** The plainest element that reads a board: it shows which one it found. */
export class Reader extends LitElement {
  static override properties: PropertyDeclarations = { board: { type: String } };
  declare board: string;
  readonly link: BoardLink = new BoardLink(this);
  renders = 0;
  /** The board that it showed last, whatever its name is now. */
  shown: BoardFace | undefined;
  constructor() {
    super();
    this.board = '';
  }
  override render(): TemplateResult {
    this.renders += 1;
    this.shown = this.link.board;
    return html`${this.link.board?.id ?? '-'}|${this.link.trouble}`;
  }
}
