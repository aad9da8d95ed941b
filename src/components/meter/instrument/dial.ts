import type { Course, Fraction, Unit } from '../../../engine/core.ts';
import { written } from '../../axis/index.ts';
import type { ReadingText } from '../../link/index.ts';
import type { Instrument } from './instrument.ts';
import { angleOf, multiples, type Scale } from './scale.ts';

/** A numeral and where it stands, in degrees from the upright. */
export interface Numeral {
  readonly angle: number;
  readonly text: string;
}

/** What is drawn of a needle's face. */
export interface Dial {
  /** The angles of all marks. */
  readonly marks: readonly number[];
  readonly numerals: readonly Numeral[];
  /** `mA` */
  readonly unit: string;
  /** Where the needle stands; undefined without a reading. */
  readonly needle: number | undefined;
  /** Where it stood when the readings were held; undefined while nothing is held. */
  readonly held: number | undefined;
  /** What stands on the face where there is no number to be read: "no current", "?". */
  readonly words: string;
}

/**
 * A scale with its needle. Without numerals where the reading is kept from the pupil and the range was chosen by it, so that the
 * scale does not give it away.
 */
export function dialOf(
  scale: Scale,
  unit: Unit,
  { text, value }: ReadingText,
  { prefix = '', chosen }: Pick<Instrument, 'prefix' | 'chosen'>,
  course: Course,
  held?: Fraction | number,
): Dial {
  const { major, minor } = scale;
  const blank = chosen && text === '?';
  const at = (step: Scale['major'], times: bigint): number => angleOf(Number(step.mul(times)), scale);
  return {
    marks: multiples(minor, scale).map((times) => at(minor, times)),
    numerals: multiples(major, scale).map((times) => ({
      angle: at(major, times),
      text: blank ? '' : times === 0n ? '0' : written(major.mul(times), major, prefix, course),
    })),
    unit: blank ? unit : prefix + unit,
    needle: value === undefined ? undefined : angleOf(value, scale),
    held: held === undefined ? undefined : angleOf(Number(held), scale),
    words: /^[−\d]*\d/.test(text) ? '' : text,
  };
}
