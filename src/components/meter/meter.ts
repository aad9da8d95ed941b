import {
  html,
  nothing,
  type CSSResultGroup,
  type PropertyDeclarations,
  type PropertyValues,
  type TemplateResult,
} from 'lit';
import { say, type Said } from '../../engine/core.ts';
import { BoardLink, fire, readingOf, type Snapshot } from '../link/index.ts';
import { PageElement, ink } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { faceOf, type Face } from './face.ts';
import { asksForInstrument, fetchInstruments, instruments } from './instruments.ts';
import { leadsOf, leadsView, type Leads } from './leads.ts';
import { sheet } from './styles.ts';

const digits = ({ unit, room, text }: Face): TemplateResult =>
  html`<span part="symbol">${unit}</span>
    <span part="reading" dir="auto" data-room=${room}
      ><span class=${/^\D{2}/.test(text) ? 'words' : 'number'}>${text}</span></span
    >`;

/**
 * A live meter: an ammeter, voltmeter, ohmmeter or wattmeter by what it reads, with digits or a needle. With a range it is like a
 * real one: it reads in steps, and not beyond its range. Pointing at it or focusing it makes its component stand out on the board.
 *
 * @tag rheolet-meter
 * @fires {CustomEvent<ChangeDetail>} rheolet-change - A lead was moved: what is read now (`V_X_Z`).
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or what is asked for cannot be read.
 * @csspart meter - The frame round all of it.
 * @csspart symbol - The circle with the letter of the unit.
 * @csspart reading - Number and unit, or why there is none.
 * @csspart unit - The symbol of the unit on a needle's face.
 * @csspart change - What the reading has done since it was held.
 * @csspart caption - What is measured, in words.
 * @csspart leads - Where the two leads of a movable voltmeter are.
 * @csspart problem - Why nothing can be read, or which wish cannot be had.
 */
export class RheoletMeter extends PageElement {
  /** It belongs to a form, which takes its leads back when it is reset. */
  static readonly formAssociated = true;
  static override styles: CSSResultGroup = [ink, sheet];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    figures: { type: Number },
    label: { type: String },
    unit: { type: String },
    range: { type: String },
    resolution: { type: String },
    face: { type: String },
    movable: { type: Boolean },
  };

  /** The id of the board; unless said, the one the meter stands in or the only one of the page. */
  declare board: string;
  /** A meter of the circuit (`A2`), or a quantity by its name (`V_R1`, `I_R1`, `P_L1`, `R_total`); unless said, the only meter. */
  declare of: string;
  /** Significant figures, 1 to 15, unless it reads in steps; as the board's course says where absent. */
  declare figures: number | undefined;
  /** The page's own caption in place of what is measured. */
  declare label: string;
  /** The unit with its prefix (`mA`), to fix the prefix. */
  declare unit: string;
  /**
   * The most that it can show (`0.6 A`, `600 mA`), or both ends (`-0.6..0.6 A`). Beyond it digits show "overload", a needle stands at
   * its stop; below 0 digits show a minus. Unless said, digits have no end, and a needle goes to the smallest of 1, 2 and 5 × 10ⁿ that
   * holds the reading wherever one slider is turned or the switches are closed.
   */
  declare range: string;
  /**
   * The smallest step that it tells apart (`0.02 A`). Unless said, with a range: of digits the smallest power of ten of which 2000
   * reach over it, as with 3½ digits; of a needle half a division.
   */
  declare resolution: string;
  /** `digits` (the usual) or `needle`. */
  declare face: string;
  /**
   * Whether it is a voltmeter whose two leads a pupil moves from one labelled point (`@X`) to another; they start where `of` says
   * (`V_X_Y`), unless said at the first point and the last, and are back there when a form is reset.
   */
  declare movable: boolean;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  #face: Face | undefined;
  #problem = '';
  /** Where the leads have been moved to. */
  #moved: Leads | undefined;
  #leads: Leads | undefined;

  constructor() {
    super();
    this.movable = false;
    this.board = this.of = this.label = this.unit = this.range = this.resolution = this.face = '';
  }

  /** A form is reset: the leads are back where they started. */
  formResetCallback(): void {
    this.#moved = undefined;
    this.requestUpdate();
  }

  /** What is to be like a real one is first rendered when it is known how that reads. */
  protected override async scheduleUpdate(): Promise<void> {
    if (asksForInstrument(this) && !instruments()) await fetchInstruments();
    await super.scheduleUpdate();
  }

  override willUpdate(changed: PropertyValues): void {
    const { snapshot, trouble } = this.#link;
    if (changed.has('of')) this.#moved = undefined;
    this.#leads = snapshot && this.movable ? leadsOf(snapshot.circuit, this.of, this.#moved) : undefined;
    const shown = snapshot && this.#faceOf(snapshot);
    const wrong = shown && ('code' in shown ? shown : shown.mistake);
    this.#face = shown && 'text' in shown ? shown : undefined;
    this.#problem = wrong ? say(wrong) : shown ? '' : trouble;
    if (shown) this.#link.report(wrong?.code, this.#problem);
  }

  #faceOf(snapshot: Snapshot): Face | Said {
    if (!this.movable) return faceOf(snapshot, this, this.of);
    if (!this.#leads) return { code: 'no points', data: {} };
    return faceOf(snapshot, this, `V_${this.#leads.join('_')}`);
  }

  readonly #move = (leads: Leads): void => {
    this.#moved = leads;
    this.requestUpdate();
    const { snapshot, board } = this.#link;
    if (!snapshot) return;
    const quantity = `V_${leads.join('_')}`;
    const { text, value = NaN } = readingOf(snapshot, quantity, { as: 'signed' });
    fire(this, 'rheolet-change', {
      board: board?.id ?? '',
      id: quantity,
      quantity,
      value,
      text,
      unit: 'V',
    });
  };

  override render(): TemplateResult {
    const { snapshot } = this.#link;
    const face = this.#face;
    const problem = this.#problem
      ? html`<p part="problem" lang="en" dir="ltr">${this.#problem}</p>`
      : nothing;
    if (!face) return html`${problem}`;
    return html`<div part="meter" @mouseenter=${this.#shine} @mouseleave=${this.#shine}>
        <div
          role="img"
          lang="en"
          tabindex="0"
          aria-label=${face.name}
          aria-describedby="caption"
          @focus=${this.#shine}
          @blur=${this.#shine}
        >
          ${face.dial ?? digits(face)}
        </div>
        ${face.change ? html`<p part="change" lang="en" aria-hidden="true">${face.change.text}</p>` : nothing}
        <p part="caption" id="caption" lang=${face.caption === this.label ? nothing : 'en'}>
          ${face.caption}
        </p>
        ${this.#leads && snapshot ? leadsView(snapshot.circuit, this.#leads, this.#move) : nothing}
      </div>
      ${problem}`;
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
