import {
  say,
  thinSpace,
  writeQuantity,
  type Component,
  type Meter,
  type Said,
  type ReadingUnit,
} from '../../engine/core.ts';
import { figuresOf, prefixIn, readingOf, unitOf, type ChangeText, type Snapshot } from '../link/index.ts';
import { dialOf, type Dial } from './dial.ts';
import { instrumentOf, type Build } from './instrument.ts';
import { changeOn } from './held.ts';
import { measure } from './measure.ts';
import { targetOf, type Target } from './target.ts';

/** What a page asks of a meter. */
export interface Wish extends Build {
  /** Significant figures; as the course says where absent. */
  readonly figures: number | undefined;
  /** The page's own caption; '' for the usual one. */
  readonly label: string;
}

/** All that a meter shows. */
export interface Face {
  /** The letter in the circle. */
  readonly unit: ReadingUnit;
  /** "0.450 A", "no current", "—", "?", "overload". */
  readonly text: string;
  /** As wide as any reading that is to be expected. */
  readonly room: string;
  /** In place of digits. */
  readonly dial: Dial | undefined;
  /** What the reading has done since it was held. */
  readonly change: ChangeText | undefined;
  /** What it measures, in words; the reason where it cannot. */
  readonly caption: string;
  /** What is heard: "Ammeter A2, 0.450 amperes". */
  readonly name: string;
  /** The components to be lit up. */
  readonly about: readonly string[];
  /** What of the page's wishes cannot be had. */
  readonly mistake: Said | undefined;
}

/** What a voltmeter is across: the components whose two ends it joins, else its ends if these have names. */
function across({ circuit, readings }: Snapshot, { id, from, to }: Meter): string {
  const joined = ({ from: a, to: b }: Component): boolean =>
    (a === from && b === to) || (a === to && b === from);
  const parts = circuit.components.filter((part) => part.id !== id && joined(part));
  if (parts.length > 0) return parts.map((part) => part.id).join(`${thinSpace}∥${thinSpace}`);
  const ends = `${from}_${to}`;
  return readings.reason(`V_${ends}`)?.code === 'no such quantity' ? '' : ends;
}

/** What a target is called: "current through A2", "p.d. across R1; its own resistance is 10 kΩ". */
function measured(snapshot: Snapshot, { quantity, meter }: Target): string {
  const { course } = snapshot;
  const [letter = '', ...rest] = quantity.split('_');
  const of = meter?.kind === 'voltmeter' ? across(snapshot, meter) : rest.join('_');
  const ohms =
    meter?.resistance && !meter.hidden ? writeQuantity(meter.resistance, course.decimalSign).text : '';
  return say({ code: 'measures', data: { letter, of, wording: course.wording, ohms } });
}

/** What a meter shows of a board, or why it cannot; `of` is a meter's id, a quantity's name, or '' for the only meter. */
export function faceOf(snapshot: Snapshot, wish: Wish, of: string): Face | Said {
  const { unit: wanted, label } = wish;
  const figures = figuresOf(snapshot, wish.figures);
  const { readings, held, course } = snapshot;
  const target = targetOf(snapshot.circuit, of);
  if ('code' in target) return target;
  const { quantity, about, meter } = target;
  const unit = unitOf(quantity);
  if (wanted && prefixIn(wanted, unit) === undefined)
    return { code: 'not its unit', data: { found: wanted, unit } };
  const reason = readings.reason(quantity);
  if (reason?.code === 'no such quantity') return reason;
  const instrument = instrumentOf(snapshot.start, wish, quantity);
  const { prefix, resolution, mistake } = instrument;
  const style = { figures, as: 'signed', ...(prefix !== undefined && { prefix }) } as const;
  const usual = readingOf(snapshot, quantity, style);
  const value = readings.quantity(quantity);
  const measurable = resolution && value !== undefined && usual.value !== undefined && !reason;
  const { text, spoken } = measurable ? measure(value, resolution, instrument, unit, course) : usual;
  const change = changeOn(snapshot, quantity, style, instrument, unit);
  const caption = label || measured(snapshot, target);
  const id = meter?.id ?? '';
  const reading = change ? `${spoken}, ${change.spoken}` : spoken;
  return {
    unit,
    text,
    room: `−0.0${'0'.repeat(figures)}${thinSpace}mW`,
    dial:
      instrument.scale &&
      dialOf(instrument.scale, unit, usual, instrument, course, change && held?.quantity(quantity)),
    change,
    caption: text === '—' ? spoken : caption,
    name: say({ code: 'meter', data: { unit, id, caption: label || (id ? '' : caption), reading } }),
    about,
    mistake,
  };
}
