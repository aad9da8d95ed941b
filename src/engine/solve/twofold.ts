const splitter = 2 ** 27 + 1;

/**
 * A sum kept to twice the precision of a number: `high + low` (T. Ogita, S. M. Rump, S. Oishi, "Accurate sum and dot
 * product", SIAM J. Sci. Comput. 26, 2005; from memory).
 */
export class Twofold {
  high = 0;
  low = 0;

  /** Adds a number that may have a low part of its own. */
  add(x: number, low = 0): void {
    const sum = this.high + x;
    const back = sum - this.high;
    this.low += this.high - (sum - back) + (x - back) + low;
    this.high = sum;
  }

  /** Adds a number times one that may have a low part, with what rounding loses of it. */
  addProduct(a: number, b: number, low = 0): void {
    const product = a * b;
    const aHigh = splitter * a - (splitter * a - a);
    const bHigh = splitter * b - (splitter * b - b);
    const [aLow, bLow] = [a - aHigh, b - bHigh];
    this.add(product, aLow * bLow - (product - aHigh * bHigh - aLow * bHigh - aHigh * bLow) + a * low);
  }
}
