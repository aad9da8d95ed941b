import {
  say,
  thinSpace,
  writeQuantity,
  type Component,
  type Meter,
  type Said,
  type ReadingUnit,
} from '../../engine/core.ts';
import { figuresOf, prefixIn, unitOf, type Snapshot } from '../link/index.ts';
import { digitsOf, type Indication } from './indication.ts';
import { asksForInstrument, instruments } from './instruments.ts';
import type { Build } from './instrument/instrument.ts';
import { targetOf, type Target } from './target.ts';

/** What a page asks of a meter. */
export interface Wish extends Build {
  /** Significant figures; as the course says where absent. */
  readonly figures: number | undefined;
  /** The page's own caption; '' for the usual one. */
  readonly label: string;
}

/** All that a meter shows. */
export interface Face extends Omit<Indication, 'spoken'> {
  /** The letter in the circle. */
  readonly unit: ReadingUnit;
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

/** What a meter shows of a board, or why it cannot; `of` is a meter's id, a quantity's name, or '' for the only meter. */
export function faceOf(snapshot: Snapshot, wish: Wish, of: string): Face | Said {
  const { unit: wanted, label } = wish;
  const target = targetOf(snapshot.circuit, of);
  if ('code' in target) return target;
  const { quantity, about, meter } = target;
  const unit = unitOf(quantity);
  const prefix = wanted ? prefixIn(wanted, unit) : undefined;
  if (wanted && prefix === undefined) return { code: 'not its unit', data: { found: wanted, unit } };
  const reason = snapshot.readings.reason(quantity);
  if (reason?.code === 'no such quantity') return reason;
  const figures = figuresOf(snapshot, wish.figures);
  const real = asksForInstrument(wish) ? instruments() : undefined;
  const { text, spoken, dial, change, mistake } =
    real?.indicationOn(snapshot, wish, quantity, figures) ??
    digitsOf(snapshot, quantity, { figures, as: 'signed', ...(prefix !== undefined && { prefix }) });
  const caption = label || measured(snapshot, target);
  const id = meter?.id ?? '';
  const reading = change ? `${spoken}, ${change.spoken}` : spoken;
  return {
    unit,
    text,
    room: `−0.0${'0'.repeat(figures)}${thinSpace}mW`,
    dial,
    change,
    caption: text === '—' ? spoken : caption,
    name: say({ code: 'meter', data: { unit, id, caption: label || (id ? '' : caption), reading } }),
    about,
    mistake,
  };
}
