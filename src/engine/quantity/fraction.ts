import Fraction from 'fraction.js';

export { Fraction };

/** Ten to a whole power, exactly. */
export function powerOfTen(exponent: number): Fraction {
  const ten = 10n ** BigInt(Math.abs(exponent));
  return exponent < 0 ? new Fraction(1n, ten) : new Fraction(ten);
}
