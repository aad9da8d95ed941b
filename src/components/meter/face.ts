import {
  say,
  thinSpace,
  writeQuantity,
  type Component,
  type Meter,
  type Said,
  type Unit,
} from '../../engine/index.ts';
import { figuresOf, prefixIn, readingOf, unitOf, type Snapshot } from '../link/index.ts';
import { targetOf, type Target } from './target.ts';

/** What a page asks of a meter. */
export interface Wish {
  /** A meter's id, a quantity's name, or '' for the only meter. */
  readonly of: string;
  /** Significant figures; as the course says where absent. */
  readonly figures: number | undefined;
  /** A unit with its prefix, such as `mA`; '' for the one that suits. */
  readonly unit: string;
  /** The page's own caption; '' for the usual one. */
  readonly label: string;
}

/** All that a meter shows. */
export interface Face {
  /** The letter in the circle. */
  readonly unit: Unit;
  /** "0.450 A", "no current", "—", "?". */
  readonly text: string;
  /** As wide as any reading that is to be expected. */
  readonly room: string;
  /** What it measures, in words; the reason where it cannot. */
  readonly caption: string;
  /** What is heard: "Ammeter A2, 0.450 amperes". */
  readonly name: string;
  /** The components to be lit up. */
  readonly about: readonly string[];
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

/** What a meter shows of a board, or why it cannot. */
export function faceOf(snapshot: Snapshot, wish: Wish): Face | Said {
  const { of, figures = figuresOf(snapshot), unit: wanted, label } = wish;
  const target = targetOf(snapshot.circuit, of);
  if ('code' in target) return target;
  const { quantity, about, meter } = target;
  const unit = unitOf(quantity);
  const prefix = prefixIn(wanted, unit);
  if (wanted && prefix === undefined) return { code: 'not its unit', data: { found: wanted, unit } };
  const reason = snapshot.readings.reason(quantity);
  if (reason?.code === 'no such quantity') return reason;
  const style = { figures, as: 'signed', ...(wanted && prefix !== undefined && { prefix }) } as const;
  const { text, spoken } = readingOf(snapshot, quantity, style);
  const caption = label || measured(snapshot, target);
  const id = meter?.id ?? '';
  return {
    unit,
    text,
    room: `−0.0${'0'.repeat(figures)}${thinSpace}mW`,
    caption: text === '—' ? spoken : caption,
    name: say({ code: 'meter', data: { unit, id, caption: label || (id ? '' : caption), reading: spoken } }),
    about,
  };
}
