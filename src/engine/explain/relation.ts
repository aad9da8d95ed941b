import { Fraction } from '../quantity/index.ts';
import type { Reasoning } from './codes.ts';

/**
 * What holds between quantities. A `sum`: the left equals its signed terms added; a `product`: its signed factors, each to
 * its power; `reciprocals`: one over the left equals one over each term, added.
 */
export interface Relation {
  readonly rule: Reasoning;
  readonly form: 'sum' | 'product' | 'reciprocals';
  /** The components that it is about. */
  readonly about: readonly string[];
  readonly left: string;
  readonly right: readonly Term[];
}

/** A quantity, its sign, and in a product its power. */
export interface Term {
  readonly name: string;
  readonly sign: 1 | -1;
  readonly power: number;
}

/** A term that is added, or a factor. */
export const term = (name: string, sign: 1 | -1 = 1, power = 1): Term => ({ name, sign, power });

/** The quantities of a relation. */
export const namesOf = ({ left, right }: Relation): readonly string[] => [
  left,
  ...right.map(({ name }) => name),
];

/** A relation turned round so that `name` stands alone; the same where it does already. */
export function rearranged(relation: Relation, name: string): Relation & { readonly root?: true } {
  const { form, left, right } = relation;
  const own = right.find((one) => one.name === name);
  if (left === name || !own) return relation;
  const others = right.filter((one) => one !== own);
  const moved = others.map((one) => {
    if (form === 'product') return { ...one, power: -one.power * own.power };
    return { ...one, sign: form === 'sum' && own.sign < 0 ? one.sign : one.sign === 1 ? -1 : 1 } as const;
  });
  const first = term(left, form === 'sum' ? own.sign : 1);
  if (form !== 'product') return { ...relation, left: name, right: [first, ...moved] };
  if (Math.abs(own.power) === 2) {
    const half = others.map((one) => ({ ...one, power: -one.power }));
    return { ...relation, left: name, right: [first, ...half], root: true };
  }
  const factors = [{ ...first, power: own.power, sign: own.sign }, ...moved];
  return { ...relation, left: name, right: factors.sort((a, b) => b.power - a.power) };
}

const one = new Fraction(1);

/** The value of the quantity that stands alone; undefined where a division by 0, or a root that is no fraction, stands in the way. */
export function evaluate(
  { form, right, root }: ReturnType<typeof rearranged>,
  value: (name: string) => Fraction,
): Fraction | undefined {
  const needsInverse = right.some(
    ({ name, power }) => (form === 'reciprocals' || power < 0) && value(name).equals(0),
  );
  if (needsInverse) return undefined;
  const signed = ({ name, sign }: Term): Fraction => value(name).mul(sign);
  if (form === 'sum') return right.reduce((sum, each) => sum.add(signed(each)), new Fraction(0));
  if (form === 'reciprocals') {
    const sum = right.reduce((whole, each) => whole.add(signed(each).inverse()), new Fraction(0));
    return sum.equals(0) ? undefined : sum.inverse();
  }
  const product = right.reduce(
    (all, { name, sign, power }) => all.mul(value(name).pow(power)).mul(sign),
    one,
  );
  if (!root) return product;
  // What has no root among fractions comes back as nothing, whatever its type says.
  const rooted: Fraction | null = product.pow(new Fraction(1, 2));
  return rooted instanceof Fraction ? rooted : undefined;
}

/** The components and blocks that its sentence names: the parts that are added, the two that are compared, or the one it is about. */
export function placesOf({ rule, left, right }: Relation): readonly string[] {
  const names = right.map(({ name }) => name);
  const of = (some: readonly string[]): readonly string[] =>
    some.map((name) => name.replace(/^[^_]*_/, '').replace(/^\((.*)\)$/, '$1'));
  if (/add|^resistances/.test(rule)) return of(names);
  if (/^same|divider/.test(rule)) return of([left, ...names.slice(0, 1)]);
  return of(rule.endsWith('times resistance') ? names.slice(-1) : names.slice(0, 1));
}
