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
  const below: number[] = [];
  for (const value of values) {
    const d = value ? Number(value.d) : 1;
    below.push(d);
    if (d === 1 || unit % d === 0) continue;
    let [x, y] = [unit, d];
    while (y) [x, y] = [y, x % y];
    unit = (unit / x) * d;
    if (!(unit < most)) unit = NaN;
  }
  const counts: number[] = [];
  for (let at = 0; at < values.length; at++) {
    const value = values[at];
    const count = value ? Number(value.n) * ((unit || 1) / (below[at] ?? 1)) : none;
    counts.push(value && value.s < 0n ? -count : count);
  }
  return [unit, counts];
}
