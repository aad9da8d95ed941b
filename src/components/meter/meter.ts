import { html, LitElement, type CSSResult, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say, type Said } from '../../engine/index.ts';
import { BoardLink, fire } from '../link/index.ts';
import { ink } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { faceOf, type Face } from './face.ts';
import { sheet } from './styles.ts';

/**
 * A live meter: an ammeter, voltmeter, ohmmeter or wattmeter by what it reads. Pointing at it or focusing it makes its
 * component stand out on the board.
 *
 * @tag rheolet-meter
 * @fires {CustomEvent} rheolet-problem - What is asked for cannot be read; `detail` has the code and the sentence.
 * @csspart meter - the frame round all of it
 * @csspart symbol - the circle with the letter of the unit
 * @csspart reading - number and unit, or why there is none
 * @csspart caption - what is measured, in words
 * @csspart trouble - the sentence that stands in its place when nothing can be shown
 */
export class RheoletMeter extends LitElement {
  static override styles: CSSResult[] = [ink, sheet];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    figures: { type: Number },
    label: { type: String },
    unit: { type: String },
  };

  /** The id of the board; unless said, the one the meter stands in or the only one of the page. */
  declare board: string;
  /** A meter of the circuit (`A2`), or a quantity by its name (`V_R1`, `I_R1`, `P_L1`, `R_total`); unless said, the only meter. */
  declare of: string;
  /** Significant figures; unless said, as the board's course says. */
  declare figures: number | undefined;
  /** The page's own caption in place of what is measured. */
  declare label: string;
  /** The unit with its prefix (`mA`), to fix the prefix. */
  declare unit: string;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  #face: Face | undefined;
  #problem: Said | undefined;

  constructor() {
    super();
    this.board = this.of = this.label = this.unit = '';
  }

  override willUpdate(): void {
    const { snapshot } = this.#link;
    const shown = snapshot && faceOf(snapshot, this);
    this.#face = shown && 'text' in shown ? shown : undefined;
    this.#complain(shown && 'code' in shown ? shown : undefined);
  }

  override render(): TemplateResult {
    const face = this.#face;
    if (!face) return html`<p part="trouble">${this.#problem ? say(this.#problem) : this.#link.trouble}</p>`;
    return html`<div part="meter" @pointerenter=${this.#shine} @pointerleave=${this.#shine}>
      <div
        role="img"
        tabindex="0"
        aria-label=${face.name}
        aria-describedby="caption"
        @focus=${this.#shine}
        @blur=${this.#shine}
      >
        <span part="symbol">${face.unit}</span>
        <span part="reading" dir="auto" data-room=${face.room}>${face.text}</span>
      </div>
      <p part="caption" id="caption">${face.caption}</p>
    </div>`;
  }

  override updated(): void {
    this.#shine();
  }

  /** What is pointed at or focused stands out: the page's own state says which, so that nothing has to be remembered. */
  readonly #shine = (): void => {
    const wanted = this.matches(':hover, :focus-within') ? this.#face?.about : undefined;
    this.#spotlight.shine(this.#link.board, wanted ?? []);
  };

  #complain(problem: Said | undefined): void {
    const before = this.#problem && say(this.#problem);
    this.#problem = problem;
    const text = problem && say(problem);
    if (!problem || !text || text === before) return;
    fire(this, 'rheolet-problem', { board: this.board, id: this.of, code: problem.code, text });
  }
}
