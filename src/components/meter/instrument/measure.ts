import { say, thinSpace, type Course, type Fraction, type Unit } from '../../../engine/core.ts';
import { written } from '../../axis/index.ts';
import type { ReadingText } from '../../link/index.ts';
import type { Instrument } from './instrument.ts';

/** The nearest whole number of steps, halves away from 0: exact for fractions. */
export function stepsOf(value: Fraction | number, step: Fraction): bigint {
  if (typeof value === 'number') {
    const steps = BigInt(Math.round(Math.abs(value) / Number(step)));
    return value < 0 ? -steps : steps;
  }
  const { s, n, d } = value.div(step);
  return s * ((2n * n + d) / (2n * d));
}

/** The end that a value lies beyond; a float may be wrong in its last places. */
export function passed(value: Fraction | number, { limits, scale }: Instrument): Fraction | undefined {
  if (!limits) return undefined;
  const { min, max } = limits;
  const low = scale || min.n > 0n ? min : max.neg(); // digits show a minus
  const of = typeof value === 'number' ? Number(value.toPrecision(12)) : value;
  const against = (end: Fraction): number => (typeof of === 'number' ? of - Number(end) : of.compare(end));
  return against(max) > 0 ? max : against(low) < 0 ? low : undefined;
}

/** What an instrument of this resolution shows for a value; "overload" beyond its range. */
export function measure(
  value: Fraction | number,
  resolution: Fraction,
  instrument: Instrument,
  unit: Unit,
  course: Course,
): Pick<ReadingText, 'text' | 'spoken'> {
  const { prefix = '' } = instrument;
  const spoken = (number: string): string => say({ code: 'spoken', data: { number, prefix, unit } });
  const end = passed(value, instrument);
  if (end) {
    const limit = spoken(written(end, end, prefix, course));
    const below = Number(value) < Number(end);
    return {
      text: say({ code: 'overload', data: {} }),
      spoken: say({ code: 'beyond', data: { below, limit } }),
    };
  }
  const number = written(resolution.mul(stepsOf(value, resolution)), resolution, prefix, course);
  return { text: `${number}${thinSpace}${prefix}${unit}`, spoken: spoken(number) };
}
