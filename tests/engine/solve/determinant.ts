import { Fraction } from '../../../src/engine/quantity/index.ts';

/** The determinant of a matrix whose pivots are not 0, by Gauss’s elimination in fractions. */
export function determinant(rows: readonly (readonly Fraction[])[]): Fraction {
  const [first, ...others] = rows;
  const pivot = first?.[0];
  if (!first || !pivot) return new Fraction(1);
  const rest = others.map((row) => {
    const factor = (row[0] ?? new Fraction(0)).div(pivot);
    return row.slice(1).map((value, k) => value.sub(factor.mul(first[k + 1] ?? 0)));
  });
  return determinant(rest).mul(pivot);
}
