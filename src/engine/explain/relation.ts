import type { Reasoning } from './codes.ts';

/** One way round, or the other. */
export type Sign = 1 | -1;
/** The sign of a product. */
export const times = (a: Sign, b: Sign): Sign => (a === b ? 1 : -1);

/**
 * What holds between quantities. A `sum`: the left equals its signed terms added (none: it is 0); a `product`: its signed factors, each to
 * its power; `reciprocals`: one over the left equals one over each term, added; `product over sum`: its terms multiplied, over their sum;
 * `balance`: the left is 0 where its factors, each to its power, come to 1.
 */
export interface Relation {
  readonly rule: Reasoning;
  readonly form: 'sum' | 'product' | 'reciprocals' | 'product over sum' | 'balance';
  /** The components that it is about. */
  readonly about: readonly string[];
  readonly left: string;
  readonly right: readonly Term[];
  /** A p.d. that is only thought of, to read off its equation from left to right. */
  readonly trial?: string;
  /** A current that it holds without: it has to be known to be 0. */
  readonly idle?: string;
  /** The steps that it stands for; 1 unless said. */
  readonly cost?: number;
  /** The sign of what is squared in it, where that is known. */
  readonly squared?: Sign;
}

/** A quantity, its sign, and in a product its power. */
export interface Term {
  readonly name: string;
  readonly sign: Sign;
  readonly power: number;
}

/** A relation that is to be read from right to left only: with `root`, its left is so many times the root of the right. */
export type Turned = Relation & { readonly root?: Sign };

/** A term that is added, or a factor. */
export const term = (name: string, sign: Sign = 1, power = 1): Term => ({ name, sign, power });

/** A relation, from its parts. */
export const relation = (
  rule: Reasoning,
  form: Relation['form'],
  about: readonly string[],
  left: string,
  ...right: readonly Term[]
): Relation => ({ rule, form, about, left, right });

/** The quantities of a relation. */
export const namesOf = ({ left, right, idle }: Relation): readonly string[] => [
  left,
  ...right.map(({ name }) => name),
  ...(idle === undefined ? [] : [idle]),
];

/** A relation turned round so that `name` stands alone; none where it is squared with a sign that is not known. */
export function rearranged(relation: Relation, name: string): Turned | undefined {
  const { form, left, right, squared } = relation;
  const own = right.find((one) => one.name === name);
  if (name === relation.idle) return undefined;
  if (left === name || !own) return relation;
  if (relation.trial) return undefined;
  const others = right.filter((one) => one !== own);
  if (form === 'product over sum') return { ...relation, left: name, right: [term(left, -1), ...others] };
  if (form === 'balance') {
    const factors = others.map((one) => ({ ...one, power: -one.power * own.power }));
    return {
      ...relation,
      form: 'product',
      left: name,
      right: factors.sort((a, b) => b.power - a.power),
      idle: left,
    };
  }
  if (form !== 'product') {
    const isPlain = form === 'sum' && own.sign < 0;
    const moved = others.map((one) => (isPlain ? one : { ...one, sign: times(one.sign, -1) }));
    return { ...relation, left: name, right: [term(left, form === 'sum' ? own.sign : 1), ...moved] };
  }
  const isSquare = Math.abs(own.power) === 2;
  if (isSquare && !squared) return undefined;
  const upside = isSquare ? 1 : own.power;
  const factors = [
    { ...term(left), power: upside, sign: own.sign },
    ...others.map((one) => ({ ...one, power: -one.power * upside })),
  ].sort((a, b) => b.power - a.power);
  return { ...relation, left: name, right: factors, ...(isSquare && squared && { root: squared }) };
}

/** The component or block that a quantity is of, as sentences name it. */
export const placeOf = (name: string): string => name.replace(/^[^_]*_/, '').replace(/^\((.*)\)$/, '$1');

/** The components and blocks that its sentence names: the parts that are added, the two that are compared, or the one it is about. */
export function placesOf({ rule, about, left, right }: Relation): readonly string[] {
  if (right.length === 0) return about;
  const names = right.map(({ name }) => name);
  const of = (some: readonly string[]): readonly string[] => some.map(placeOf);
  if (/a loop$|a junction$/.test(rule)) return of([left, ...names]);
  if (/add|^resistances|series$|^product|^trial|track$/.test(rule)) return of(names);
  if (rule.startsWith('same')) return of([left, ...names]);
  if (rule === 'balanced bridge') return of([...names, left]);
  if (rule === 'potential divider') return of([left, ...names.slice(-1)]);
  return of(
    rule.endsWith('times resistance') ? names.slice(-1) : rule === 'rating' ? [left] : names.slice(0, 1),
  );
}
