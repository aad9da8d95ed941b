import type { Fraction } from './fraction.ts';

/** A value rounded to some significant figures: digits × 10^exponent, both exact. */
interface Figures {
  readonly negative: boolean;
  readonly digits: bigint;
  readonly exponent: number;
}

/** The exponent of the leading digit: 2 for 450, −1 for 0.2. */
function magnitude(n: bigint, d: bigint): number {
  const guess = n.toString().length - d.toString().length;
  const scaled = guess < 0 ? n * 10n ** BigInt(-guess) : n;
  return scaled >= (guess < 0 ? d : d * 10n ** BigInt(guess)) ? guess : guess - 1;
}

/** The magnitude of a value times 10^power, rounded to a whole number, half up. */
function whole({ n, d }: Fraction, power: number): bigint {
  const up = 10n ** BigInt(Math.abs(power));
  const top = power < 0 ? n : n * up;
  const bottom = power < 0 ? d * up : d;
  return (2n * top + bottom) / (2n * bottom);
}

/** Rounds half away from zero, as school textbooks do, exactly for fractions. */
function round(value: Fraction | number, figures: number): Figures {
  if (typeof value === 'number') {
    const [digits = '0', exponent = '0'] = Math.abs(value)
      .toExponential(figures - 1)
      .split('e');
    return {
      negative: value < 0,
      digits: BigInt(digits.replace('.', '')),
      exponent: Number(exponent) - figures + 1,
    };
  }
  if (value.n === 0n) return { negative: false, digits: 0n, exponent: 1 - figures };
  const exponent = magnitude(value.n, value.d) - figures + 1;
  const digits = whole(value, -exponent);
  const carried = digits === 10n ** BigInt(figures);
  const negative = value.s < 0n;
  return carried
    ? { negative, digits: digits / 10n, exponent: exponent + 1 }
    : { negative, digits, exponent };
}

/** The power of ten of the leading digit once rounded: 999.7 to three figures gives 3. Zero gives 0. */
export function leadingPower(value: Fraction | number, figures: number): number {
  const { digits, exponent } = round(value, figures);
  return digits === 0n ? 0 : digits.toString().length - 1 + exponent;
}

/** Puts the decimal point into `digits × 10^exponent`; never "-0". */
function plain(negative: boolean, digits: bigint, exponent: number): string {
  const text =
    exponent >= 0 ? `${digits}${'0'.repeat(exponent)}` : digits.toString().padStart(1 - exponent, '0');
  const cut = text.length + Math.min(exponent, 0);
  const sign = negative && digits !== 0n ? '−' : '';
  return sign + (cut < text.length ? `${text.slice(0, cut)}.${text.slice(cut)}` : text);
}

/** The value times 10^shift with so many significant figures: `(0.5, 3, 0)` is "0.500". */
export function significant(value: Fraction | number, figures: number, shift = 0): string {
  const { negative, digits, exponent } = round(value, figures);
  return digits === 0n ? '0' : plain(negative, digits, exponent + shift);
}

/** The value times 10^shift with so many decimals, rounded half away from zero. */
export function fixed(value: Fraction | number, decimals: number, shift = 0): string {
  const power = decimals + shift;
  if (typeof value === 'number') {
    // Not by way of a fraction: finding the one that a float stands for takes a hundred times as long.
    return plain(value < 0, BigInt(Math.round(Math.abs(value) * 10 ** power)), -decimals);
  }
  return plain(value.s < 0n, whole(value, power), -decimals);
}
