const bits = (x: bigint): number => 4 * x.toString(16).length;

/** The number nearest to a fraction of whole numbers, however large these are. */
export function round(numerator: bigint, denominator: bigint): number {
  const [n, d] = [Number(numerator), Number(denominator)];
  if (Number.isSafeInteger(n) && Number.isSafeInteger(d)) return n / d;
  // A quotient of 64 bits or more is off by less than the rounding that follows.
  const shift = Math.max(0, 68 + bits(denominator) - bits(numerator));
  const drop = Math.max(0, bits(numerator) - bits(denominator) - 68);
  const quotient = (numerator << BigInt(shift)) / (denominator << BigInt(drop));
  return Number(quotient) * 2 ** (drop - shift);
}
