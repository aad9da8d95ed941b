import { roundUp, type Fraction } from '../../../engine/core.ts';
import type { Limits } from './limits.ts';

/** How a scale is divided: a numeral at every multiple of `major`, a mark at every multiple of `minor`. */
export interface Scale extends Limits {
  readonly major: Fraction;
  readonly minor: Fraction;
}

/** Numerals and divisions that a scale has room for. */
const most = { numerals: 6, divisions: 50 };

/** The divisions of a scale, round numbers as on a real one: 0.6 A has numerals every 0.1 A and 30 divisions of 0.02 A. */
export function scaleOf(limits: Limits): Scale {
  const span = Number(limits.max.sub(limits.min));
  const major = roundUp(span / most.numerals);
  const minor = roundUp(Math.max(span / most.divisions, Number(major) / 10));
  return { ...limits, major, minor };
}

/** The multiples of a step that lie on a scale, as whole numbers, first to last. */
export function multiples(step: Fraction, { min, max }: Limits): readonly bigint[] {
  const first = min.div(step).ceil();
  const count = max.div(step).floor().sub(first);
  return Array.from({ length: Number(count) + 1 }, (_, place) => BigInt(Number(first) + place));
}

/** Half the angle that a scale takes up, and how far its needle goes before it meets a stop, in degrees. */
export const sweep = { scale: 50, stop: 54 };

/** The angle at which a needle stands for a value, in degrees from the upright; it goes no further than its stops. */
export function angleOf(value: number, { min, max }: Limits): number {
  const [low, high] = [Number(min), Number(max)];
  const angle = ((2 * (value - low)) / (high - low) - 1) * sweep.scale;
  return Math.min(Math.max(angle, -sweep.stop), sweep.stop);
}
