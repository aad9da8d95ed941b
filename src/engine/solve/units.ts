import type { Fraction } from '../quantity/index.ts';

/** Below this, a whole number and the next are both numbers. */
const most = 2 ** 53;

/**
 * How many units are in one, so that all values are whole numbers of them, and the values in that unit, with `none` for those that are
 * undefined. NaN, and the values as they are, where the unit would be too small a part of one.
 */
export function inUnits(
  values: readonly (Fraction | undefined)[],
  none: number,
): readonly [unit: number, counts: number[]] {
  let unit = 1;
  for (const value of values) {
    if (!value || value.d === 1n) continue;
    const d = Number(value.d);
    if (unit % d === 0) continue;
    let [x, y] = [unit, d];
    while (y) [x, y] = [y, x % y];
    unit = (unit / x) * d;
    if (!(unit < most)) unit = NaN;
  }
  const counts = new Array<number>(values.length);
  for (let at = 0; at < values.length; at++) {
    const value = values[at];
    let count = none;
    if (value) {
      count = Number(value.n);
      if (unit !== 1) count *= (unit || 1) / Number(value.d);
      if (value.s < 0n) count = -count;
    }
    counts[at] = count;
  }
  return [unit, counts];
}
