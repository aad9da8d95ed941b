import { Fraction } from '../quantity/index.ts';
import { add, exact, inverse, multiply, root as rootOf, type Interval } from './interval.ts';
import type { Turned } from './relation.ts';

const zero = exact(new Fraction(0));
const one = exact(new Fraction(1));
const minus = exact(new Fraction(-1));

/** The value of the quantity that stands alone; none where a division by 0, or the root of what is negative, stands in the way. */
export function evaluate(
  { form, right, root }: Turned,
  value: (name: string) => Interval,
): Interval | undefined {
  const signed = right.map(({ name, sign }) => (sign < 0 ? multiply(value(name), minus) : value(name)));
  if (form === 'sum') return signed.reduce(add, zero);
  if (form === 'reciprocals') {
    const inverses = signed.map(inverse);
    const known = inverses.filter((each) => each !== undefined);
    return known.length < inverses.length ? undefined : inverse(known.reduce(add, zero));
  }
  if (form === 'product over sum') {
    const below = inverse(signed.reduce(add, zero));
    return below && right.reduce((product, { name }) => multiply(product, value(name)), below);
  }
  const factors = right.flatMap(({ power }, index) => {
    const factor = signed[index];
    return new Array<Interval | undefined>(Math.abs(power)).fill(
      factor && power < 0 ? inverse(factor) : factor,
    );
  });
  const possible = factors.filter((factor) => factor !== undefined);
  if (possible.length < factors.length) return undefined;
  const product = possible.reduce(multiply, one);
  if (form === 'balance') return product.value.equals(1) ? zero : undefined;
  if (!root) return product;
  const found = rootOf(product);
  return found && root < 0 ? multiply(found, minus) : found;
}
