import { Fraction, powerOfTen } from './fraction.ts';

/** The smallest of 1, 2 and 5 × 10ⁿ that is not less than a value above 0 (but for the rounding of a float). */
export function roundUp(value: number): Fraction {
  const power = Math.floor(Math.log10(value));
  const round = [1, 2, 5].find((digit) => digit * 10 ** power >= value * (1 - 1e-9));
  return powerOfTen(power).mul(round ?? 10);
}
