import type { Fraction } from '../../engine/core.ts';
import type { ReadingStyle, ReadingText } from './reading.ts';
import type { Snapshot } from './snapshot.ts';

/** An instrument that reads in steps. */
export interface StepReader {
  readonly step: Fraction;
  /** What it reads of a value, in SI units. */
  readonly read: (value: Fraction | number) => Fraction;
  /** As it writes that. */
  readonly write: (value: Fraction) => Pick<ReadingText, 'text' | 'spoken'>;
}

/** How a change is written: as its reading is. */
export interface ChangeStyle extends ReadingStyle {
  readonly instrument?: StepReader | undefined;
}

/** What a reading has done since it was held. */
export interface ChangeText {
  /** "rose by 0.250 A, × 1.50", "the same", "was no path". */
  readonly text: string;
  /** The same to be heard: "rose by 0.250 amperes, × 1.50". */
  readonly spoken: string;
  /** ▲, ▼ or =, where there is room for no more; '' where there is no number to compare. */
  readonly mark: string;
}

/** Compares the readings of a board with those it holds. */
export interface Comparison {
  /** What a quantity has done; undefined where there is nothing to compare: covered, kept from the pupil, or read neither then nor now. */
  changeOf(snapshot: Snapshot, name: string, style?: ChangeStyle): ChangeText | undefined;
}
