import { floats } from './scratch.ts';

const splitter = 2 ** 27 + 1;

/**
 * Sums, each kept to twice the precision of a number, `high + low` at its place (T. Ogita, S. M. Rump, S. Oishi, "Accurate sum
 * and dot product", SIAM J. Sci. Comput. 26, 2005; from memory). One for each purpose is enough: making new ones takes longer than adding.
 */
export class Twofolds {
  high: Float64Array = new Float64Array(64);
  low: Float64Array = new Float64Array(64);

  /** Begins anew with so many sums of nothing. */
  clear(count: number): void {
    this.high = floats(this.high, count).fill(0, 0, count);
    this.low = floats(this.low, count).fill(0, 0, count);
  }

  /** Adds a number that may have a low part of its own. */
  add(at: number, x: number, low = 0): void {
    const before = this.high[at] ?? 0;
    const sum = before + x;
    const back = sum - before;
    this.high[at] = sum;
    this.low[at] = (this.low[at] ?? 0) + (before - (sum - back) + (x - back) + low);
  }

  /** Adds a number times one that may have a low part, with what rounding loses of it. */
  addProduct(at: number, a: number, b: number, low = 0): void {
    const product = a * b;
    const aHigh = splitter * a - (splitter * a - a);
    const bHigh = splitter * b - (splitter * b - b);
    const [aLow, bLow] = [a - aHigh, b - bHigh];
    this.add(at, product, aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow) + a * low);
  }

  /** A sum, rounded. */
  rounded(at: number): number {
    return (this.high[at] ?? 0) + (this.low[at] ?? 0);
  }
}

/** The first of a list of numbers, to be kept. */
export function kept(list: Float64Array, count: number): number[] {
  const found = new Array<number>(count);
  for (let at = 0; at < count; at++) found[at] = list[at] ?? 0;
  return found;
}
