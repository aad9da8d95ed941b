import { html, LitElement, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say } from '../../engine/index.ts';
import { BoardLink } from '../link/index.ts';
import { ink } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { faceOf, type Face } from './face.ts';
import { sheet } from './styles.ts';

/**
 * A live meter: an ammeter, voltmeter, ohmmeter or wattmeter by what it reads. Pointing at it or focusing it makes its
 * component stand out on the board.
 *
 * @tag rheolet-meter
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or what is asked for cannot be read.
 * @csspart meter - The frame round all of it.
 * @csspart symbol - The circle with the letter of the unit.
 * @csspart reading - Number and unit, or why there is none.
 * @csspart caption - What is measured, in words.
 * @csspart problem - Why nothing can be read.
 */
export class RheoletMeter extends LitElement {
  static override styles: CSSResultGroup = [ink, sheet];
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
  #problem = '';

  constructor() {
    super();
    this.board = this.of = this.label = this.unit = '';
  }

  override willUpdate(): void {
    const { snapshot, trouble } = this.#link;
    const shown = snapshot && faceOf(snapshot, this);
    this.#face = shown && 'text' in shown ? shown : undefined;
    this.#problem = shown && 'code' in shown ? say(shown) : trouble;
    if (shown) this.#link.report('code' in shown ? shown.code : '', this.#problem);
  }

  override render(): TemplateResult {
    const face = this.#face;
    if (!face) return html`<p part="problem">${this.#problem}</p>`;
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
        <span part="reading" dir="auto" data-room=${face.room}
          ><span class=${/^\D{2}/.test(face.text) ? 'words' : 'number'}>${face.text}</span></span
        >
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
}
