import {
  isMeter,
  suitablePrefix,
  writeReading,
  type Course,
  type Fraction,
  type Prefix,
  type Unit,
} from '../../engine/core.ts';
import { figuresOf, readingOf, type Snapshot } from '../link/index.ts';

/** What is read of a quantity: a value, words in its place, or both ("no current" is 0). */
export interface Entry {
  readonly value: Fraction | number | undefined;
  readonly words: string;
}

/** How the numbers of a column are written. */
export interface Column {
  readonly unit: Unit;
  readonly prefix: Prefix;
  readonly figures: number;
  readonly decimalSign: Course['decimalSign'];
}

/** Meters and powers show their sign: a supply that is being charged delivers less than nothing. */
export function isSigned({ circuit }: Snapshot, name: string): boolean {
  const component = circuit.components.find(({ id }) => id === name.slice(2));
  return name.startsWith('P') || (component !== undefined && isMeter(component));
}

/** What a board reads of a quantity. */
export function entryOf(snapshot: Snapshot, name: string): Entry {
  const { text, value } = readingOf(snapshot, name, { prefix: '' });
  if (value === undefined) return { value, words: text };
  const read = snapshot.readings.quantity(name) ?? value;
  const size = typeof read === 'number' ? Math.abs(read) : read.abs();
  return { value: isSigned(snapshot, name) ? read : size, words: /\d/.test(text) ? '' : text };
}

/** How a column of these entries is written: with the prefix that is asked for, else one that suits them all. */
export function columnOf(snapshot: Snapshot, entries: readonly Entry[], unit: Unit, prefix?: Prefix): Column {
  const figures = figuresOf(snapshot);
  const sizes = entries.map(({ value }) => Math.abs(Number(value ?? 0))).filter(Boolean);
  // A kilohm column would write a lamp's ohms with zeros in front, so resistances go by the smallest.
  const typical = sizes.length > 0 ? (unit === 'Ω' ? Math.min(...sizes) : Math.max(...sizes)) : 0;
  const { decimalSign } = snapshot.course;
  return { unit, prefix: prefix ?? suitablePrefix(typical, unit, figures), figures, decimalSign };
}

/** An entry's number in its column, without the unit. */
export function numberIn({ unit, ...writing }: Column, value: Fraction | number): string {
  return writeReading(value, unit, writing).number;
}
