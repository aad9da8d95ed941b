import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { say, usualCourse } from '../../engine/core.ts';
import { BoardLink, fire, shortcutOf } from '../link/index.ts';
import { csvOf, CSVOut, sheet } from '../csv/index.ts';
import { PageElement, buttons, ink, speak } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { headingText, type Grid, type Made } from './grid.ts';
import { readingsGrid } from './readings-grid.ts';
import { entryFrom, entryText, Records, type RecordedRow } from './records.ts';
import { recordsGrid, rowNow } from './records-grid.ts';
import { styles } from './styles.ts';
import { fromJSON, textsOf, type Texts } from './texts.ts';
import { tableView } from './view.ts';

type Act = 'record' | 'clear' | 'undo';

/**
 * A table of readings: of all components, live or to be filled in by the pupil, or of settings that the pupil records one press at a
 * time. It goes out as CSV, and prints as a worksheet.
 *
 * @tag rheolet-table
 * @fires {CustomEvent<RecordDetail>} rheolet-record - The pupil recorded a row, or took one away.
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or something that is asked for cannot be read.
 * @fires change - The pupil filled in a cell.
 * @csspart table - The table.
 * @csspart caption - The table's name.
 * @csspart change - What a reading has done since it was held.
 * @csspart blank - A cell to be filled in.
 * @csspart act - A button under the table.
 * @csspart delete - The button that takes a recorded row away.
 * @csspart csv - The box with the table as CSV, where the page may neither copy nor save.
 * @csspart notice - Whether it was copied.
 * @csspart problem - Why there is nothing to show, or which wish cannot be had.
 */
export class RheoletTable extends PageElement {
  /** It takes part in forms. */
  static readonly formAssociated = true;
  static override styles: CSSResultGroup = [ink, buttons, sheet, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    columns: { type: String },
    mode: { type: String },
    given: { type: String },
    totals: { type: Boolean },
    record: { type: String },
    label: { type: String },
    name: { type: String, reflect: true },
    disabled: { type: Boolean, reflect: true },
  };

  /** The id of its board; not needed inside a board, or with only one in the page. */
  declare board: string;
  /** The components that have a row (`R1 R2 L1`); all but wires and ideal meters where absent. */
  declare of: string;
  /** The columns, in order: `V I R P` where absent; a prefix may be fixed, as in `V I/mA`. */
  declare columns: string;
  /** `live` (readings), `blank` (the pupil fills in every cell) or `part` (all but the `given` ones). */
  declare mode: string;
  /** The cells that a part-filled table shows: `V_R1 R_R2 I_total`. */
  declare given: string;
  /** Adds a row for the whole circuit; its p.d. and power are those at the terminals of the one supply. */
  declare totals: boolean;
  /** The quantities that a press of the button records (`R_R1 I_A1`), a row for each press, in place of the components. */
  declare record: string;
  /** The table's name, written above it. */
  declare label: string;
  /** The name under which its value is sent with a form. */
  declare name: string;
  /** Keeps it from being filled in. */
  declare disabled: boolean;

  readonly #link = new BoardLink(this);
  readonly #spotlight = new Spotlight(this);
  readonly #internals: ElementInternals = this.attachInternals();
  readonly #records = new Records();
  #typed: Texts = {};
  #barred = false;
  #grid: Grid | undefined;
  #problem = '';
  readonly #out = new CSVOut(this, () => [this.label, this.#link.board?.id].find(Boolean) ?? 'table');

  constructor() {
    super();
    this.board = this.of = this.columns = this.mode = this.given = this.record = this.label = this.name = '';
    this.totals = this.disabled = false;
  }

  /** What the pupil filled in, by the names of the quantities: `{ V_R1: "4.5" }`. */
  get values(): Texts {
    return textsOf(this.#typed);
  }

  set values(values: Texts) {
    this.#typed = textsOf(values);
    this.requestUpdate();
  }

  /** What the pupil recorded: the values of each row in SI units, by the names of the quantities. */
  get records(): readonly Readonly<Record<string, number>>[] {
    return this.#records.rows.map((row) =>
      Object.fromEntries(
        Object.entries(row).flatMap(([name, { value }]) =>
          value === undefined ? [] : [[name, Number(value)]],
        ),
      ),
    );
  }

  /** What was filled in, or recorded where it records, as a JSON text that it reads back; '' while there is nothing. */
  get value(): string {
    const rows = this.#records.rows.map((row) =>
      Object.fromEntries(Object.entries(row).map(([name, entry]) => [name, entryText(entry)])),
    );
    const held = this.record ? rows : this.values;
    return Object.keys(held).length > 0 ? JSON.stringify(held) : '';
  }

  set value(text: string) {
    const held = fromJSON(text);
    const rows = Array.isArray(held) ? held : [];
    this.#typed = Array.isArray(held) ? {} : textsOf(held);
    this.#records.open(
      rows.map((row) =>
        Object.fromEntries(Object.entries(textsOf(row)).map(([name, each]) => [name, entryFrom(each)])),
      ),
    );
    this.requestUpdate();
  }

  /** The table as it stands, as CSV (RFC 4180): with a decimal comma, where the course has one, and then with semicolons. */
  toCSV(): string {
    const grid = this.#made()?.grid;
    if (!grid) return '';
    const { values } = this;
    const rows = grid.rows.map(({ head, cells }) => [
      head,
      ...cells.map(({ name, text }) => text ?? values[name] ?? ''),
    ]);
    const { decimalSign } = this.#link.snapshot?.course ?? usualCourse;
    return csvOf([[grid.corner, ...grid.headings.map(headingText)], ...rows], decimalSign);
  }

  /** A form is reset: nothing is filled in or recorded. */
  formResetCallback(): void {
    this.value = '';
  }

  /** The browser brings back what a form held. */
  formStateRestoreCallback(state: string): void {
    this.value = state;
  }

  /** Its form, or a fieldset round it, is disabled or enabled. */
  formDisabledCallback(barred: boolean): void {
    this.#barred = barred;
    this.requestUpdate();
  }

  override willUpdate(): void {
    const { trouble } = this.#link;
    const made = this.#made();
    const [wrong] = made?.wrong ?? [];
    this.#grid = made?.grid;
    this.#problem = wrong ? say(wrong) : made ? '' : trouble;
    if (made) this.#link.report(wrong?.code, this.#problem);
  }

  override render(): TemplateResult {
    const grid = this.#grid;
    const problem = this.#problem
      ? html`<p part="problem" lang="en" dir="ltr">${this.#problem}</p>`
      : nothing;
    if (!grid) return html`${problem}`;
    const disabled = this.disabled || this.#barred;
    const { rows, undoable } = this.#records;
    const covered = this.#link.snapshot?.covered ?? true;
    const button = (does: Act, barred = false): TemplateResult =>
      html`<button type="button" part="act" ?disabled=${barred} @click=${() => this.#act(does)}>
        ${say({ code: 'table button', data: { does } })}
      </button>`;
    return html`<div @keydown=${this.#shortcut}>
        ${tableView({
          grid,
          label: this.label,
          course: this.#link.snapshot?.course ?? usualCourse,
          typed: this.#typed,
          disabled,
          type: this.#type,
          settle: () => this.dispatchEvent(new Event('change', { bubbles: true })),
          point: (head) => this.#spotlight.shine(this.#link.board, head && !this.record ? [head] : []),
          remove: this.record ? this.#remove : undefined,
        })}
        <div class="buttons" lang="en">
          ${
            this.record
              ? [
                  button('record', disabled || covered),
                  button('clear', disabled || rows.length === 0),
                  button('undo', disabled || !undoable),
                ]
              : nothing
          }
          ${this.#out.buttons}
        </div>
      </div>
      ${this.#out.box} ${problem}`;
  }

  override updated(): void {
    this.#internals.setFormValue(this.value);
  }

  /** The table that the page asks for. */
  #made(): Made | undefined {
    const { snapshot } = this.#link;
    if (!snapshot) return undefined;
    return this.record
      ? recordsGrid(snapshot, this.record, this.#records.rows)
      : readingsGrid(snapshot, this);
  }

  readonly #type = (name: string, text: string): void => {
    this.#typed = { ...this.#typed, [name]: text };
    this.requestUpdate();
  };

  #act(does: Act): void {
    const { snapshot } = this.#link;
    if (does === 'undo') this.#change(() => this.#records.undo());
    else if (does === 'clear') this.#become([]);
    else if (snapshot) this.#become([...this.#records.rows, rowNow(snapshot, this.record)]);
  }

  readonly #remove = (place: number): void => {
    this.#become(this.#records.rows.filter((_, each) => each !== place));
    if (place < this.#records.rows.length) return; // the button in its place keeps the focus
    this.renderRoot.querySelector<HTMLElement>('[part=act]')?.focus();
  };

  #become(rows: readonly RecordedRow[]): void {
    this.#change(() => this.#records.become(rows));
  }

  /** Something that the pupil does to the rows is shown, heard and told to the page. */
  #change(act: () => void): void {
    act();
    this.requestUpdate();
    const { records } = this;
    speak(this, say({ code: 'recorded', data: { rows: records.length } }));
    fire(this, 'rheolet-record', { board: this.#link.board?.id ?? '', records });
  }

  /** What takes back a setting of the board elsewhere takes back the last row here. */
  readonly #shortcut = (event: KeyboardEvent): void => {
    if (!this.record || shortcutOf(event) !== 'undo') return;
    event.preventDefault();
    event.stopPropagation();
    if (this.#records.undoable && !this.disabled && !this.#barred) this.#act('undo');
  };
}
