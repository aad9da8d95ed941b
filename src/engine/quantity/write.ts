import { fixed, leadingPower, significant } from './figures.ts';
import type { Fraction } from './fraction.ts';
import { exponentOf, prefixFor, type Prefix } from './prefix.ts';
import type { Quantity, Unit } from './quantity.ts';

/** Between a number and its unit: thin, and not broken at the end of a line. */
export const thinSpace = '\u202f';

/** How a reading is written. */
export interface Writing {
  /** Significant figures; three unless said. */
  readonly figures?: number;
  /** A prefix for all readings of one quantity; else the one that suits the value. */
  readonly prefix?: Prefix;
  /** '.' unless said. */
  readonly decimalSign?: '.' | ',';
}

/** A reading in parts: the number, the unit with its prefix, and both with a thin space between. */
export interface Written {
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

/**
 * The prefix that suits a value once rounded: none from 0.01 (Ω: 0.1) up to 1000, else the one that leaves 1 to 1000; farads
 * always take one. None for 0.
 */
export function suitablePrefix(value: Fraction | number, unit: Unit, figures = 3): Prefix {
  const power = leadingPower(value, figures);
  const least = unit === 'F' ? 0 : unit === 'Ω' ? -1 : -2;
  return power >= least && power < 3 ? '' : prefixFor(power);
}

/** One prefix for many readings of one unit: the one that suits the largest. */
export function sharedPrefix(values: readonly (Fraction | number)[], unit: Unit, figures = 3): Prefix {
  const largest = Math.max(0, ...values.map((value) => Math.abs(Number(value))));
  return suitablePrefix(largest, unit, figures);
}

function written(number: string, unit: string, decimalSign: '.' | ','): Written {
  const local = number.replace('.', decimalSign);
  return { number: local, unit, text: local + thinSpace + unit };
}

/** A reading rounded to significant figures: (0.45, 'A') is "0.450 A". */
export function writeReading(value: Fraction | number, unit: Unit, writing: Writing = {}): Written {
  const { figures = 3, prefix = suitablePrefix(value, unit, figures), decimalSign = '.' } = writing;
  return written(significant(value, figures, -exponentOf(prefix)), prefix + unit, decimalSign);
}

/** A value as it was written, exactly: prefix, decimals and all; "1/3 Ω" where there is no finite decimal. */
export function writeQuantity(
  { value, unit, prefix, decimals }: Quantity,
  decimalSign: '.' | ',' = '.',
): Written {
  const shift = -exponentOf(prefix);
  if (decimals !== undefined) return written(fixed(value, decimals, shift), prefix + unit, decimalSign);
  return written(value.toFraction(), unit, decimalSign);
}

/** The significant figures a value was written with (12.0 has three, 0.05 one, 1/3 three). */
export function figuresWritten({ value, prefix, decimals }: Quantity): number {
  if (decimals === undefined) return 3;
  return Math.max(1, leadingPower(value, 15) - exponentOf(prefix) + decimals + 1);
}
