import {
  Fraction,
  exponentOf,
  figuresWritten,
  isOwn,
  say,
  sharedPrefix,
  suitablePrefix,
  thinSpace,
  writeReading,
  type Prefix,
  type Quantity,
  type ReadingUnit,
  type Unit,
} from '../../engine/core.ts';
import type { Snapshot } from './snapshot.ts';

/** How a reading is written. */
export interface ReadingStyle {
  /** Significant figures, 1 to 15; else as the course says. */
  readonly figures?: number;
  /** Fixes the prefix; else one suits all readings of the quantity on the board. */
  readonly prefix?: Prefix;
  /** `magnitude` unless said: only meters show signs. `fraction` is exact. */
  readonly as?: 'magnitude' | 'signed' | 'fraction';
}

/** A quantity of a board as it is shown and as it is heard. */
export interface ReadingText {
  /** "0.450 A", "no current", "—". */
  readonly text: string;
  /** "0.450 amperes", or the sentence why there is no reading. */
  readonly spoken: string;
  /** In SI units, with its sign; absent where there is no reading. */
  readonly value?: number;
}

const units: Readonly<Record<string, ReadingUnit>> = { I: 'A', V: 'V', E: 'V', R: 'Ω', r: 'Ω', P: 'W' };
/** Reasons that are a reading in themselves. */
const phrases: readonly string[] = ['no path', 'no current', 'no steady reading'];

/** Whether a field of a component is a value with a unit. */
export function isQuantity(value: unknown): value is Quantity {
  return typeof value === 'object' && value !== null && 'unit' in value;
}

/**
 * How many figures a board's readings have: as asked for, a whole number from 1 to 15; else as its course says, or as the
 * values of its circuit were given, at least two.
 */
export function figuresOf({ course, circuit }: Snapshot, asked = 0): number {
  if (Number.isInteger(asked) && asked > 0 && asked <= 15) return asked;
  if (course.figures !== 'as given') return course.figures;
  const given = circuit.components.flatMap((component) => Object.values(component).filter(isQuantity));
  return given.length > 0 ? Math.max(2, Math.min(...given.map(figuresWritten))) : 3;
}

/** The unit of a quantity, by its name: `I_R1` is in amperes. */
export function unitOf(name: string): ReadingUnit {
  return units[name.charAt(0)] ?? 'V';
}

/** The prefix in a unit such as `mA`; undefined where it is not a form of the base unit. */
export function prefixIn(unit: string, base: Unit): Prefix | undefined {
  const prefixes: readonly Prefix[] = ['p', 'n', 'µ', 'm', '', 'k', 'M', 'G'];
  return prefixes.find((prefix) => prefix + base === unit);
}

/** One prefix for all readings of a quantity; a reading a thousand times smaller than it suits has its own. */
export function prefixFor(snapshot: Snapshot, unit: Unit, value: Fraction | number, figures: number): Prefix {
  const own = suitablePrefix(value, unit, figures);
  if (unit === 'Ω') return own;
  const { readings, circuit } = snapshot;
  const read = (id: string): Fraction | number | undefined =>
    unit === 'A' ? readings.current(id) : unit === 'V' ? readings.voltage(id) : readings.power(id);
  const all = circuit.components.map(({ id }) => read(id)).filter((each) => each !== undefined);
  const shared = sharedPrefix(all, unit, figures);
  return Math.abs(Number(value)) < 10 ** (exponentOf(shared) - 3) ? own : shared;
}

const magnitude = (value: Fraction | number): Fraction | number =>
  typeof value === 'number' ? Math.abs(value) : value.abs();

function ratio(value: Fraction | number, unit: Unit): { readonly number: string; readonly text: string } {
  const number = new Fraction(value).toFraction();
  return { number, text: number + thinSpace + unit };
}

/** Whether a quantity is a component's own value that is kept from the pupil. */
export function isHidden({ circuit }: Pick<Snapshot, 'circuit'>, name: string): boolean {
  return circuit.components.some((each) => each.hidden && isOwn(each, name));
}

/** A quantity of a board, by its name, as it is shown and heard. */
export function readingOf(snapshot: Snapshot, name: string, style: ReadingStyle = {}): ReadingText {
  if (snapshot.covered) return { text: '?', spoken: say({ code: 'covered', data: {} }) };
  if (isHidden(snapshot, name)) return { text: '?', spoken: say({ code: 'unknown', data: {} }) };
  const { as = 'magnitude' } = style;
  const figures = figuresOf(snapshot, style.figures);
  const source = as === 'fraction' ? snapshot.solution : snapshot.readings;
  const reason = source.reason(name);
  const value = source.quantity(name);
  if (reason ?? value === undefined) {
    const spoken = reason ? say(reason) : '';
    const text = reason && phrases.includes(reason.code) ? spoken : '—';
    return value === undefined ? { text, spoken } : { text, spoken, value: Number(value) };
  }
  const unit = unitOf(name);
  const shown = as === 'signed' ? value : magnitude(value);
  const prefix = as === 'fraction' ? '' : (style.prefix ?? prefixFor(snapshot, unit, shown, figures));
  const { number, text } =
    as === 'fraction'
      ? ratio(shown, unit)
      : writeReading(shown, unit, { figures, prefix, decimalSign: snapshot.course.decimalSign });
  const spoken = say({ code: 'spoken', data: { number, prefix, unit } });
  return { text, spoken, value: Number(value) };
}
