import { Fraction } from '../quantity/index.ts';

/** A value, with the ends between which the true one lies; all three the same where it is exact. */
export interface Interval {
  readonly value: Fraction;
  readonly low: Fraction;
  readonly high: Fraction;
}

/** A value that is exact. */
export const exact = (value: Fraction): Interval => ({ value, low: value, high: value });

/** A value as it was given: a number with decimals stands for all that round to it, any other for itself. */
export function read(given: Fraction | number | string): Interval {
  const value = new Fraction(given);
  const places = given instanceof Fraction ? undefined : /^-?\d*\.(\d+)$/.exec(`${given}`)?.[1];
  if (places === undefined) return exact(value);
  const half = new Fraction(1n, 2n * 10n ** BigInt(places.length));
  return { value, low: value.sub(half), high: value.add(half) };
}

const least = (a: Fraction, b: Fraction): Fraction => (a.compare(b) < 0 ? a : b);
const most = (a: Fraction, b: Fraction): Fraction => (a.compare(b) < 0 ? b : a);

type Operation = (a: Interval, b: Interval) => Interval;

/** An operation whose extremes lie at the ends of its operands. */
const between =
  (of: (a: Fraction, b: Fraction) => Fraction): Operation =>
  (a, b) => {
    const value = of(a.value, b.value);
    if (a.low === a.high && b.low === b.high) return exact(value);
    const ends = [of(a.low, b.low), of(a.low, b.high), of(a.high, b.low), of(a.high, b.high)];
    return { value, low: ends.reduce(least), high: ends.reduce(most) };
  };

/** The sum of two. */
export const add: Operation = between((a, b) => a.add(b));
/** The product of two. */
export const multiply: Operation = between((a, b) => a.mul(b));

/** One over it; none where it may be 0. */
export function inverse({ value, low, high }: Interval): Interval | undefined {
  if (low.compare(0) <= 0 && high.compare(0) >= 0) return undefined;
  return low === high
    ? exact(value.inverse())
    : { value: value.inverse(), low: high.inverse(), high: low.inverse() };
}

/** So many places has a root that is no fraction. */
const scale = 10n ** 40n;

function wholeRoot(n: bigint): bigint {
  if (n === 0n) return n;
  let root = 1n << BigInt((n.toString(2).length + 1) >> 1);
  for (let next = (root + n / root) >> 1n; next < root; next = (root + n / root) >> 1n) root = next;
  return root;
}

/** The root of a fraction from below and from above: the same where it is a fraction. */
function rootOf({ n, d }: Fraction): readonly [Fraction, Fraction] {
  const below = wholeRoot(n * d);
  if (below * below === n * d) {
    const root = new Fraction(below, d);
    return [root, root];
  }
  const fine = wholeRoot(n * d * scale * scale);
  return [new Fraction(fine, d * scale), new Fraction(fine + 1n, d * scale)];
}

/** The root of what is not negative. */
export function root({ value, low, high }: Interval): Interval | undefined {
  if (value.compare(0) < 0) return undefined;
  const [middle, above] = rootOf(value);
  if (low === high) return { value: middle, low: middle, high: above };
  return { value: middle, low: rootOf(most(low, new Fraction(0)))[0], high: rootOf(high)[1] };
}
