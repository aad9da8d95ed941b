import { decimalsOf, quantity } from './as-written.ts';
import { Fraction, powerOfTen } from './fraction.ts';
import { exponentOf, type Prefix } from './prefix.ts';
import type { Quantity, Unit } from './quantity.ts';

/** The most digits in a row, and the largest power of ten. */
const limit = 30;

/** A number as it was written. */
export interface NumberReading {
  /** Exact; 0 where there is trouble. */
  readonly value: Fraction;
  /** Decimals written, the exponent counted in: 1.50e-1 has 3. */
  readonly decimals: number;
  /** Where in the text the number ends. */
  readonly end: number;
  /** Why it cannot be read: `1,000` has two readings; too many digits or too large an exponent; a fraction over 0. */
  readonly trouble?: 'thousands' | 'too long' | 'zero below';
}

// Whole part (in groups of three, or not) and decimals, then a fraction's lower part or a power of ten.
const pattern =
  /(\d{1,3}(?:[ \t\u00a0\u2007-\u200a\u202f]\d{3}(?!\d))+|\d+)([.,]\d+)?(?:\/(\d+)|[eE]([-‐-―−]?\d+)|\s*[×x]\s*10(?:\^([-‐-―−]?\d+)|(⁻?[⁰¹²³⁴-⁹]+)))?/y;
const superscripts = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/**
 * Reads the number that starts at a place in a text: `12`, `12 000`, `4.7`, `4,7`, `1/3`, `2e-3`, `2×10^-3`, `2 × 10⁻³`;
 * undefined where no digit stands there.
 */
export function scanNumber(text: string, at: number): NumberReading | undefined {
  if (!/\d/.test(text.charAt(at))) return undefined;
  pattern.lastIndex = at;
  const [all, whole = '', places = '', below, plain, caret, raised] = pattern.exec(text) ?? [];
  if (all === undefined) return undefined;
  const end = at + all.length;
  const digits = whole.replace(/\D/g, '');
  const decimals = places.slice(1);
  const power = Number(
    (plain ?? caret ?? raised ?? '0')
      .replace(/[⁰¹²³⁴-⁹]/g, (digit) => `${superscripts.indexOf(digit)}`)
      .replace(/^\D/, '-'),
  );
  const unread = (trouble: NonNullable<NumberReading['trouble']>): NumberReading => ({
    value: new Fraction(0),
    decimals: 0,
    end,
    trouble,
  });
  if (Math.max(digits.length, decimals.length, below?.length ?? 0) > limit || Math.abs(power) > limit)
    return unread('too long');
  if (below && Number(below) === 0) return unread('zero below');
  if (/^[1-9]\d{0,2},\d{3}$/.test(whole + places)) return unread('thousands');
  const value = powerOfTen(power - decimals.length)
    .mul(BigInt(digits + decimals))
    .div(BigInt(below ?? 1));
  return { value, decimals: Math.max(0, decimals.length - power), end };
}

/** The quantity that a number is with its unit and prefix. */
export function inUnit(
  { value, decimals }: Omit<NumberReading, 'end'>,
  unit: Unit,
  prefix: Prefix,
): Quantity {
  return quantity(value.mul(powerOfTen(exponentOf(prefix))), unit, prefix, decimals);
}

/**
 * A number exactly, as `scanNumber` reads it back, `decimals` included: in full up to fifteen figures, then with a power of
 * ten; as a fraction where it has no finite decimal, or one that is too long.
 */
export function numberText(value: Fraction, decimals: number | undefined): string {
  const whole = decimals === undefined ? value : value.mul(powerOfTen(decimals));
  const digits = whole.n.toString();
  if (decimals === undefined || whole.d > 1n || decimals > 2 * limit || digits.length > 2 * limit)
    return value.toFraction();
  const sign = value.s < 0n ? '-' : '';
  const short = digits.length <= 15 && decimals <= 15;
  const zeros = short || decimals > 0 ? 0 : Math.min(limit, /0*$/.exec(digits)?.[0].length ?? 0);
  const kept = digits.slice(0, digits.length - zeros);
  const places = short ? decimals : Math.max(0, kept.length - limit, decimals - limit);
  const power = places - decimals + zeros;
  const padded = kept.padStart(places + 1, '0');
  const point = padded.length - places;
  return `${sign}${padded.slice(0, point)}${places ? '.' : ''}${padded.slice(point)}${power ? `e${power}` : ''}`;
}

/** A value as a decimal where there is one, else as a ratio: "4.7", "1/3". */
export function exactText(value: Fraction): string {
  return numberText(value, decimalsOf(value, ''));
}
