import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say, type Said } from '../../engine/core.ts';
import {
  BoardLink,
  prefixIn,
  readingOf,
  unitOf,
  type ReadingStyle,
  type ChangeText,
  type ReadingText,
  type Snapshot,
} from '../link/index.ts';
import { PageElement, ink } from '../page/index.ts';
import { Room } from './room.ts';
import { styles } from './styles.ts';

const modes = ['magnitude', 'signed', 'fraction'] as const;

/**
 * A live number in a sentence.
 *
 * @tag rheolet-value
 * @slot - What stands in its place until there is a reading.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board or quantity.
 * @csspart value - The number with its unit.
 * @csspart change - What it has done since the readings were held.
 * @csspart problem - Why there is nothing to show.
 */
export class RheoletValue extends PageElement {
  static override styles: CSSResultGroup = [ink, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    figures: { type: Number },
    unit: { type: String },
    as: { type: String },
  };

  /** The id of its board; not needed inside a board, or with only one in the page. */
  declare board: string;
  /** The name of the quantity: `I_A1`, `V_R1`, `R_total`. */
  declare of: string;
  /** Significant figures, 1 to 15; else as the board's course says. */
  declare figures: number;
  /** Fixes the prefix: `mA`. */
  declare unit: string;
  /** `magnitude` (the usual), `signed`, or `fraction`, which is exact. */
  declare as: string;

  readonly #link = new BoardLink(this);
  readonly #room = new Room();
  readonly #changeRoom = new Room();
  #mistake = '';

  constructor() {
    super();
    this.board = this.of = this.unit = this.as = '';
    this.figures = 0;
  }

  override render(): TemplateResult {
    const { snapshot, trouble } = this.#link;
    if (!snapshot) return html`<slot></slot><span part="problem" lang="en">${trouble}</span>`;
    const { text, spoken } = this.#read(snapshot);
    if (this.#mistake) return html`<span part="problem" lang="en">${spoken}</span>`;
    const change = this.#change(snapshot);
    const room = this.#room.for(snapshot, text, (at) => readingOf(at, this.of, this.#style).text);
    return html`<span
        part="value"
        lang="en"
        class=${snapshot.covered ? 'covered' : ''}
        aria-hidden="true"
        data-room=${room}
        title=${text === '—' ? spoken : nothing}
        >${text}</span
      >${
        change
          ? html`<span
              part="change"
              lang="en"
              aria-hidden="true"
              data-room=${this.#changeRoom.for(snapshot, change.text, this.#changed)}
              >${change.text}</span
            >`
          : nothing
      }<span class="heard" lang="en">${spoken}${change ? ` (${change.spoken})` : nothing}</span>`;
  }

  /** As it would be elsewhere; a small change takes two figures more. */
  readonly #changed = (at: Snapshot): string => `${this.#change(at)?.text ?? ''}00`;

  #change(snapshot: Snapshot): ChangeText | undefined {
    return snapshot.comparison?.changeOf(snapshot, this.of, this.#style);
  }

  get #style(): ReadingStyle {
    const { of, unit, figures } = this;
    const as = modes.find((mode) => mode === this.as);
    const prefix = prefixIn(unit, unitOf(of));
    return {
      figures,
      ...(unit && prefix !== undefined && { prefix }),
      ...(as && { as }),
    };
  }

  /** The reading; a name or a unit that cannot be is told to the page. */
  #read(snapshot: Snapshot): ReadingText {
    const { of, unit } = this;
    const prefix = prefixIn(unit, unitOf(of));
    const reason = snapshot.readings.reason(of);
    const mistake: Said | undefined = !of
      ? { code: 'what to read', data: {} }
      : reason?.code === 'no such quantity' || reason?.code === 'of two parts'
        ? reason
        : unit && prefix === undefined
          ? { code: 'not its unit', data: { found: unit, unit: unitOf(of) } }
          : undefined;
    this.#mistake = mistake ? say(mistake) : '';
    this.#link.report(mistake?.code, this.#mistake);
    if (mistake) return { text: '—', spoken: this.#mistake };
    return readingOf(snapshot, of, this.#style);
  }
}
