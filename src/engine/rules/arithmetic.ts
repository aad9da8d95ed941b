import { Fraction } from '../quantity/index.ts';
import type { Term, Value } from './rule-check.ts';

/** An operation that is exact between fractions. */
const exactly =
  (operation: 'add' | 'mul', floats: (a: number, b: number) => number) =>
  (a: Value, b: Value): Value =>
    typeof a === 'number' || typeof b === 'number' ? floats(Number(a), Number(b)) : a[operation](b);

/** Nothing, exactly. */
export const zero: Fraction = new Fraction(0);
const minusOne = new Fraction(-1);

/** a + b */
export const add: (a: Value, b: Value) => Value = exactly('add', (a, b) => a + b);
const multiply = exactly('mul', (a, b) => a * b);
const inverse = (a: Value): Value => (typeof a === 'number' ? 1 / a : a.inverse());
/** −a */
export const negate = (a: Value): Value => multiply(a, minusOne);
/** a without its sign. */
export const absolute = (a: Value): Value => (Number(a) < 0 ? negate(a) : a);

const values = (terms: readonly Term[]): readonly Value[] => terms.map(({ value }) => value);

/** The sum of some terms. */
export const total = (terms: readonly Term[]): Value => values(terms).reduce(add, zero);
/** The product of some terms. */
export const product = (terms: readonly Term[]): Value => values(terms).reduce(multiply);
/** What resistances make in parallel: the reciprocal of the sum of their reciprocals, 0 where one of them is 0. */
export const parallel = (terms: readonly Term[]): Value =>
  values(terms).some((value) => Number(value) === 0) ? zero : inverse(values(terms).map(inverse).reduce(add));
