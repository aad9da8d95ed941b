import { html, nothing, type CSSResultGroup, type PropertyDeclarations, type TemplateResult } from 'lit';
import { type Circuit, type Course, type Unit } from '../../engine/core.ts';
import { say, type Said } from '../../engine/reasons/index.ts';
import { axisOver, both, decadesOver, type Axis, type Reach } from '../axis/index.ts';
import { csvOf, CSVOut, nameView, rowsOf, sheet, sheetView, type Sheet } from '../csv/index.ts';
import { BoardLink, inLetters, unitOf, type Snapshot } from '../link/index.ts';
import { PageElement, Room, buttons, ink } from '../page/index.ts';
import { Spotlight } from '../spotlight/index.ts';
import { characteristicOf } from './characteristic.ts';
import { circuitAt, curvesOf, isLogarithmic, type Curves } from './curves.ts';
import { namesIn } from './names.ts';
import { picture, type Mark } from './picture.ts';
import { planeOf, type Plane } from './plane.ts';
import { calledIn, lastOf, pointAt, pointNow, settingNear, type Point } from './points.ts';
import { sheetOf } from './sheet.ts';
import { styles } from './styles.ts';
import { turnedOf, type Turned } from './turned.ts';

/** How far each key goes along the settings: by so many, or by a part of all. */
const ways: Readonly<Record<string, (last: number) => number>> = {
  ArrowRight: () => 1,
  ArrowUp: () => 1,
  ArrowLeft: () => -1,
  ArrowDown: () => -1,
  PageUp: (last) => Math.ceil(last / 10),
  PageDown: (last) => -Math.ceil(last / 10),
  Home: () => -Infinity,
  End: () => Infinity,
};

/** What a graph shows of a board. */
interface Shown {
  readonly snapshot: Snapshot;
  readonly turned: Turned;
  readonly unit: Unit;
  readonly curves: Curves;
  readonly along: Axis;
  readonly up: Axis;
  readonly plane: Plane;
}

/** Circuits as texts to be compared: JSON has no whole numbers of any size. */
const exactly = (_: string, value: unknown): unknown => (typeof value === 'bigint' ? `${value}` : value);

/**
 * Quantities against what is turned: exact curves over the whole range of a slider, a mark on each where the board stands now, and one
 * where it stood when its readings were held; or the characteristic of one component. It is read by pointer, or by the arrow, Page, Home and End keys, setting by setting;
 * Escape goes back to where the board stands. Its values go out as a table and as CSV.
 *
 * @tag rheolet-graph
 * @fires {CustomEvent<ProblemDetail>} rheolet-problem - There is no such board, or what is asked for cannot be drawn.
 * @csspart up - What the upright axis shows, above it.
 * @csspart plane - The graph, which is read along its settings.
 * @csspart along - What the axis along the foot shows.
 * @csspart caption - The point that is read, or where the board stands.
 * @csspart values - The values, closed until the pupil opens them.
 * @csspart table - Their table.
 * @csspart act - A button under the table.
 * @csspart notice - Whether it was copied.
 * @csspart csv - The box with the table as CSV, where the page may neither copy nor save.
 * @csspart problem - Why there is nothing to draw.
 */
export class RheoletGraph extends PageElement {
  static override styles: CSSResultGroup = [ink, buttons, sheet, styles];
  static override properties: PropertyDeclarations = {
    board: { type: String },
    of: { type: String },
    against: { type: String },
    label: { type: String },
  };

  /** The id of the board; unless said, the one it stands in or the only one of the page. */
  declare board: string;
  /** The quantities to be drawn, all of one unit: `I_A1 I_A2`; the total current where absent, in a characteristic the component's own. */
  declare of: string;
  /** What is turned: a resistor (`R1`), the e.m.f. of a supply (`B1`) or what is inside it (`r_B1`), `temperature` or `light`; the p.d. across a component (`V_L1`) for the characteristic of that component alone; not needed where only one thing can be. */
  declare against: string;
  /** The name of the graph, for those who hear it. */
  declare label: string;

  readonly #link = new BoardLink(this, true);
  readonly #spotlight = new Spotlight(this);
  readonly #room = new Room(this);
  readonly #out = new CSVOut(this, () => [this.label, this.#link.board?.id].find(Boolean) ?? 'graph');
  /** The setting that the pupil reads; undefined: where the board stands. */
  #read: number | undefined;
  #shown: Shown | undefined;
  #problem = '';
  /** What the curves were drawn for. */
  #drawn:
    | {
        readonly start: Circuit;
        readonly asked: string;
        readonly key: string;
        readonly curves: Curves;
        readonly reach: Reach;
      }
    | undefined;

  /** The values as they were last written. */
  #written: { readonly curves: Curves; readonly course: Course; readonly values: Sheet } | undefined;

  constructor() {
    super();
    this.board = this.of = this.against = this.label = '';
  }

  /** The values at the marks of the axis, as CSV (RFC 4180): with a decimal comma, where the course has one, and then with semicolons. '' where there is no graph. */
  toCSV(): string {
    const values = this.#sheet();
    const sign = this.#link.snapshot?.course.decimalSign ?? '.';
    return values ? csvOf(rowsOf(values), sign) : '';
  }

  /** First rendered when it is known how wide it is. */
  protected override async scheduleUpdate(): Promise<void> {
    if (!this.hasUpdated) await this.#room.known;
    await super.scheduleUpdate();
  }

  override willUpdate(): void {
    const { snapshot, trouble } = this.#link;
    const found = snapshot && this.#find(snapshot);
    const wrong = found && 'code' in found ? found : undefined;
    this.#shown = found && !('code' in found) ? found : undefined;
    this.#problem = wrong ? say(wrong) : trouble;
    if (snapshot) this.#link.report(wrong?.code, wrong ? this.#problem : '');
  }

  override render(): TemplateResult {
    const shown = this.#shown;
    const values = this.#sheet();
    if (!shown || !values) return html`<p part="problem" lang="en" dir="ltr">${this.#problem}</p>`;
    const { snapshot, turned, unit, curves, along, up, plane } = shown;
    const last = lastOf(turned);
    const now = pointNow(snapshot, turned, curves.curves);
    const read = this.#read === undefined ? undefined : Math.min(this.#read, last);
    const point = read === undefined ? now : pointAt(snapshot, turned, curves.curves, read);
    const { course } = snapshot;
    const names = curves.curves.map(({ name }) => inLetters(name, course));
    const letters = [...new Set(names.map((name) => name.replace(/_.*/, '')))];
    return html`<p part="up" aria-hidden="true">
        ${letters.map((letter, place) => html`${place ? ', ' : ''}<var>${letter}</var>`)} /
        ${up.prefix + unit}
      </p>
      <div
        part="plane"
        lang="en"
        role="slider"
        tabindex="0"
        aria-label=${this.#name(shown)}
        aria-valuemin=${Number(turned.range.min.value)}
        aria-valuemax=${Number(turned.range.max.value)}
        aria-valuenow=${point.at}
        aria-valuetext=${point.spoken}
        @keydown=${this.#step}
        @pointermove=${this.#point}
        @pointerdown=${this.#point}
        @pointerleave=${this.#leave}
        @focusin=${this.#shine}
        @focusout=${this.#shine}
        @mouseenter=${this.#shine}
        @mouseleave=${this.#shine}
      >
        ${picture({
          along,
          up,
          plane,
          curves,
          names,
          now: this.#mark(shown, snapshot.readings, now.at),
          held: this.#held(shown),
          read: read === undefined ? undefined : point.at,
        })}
      </div>
      <p part="along" lang="en" aria-hidden="true">
        ${calledIn(snapshot, turned.name)} / ${along.prefix + turned.now.unit}
      </p>
      <p part="caption" aria-hidden="true">${caption(point)}</p>
      <details part="values" lang="en" dir="ltr">
        <summary>${say({ code: 'graph values', data: {} })}</summary>
        ${sheetView(values, this.#name(shown))}
        <div class="buttons">${this.#out.buttons}</div>
      </details>
      ${this.#out.box}`;
  }

  #name({ snapshot, turned, curves }: Shown): string {
    const names = curves.curves.map(({ name }) => calledIn(snapshot, name));
    return this.label || say({ code: 'graph', data: { names, against: calledIn(snapshot, turned.name) } });
  }

  /** What is to be drawn, or why it cannot be. */
  #find(snapshot: Snapshot): Shown | Said {
    const { circuit, start, course, covered } = snapshot;
    if (covered) return { code: 'covered', data: {} };
    const turned = characteristicOf(snapshot, this.against) ?? turnedOf(circuit, start, this.against);
    if ('code' in turned) return turned;
    const names = namesIn(this.of, snapshot, turned);
    if ('code' in names) return names;
    const unit = unitOf(names[0]);
    const { curves, reach } = this.#curves(snapshot, turned, names);
    if (curves.curves.every(({ values }) => values.every((value) => value === undefined)))
      return snapshot.readings.reason(names[0]) ?? { code: 'circuit has a fault', data: {} };
    const { min, max } = turned.range;
    const ends: Reach = [Number(min.value), Number(max.value)];
    const own = turned.now.unit;
    const logarithmic = isLogarithmic(turned);
    const along = logarithmic ? decadesOver(ends, own) : axisOver(ends, 8, own, course);
    const up = axisOver(reach, 5, unit, course);
    return {
      snapshot,
      turned,
      unit,
      curves,
      along,
      up,
      plane: planeOf(along, up, logarithmic, this.#room.width),
    };
  }

  /** Curves are drawn anew where anything but what is turned has changed; the upright axis of one circuit only grows, so that they can be compared. */
  #curves(
    { circuit, start }: Snapshot,
    turned: Turned,
    names: readonly string[],
  ): { curves: Curves; reach: Reach } {
    const of = turned.alone ?? circuit;
    const asked = [turned.name, ...names].join();
    const key = JSON.stringify(circuitAt(of, turned, turned.range.min.value), exactly);
    const drawn = this.#drawn?.start === start && this.#drawn.asked === asked ? this.#drawn : undefined;
    if (drawn?.key === key) return drawn;
    const curves = curvesOf(of, turned, names);
    this.#drawn = { start, asked, key, curves, reach: both(drawn?.reach ?? curves.reach, curves.reach) };
    return this.#drawn;
  }

  #mark({ curves }: Shown, readings: Snapshot['readings'], at: number): Mark {
    const values = curves.curves.map(({ name, sign }) => {
      const value = readings.quantity(name);
      return value === undefined ? undefined : Number(value) * sign;
    });
    return { at, values };
  }

  #held(shown: Shown): Mark | undefined {
    const { held } = shown.snapshot;
    const at = held?.quantity(shown.turned.name);
    return held && at !== undefined ? this.#mark(shown, held, Number(at)) : undefined;
  }

  /** The values, which stay while the curves do. */
  #sheet(): Sheet | undefined {
    const shown = this.#shown;
    if (!shown) return undefined;
    const { snapshot, turned, curves, along, up, unit } = shown;
    const { course } = snapshot;
    if (this.#written?.curves !== curves || this.#written.course !== course)
      this.#written = { curves, course, values: sheetOf(snapshot, turned, curves.curves, along, up, unit) };
    return this.#written.values;
  }

  readonly #step = (event: KeyboardEvent): void => {
    const shown = this.#shown;
    if (!shown || event.ctrlKey || event.altKey || event.metaKey) return;
    const last = lastOf(shown.turned);
    const by = ways[event.key]?.(last);
    if (by === undefined && event.key !== 'Escape') return;
    event.preventDefault();
    const from = this.#read ?? settingNear(shown.turned, Number(shown.turned.now.value));
    this.#read = by === undefined ? undefined : Math.min(Math.max(from + by, 0), last);
    this.requestUpdate();
  };

  readonly #point = ({ offsetX }: PointerEvent): void => {
    const shown = this.#shown;
    if (!shown) return;
    this.#read = settingNear(shown.turned, shown.plane.valueAt(offsetX));
    this.requestUpdate();
  };

  readonly #leave = (): void => {
    this.#read = undefined;
    this.requestUpdate();
  };

  /** While it is pointed at or has the focus, what it shows stands out on the board. */
  readonly #shine = (): void => {
    const shown = this.#shown;
    const isMeant = shown && this.matches(':hover, :focus-within');
    const names = isMeant ? [shown.turned.name, ...shown.curves.curves.map(({ name }) => name)] : [];
    const ids = names.flatMap((name) => name.split('_').slice(1));
    this.#spotlight.shine(this.#link.board, [...new Set(ids)]);
  };
}

/** A point as textbooks write it: "R_R1 = 12 Ω, I_A1 = 1.50 A". */
function caption({ terms }: Point): TemplateResult {
  return html`${terms.map(({ name, text }, place) => [
    place ? ', ' : nothing,
    html`<span>${nameView(name)} = ${text}</span>`,
  ])}`;
}
