import { Fraction } from '../quantity/index.ts';
import type { Field } from './expression.ts';

/** Coefficients from the constant on; the last is not 0. */
export type Polynomial = readonly Fraction[];

/** A ratio of two polynomials in one setting. */
export interface Ratio {
  readonly over: Polynomial;
  readonly under: Polynomial;
}

const zero = new Fraction(0);
const one: Polynomial = [new Fraction(1)];

function trimmed(terms: readonly Fraction[]): Polynomial {
  const last = terms.findLastIndex(({ n }) => n > 0n);
  return terms.slice(0, last + 1);
}

const plus = (a: Polynomial, b: Polynomial): Polynomial =>
  trimmed(Array.from({ length: Math.max(a.length, b.length) }, (_, k) => (a[k] ?? zero).add(b[k] ?? zero)));

function times(a: Polynomial, b: Polynomial): Polynomial {
  const terms = Array.from({ length: Math.max(a.length + b.length - 1, 0) }, () => zero);
  for (const [i, p] of a.entries())
    for (const [j, q] of b.entries()) terms[i + j] = (terms[i + j] ?? zero).add(p.mul(q));
  return trimmed(terms);
}

const equal = (a: Polynomial, b: Polynomial): boolean =>
  a.length === b.length && a.every((term, k) => term.equals(b[k] ?? zero));

/** The value of a polynomial (W. G. Horner 1819). */
export const valueAt = (terms: Polynomial, x: Fraction): Fraction =>
  terms.reduceRight((sum, term) => sum.mul(x).add(term), zero);

/** The derivative of a polynomial. */
export const derivative = (terms: Polynomial): Polynomial => terms.slice(1).map((term, k) => term.mul(k + 1));

/** A constant. */
export const constant = (value: Fraction): Ratio => ({ over: trimmed([value]), under: one });

/** A product. */
export const product = (a: Ratio, b: Ratio): Ratio => ({
  over: times(a.over, b.over),
  under: times(a.under, b.under),
});

/** The sum of two ratios; all currents and p.d.s of a circuit have one denominator, which stays. */
export function sum(a: Ratio, b: Ratio): Ratio {
  if (equal(a.under, b.under)) return { over: plus(a.over, b.over), under: a.under };
  return { over: plus(times(a.over, b.under), times(b.over, a.under)), under: times(a.under, b.under) };
}

/** The ratios of polynomials. */
export const inRatios = (name: (name: string) => Ratio | undefined): Field<Ratio> => ({
  number: constant,
  name,
  join(operation, a, b) {
    if (operation === '+') return sum(a, b);
    if (operation === '-') return sum(a, product(constant(new Fraction(-1)), b));
    if (operation === '*') return product(a, b);
    if (b.over.length === 0) return undefined;
    if (equal(a.under, b.under)) return { over: a.over, under: b.over };
    return product(a, { over: b.under, under: b.over });
  },
});

/** Values at three settings. */
export type Three = readonly [Fraction, Fraction, Fraction];

/** The ratio of two straight lines through three points, its denominator with leading coefficient 1. */
export function through([x, y, z]: Three, [f, g, h]: Three): Ratio {
  const [u, v] = [g.sub(f), h.sub(f)];
  if (!u.n || !v.n) return constant(f);
  // f + t / (a + b t) with t for the distance from the first setting.
  const [s, t] = [y.sub(x), z.sub(x)];
  const b = t.div(v).sub(s.div(u)).div(t.sub(s));
  const a = s.div(u).sub(b.mul(s));
  const distance: Polynomial = [x.neg(), new Fraction(1)];
  const lead = b.n ? b : a;
  const under = plus([a.div(lead)], times(distance, trimmed([b.div(lead)])));
  return { over: plus(times(trimmed([f]), under), times(distance, [lead.inverse()])), under };
}
