import { Fraction, significant } from '../quantity/index.ts';
import type { Measured } from './change.ts';

/** As many figures as a ratio is ever written with. */
const most = 15;
/** Beyond these ratios a number says no more than "much". */
const [least, greatest] = [1e-6, 1e6];

/**
 * A ratio to some significant figures, or to as many more as it takes to tell it from 1: "1.50", "1.0004". '' where it is not to be
 * written: very large, or very small but not 0.
 */
export function writeRatio(ratio: Measured, figures: number): string {
  const size = Math.abs(Number(ratio));
  if (size > greatest || (size < least && size > 0)) return '';
  const isOne = new Fraction(ratio).equals(1);
  for (let more = figures; more < most; more += 1) {
    const text = significant(ratio, more);
    if (isOne || Number(text) !== 1) return text;
  }
  return significant(ratio, most);
}
