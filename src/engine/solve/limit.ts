import {
  writeQuantity,
  writeReading,
  type Fraction,
  type Quantity,
  type ReadingUnit,
} from '../quantity/index.ts';
import { round } from './round.ts';

/** A reading as a number, 0 where there is none. */
export const number = (x: number | Fraction = 0): number =>
  typeof x === 'number' ? x : round(x.s * x.n, x.d);

/** Whether a reading is beyond a limit; what is just at it is not beyond it by a rounding. */
export const isBeyond = (reading: number, limit: number): boolean => reading > limit * (1 + 1e-9);

/** A reading, or what follows from ratings, in words, unless that is kept from the pupil. */
export const written = (reading: number | Fraction, unit: ReadingUnit, hidden?: boolean): string =>
  hidden ? '?' : writeReading(reading, unit).text;

/** A rating as it is marked, unless that is kept from the pupil. */
export const marked = (rating: Quantity, hidden?: boolean): string =>
  hidden ? '?' : writeQuantity(rating).text;
