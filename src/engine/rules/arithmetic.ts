import { Fraction } from '../quantity/index.ts';
import type { Term, Value } from './rule-check.ts';

/** An operation that is exact between fractions. */
const on =
  (floats: (a: number, b: number) => number, fractions: (a: Fraction, b: Fraction) => Fraction) =>
  (a: Value, b: Value): Value =>
    typeof a === 'number' || typeof b === 'number' ? floats(Number(a), Number(b)) : fractions(a, b);

/** a + b */
export const add: (a: Value, b: Value) => Value = on(
  (a, b) => a + b,
  (a, b) => a.add(b),
);
/** a × b */
export const multiply: (a: Value, b: Value) => Value = on(
  (a, b) => a * b,
  (a, b) => a.mul(b),
);
/** −a */
export const negate = (a: Value): Value => multiply(a, minusOne);
/** a without its sign. */
export const absolute = (a: Value): Value => (Number(a) < 0 ? negate(a) : a);
/** 1/a */
const reciprocal = (a: Value): Value => (typeof a === 'number' ? 1 / a : a.inverse());

const values = (terms: readonly Term[]): readonly Value[] => terms.map(({ value }) => value);
/** The sum of some terms. */
export const total = (terms: readonly Term[]): Value => values(terms).reduce(add, zero);
/** The product of some terms. */
export const product = (terms: readonly Term[]): Value => values(terms).reduce(multiply);
/** What resistances make in parallel: the reciprocal of the sum of the reciprocals, 0 where one of them is 0. */
export const parallel = (terms: readonly Term[]): Value =>
  values(terms).some((value) => Number(value) === 0)
    ? zero
    : reciprocal(values(terms).map(reciprocal).reduce(add));

/** Nothing, exactly. */
export const zero: Fraction = new Fraction(0);
const minusOne = new Fraction(-1);
