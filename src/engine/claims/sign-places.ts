import type { Fraction } from '../quantity/index.ts';
import { derivative, valueAt, type Polynomial } from './ratio.ts';

/**
 * Places 0 … last on a slider, in order, such that between two of them that are not neighbours the polynomial is not zero at any value:
 * its sign at every setting follows from these. Exact: between the places of its derivative the polynomial only rises or only falls,
 * so that halving finds the one root there may be.
 */
export function signPlaces(
  terms: Polynomial,
  settingAt: (place: number) => Fraction,
  last: number,
): readonly number[] {
  if (terms.length <= 1) return [0, last];
  const signAt = (place: number): number => valueAt(terms, settingAt(place)).compare(0);
  const turns = signPlaces(derivative(terms), settingAt, last);
  const found = new Set(turns);
  for (const [k, start] of turns.entries()) {
    let [low, high] = [start, turns[k + 1] ?? start];
    const sign = signAt(low);
    if (sign * signAt(high) >= 0) continue;
    while (high - low > 1) {
      const middle = (low + high) >> 1;
      if (signAt(middle) * sign > 0) low = middle;
      else high = middle;
    }
    found.add(low).add(high);
  }
  return [...found].sort((a, b) => a - b);
}
