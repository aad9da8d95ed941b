import { Fraction, leadingPower, powerOfTen } from '../quantity/index.ts';

/** Used where the resistances have no easy multiple. */
const usual = new Fraction(12);

/**
 * A p.d. to think of across resistances side by side, so that their currents are easy: their least common multiple in digits, between
 * 1 V and 100 V (6 Ω and 3 Ω: 6 V; 1.5 kΩ and 1 kΩ: 3 V).
 */
export function trialOf(resistances: readonly (Fraction | undefined)[]): Fraction {
  const known = resistances.filter((one) => one !== undefined);
  const common = known.reduce((multiple, one) => multiple.lcm(one), known[0] ?? usual);
  const power = leadingPower(common, 15);
  const near = common.div(powerOfTen(power));
  return [near, near.mul(10)].find((one) => one.d === 1n) ?? usual;
}
