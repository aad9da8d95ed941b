import {
  nearest,
  powerOfTen,
  roundUp,
  suitablePrefix,
  type Circuit,
  type Fraction,
  type Prefix,
  type Said,
} from '../../../engine/core.ts';
import { extremesOf } from '../../extremes/index.ts';
import { prefixIn, unitOf } from '../../link/index.ts';
import { readLimits, readResolution, type Limits } from './limits.ts';
import { scaleOf, type Scale } from './scale.ts';

/** What a page asks of a meter as an instrument; '' asks for the usual. */
export interface Build {
  readonly range: string;
  readonly resolution: string;
  readonly face: string;
  /** A unit with its prefix, such as `mA`. */
  readonly unit: string;
}

/** What an instrument can show, and how finely. */
export interface Instrument {
  /** Undefined: the one that suits the reading. */
  readonly prefix: Prefix | undefined;
  /** Undefined: it shows any value. */
  readonly limits: Limits | undefined;
  /** The smallest step that it tells apart; undefined: significant figures. */
  readonly resolution: Fraction | undefined;
  /** Of a needle; undefined: digits. */
  readonly scale: Scale | undefined;
  /** Whether the limits follow from the readings, not from the page. */
  readonly chosen: boolean;
  /** What of the page's wishes cannot be had; the rest is as usual. */
  readonly mistake: Said | undefined;
}

const faces = ['digits', 'needle'];

/** From 0 to the smallest of 1, 2 and 5 × 10ⁿ that holds the reading wherever a slider is turned or a switch closed. */
function usualLimits(start: Circuit, quantity: string): Limits {
  const read = extremesOf(start).map(({ readings }) => Math.abs(readings.quantity(quantity) ?? 0));
  const max = roundUp(Math.max(...read) || 1);
  return { min: max.mul(0), max, prefix: suitablePrefix(max, unitOf(quantity)) };
}

/** A digital meter of 3½ digits tells 2000 steps apart (common practice); a needle is read to half a division. */
function usualResolution({ max }: Limits, scale: Scale | undefined): Fraction {
  if (scale) return scale.minor.div(2);
  return powerOfTen(Math.ceil(Math.log10(Number(max) / 2000) - 1e-9));
}

/**
 * The instrument that a page asks for, to read a quantity of a circuit. A range that the page does not say follows from the
 * circuit's start, so that a scale never changes while something is turned.
 */
export function instrumentOf(start: Circuit, wish: Build, quantity: string): Instrument {
  const { range, resolution, face, unit: wanted } = wish;
  const unit = unitOf(quantity);
  const needle = face === 'needle';
  const given = range ? readLimits(range, unit) : undefined;
  const limits = given ?? (needle ? usualLimits(start, quantity) : undefined);
  const scale = needle && limits ? scaleOf(limits) : undefined;
  const step = resolution ? readResolution(resolution, unit, limits) : undefined;
  const wrong: readonly (Said | false)[] = [
    Boolean(face) &&
      !faces.includes(face) && {
        code: 'not a choice',
        data: { found: face, of: 'face', suggestion: nearest(face, faces), choices: faces },
      },
    Boolean(range) && !given && { code: 'not a range', data: { found: range, unit } },
    Boolean(resolution) && !step && { code: 'not a resolution', data: { found: resolution, unit } },
  ];
  return {
    prefix: wanted ? prefixIn(wanted, unit) : (limits ?? step)?.prefix,
    limits,
    resolution: step?.value ?? (limits && usualResolution(limits, scale)),
    scale,
    chosen: !given,
    mistake: wrong.find((each) => each !== false),
  };
}
