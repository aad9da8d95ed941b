const bits = (x: bigint): number => 4 * x.toString(16).replace('-', '').length;

/** The number nearest to a fraction of whole numbers, however large these are. */
export function round(top: bigint | number, bottom: bigint | number): number {
  const [n, d] = [Number(top), Number(bottom)];
  if (Number.isSafeInteger(n) && Number.isSafeInteger(d)) return n / d;
  const [numerator, denominator] = [BigInt(top), BigInt(bottom)];
  const shift = Math.max(0, 68 + bits(denominator) - bits(numerator));
  const drop = Math.max(0, bits(numerator) - bits(denominator) - 68);
  const [dividend, divisor] = [numerator << BigInt(shift), denominator << BigInt(drop)];
  const quotient = dividend / divisor;
  // A last bit stands for whatever the division left over, so that only the one rounding decides.
  const rest = quotient * divisor === dividend ? 0n : numerator < 0n ? -1n : 1n;
  return Number(2n * quotient + rest) * 2 ** (drop - shift - 1);
}
