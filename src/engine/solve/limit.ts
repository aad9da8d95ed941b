import { writeReading, type Fraction, type ReadingUnit } from '../quantity/index.ts';
import { round } from './round.ts';

/** A reading as a number, 0 where there is none. */
export const number = (x: number | Fraction = 0): number =>
  typeof x === 'number' ? x : round(x.s * x.n, x.d);

/** Whether a reading is beyond a limit; what is just at it is not beyond it by a rounding. */
export const isBeyond = (reading: number, limit: number): boolean => reading > limit * (1 + 1e-9);

/** A reading and the rating that it is beyond, in words, unless that is kept from the pupil. */
export const written = (reading: number | Fraction, unit: ReadingUnit, hidden?: boolean): string =>
  hidden ? '?' : writeReading(reading, unit).text;
