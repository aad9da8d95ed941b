import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveWhole } from '../../../src/engine/solve/bareiss.ts';
import { factorise, substitute } from '../../../src/engine/solve/ldl.ts';
import { round } from '../../../src/engine/solve/round.ts';
import { Twofolds } from '../../../src/engine/solve/twofold.ts';
import { numRuns } from './random-circuit.ts';

/** A symmetric matrix that is heaviest on its diagonal, so that it is positive definite, with a right-hand side. */
const equations = fc
  .integer({ min: 1, max: 6 })
  .chain((n) => fc.array(fc.integer({ min: -9, max: 9 }), { minLength: n * (n + 1), maxLength: n * (n + 1) }))
  .map((entries) => {
    const n = Math.round(Math.sqrt(entries.length + 0.25) - 0.5);
    const at = (i: number, j: number): number => entries[Math.min(i, j) * n + Math.max(i, j)] ?? 0;
    const matrix = Array.from({ length: n }, (_, i) =>
      Array.from({ length: n }, (_, j) => (i === j ? 9 * n + Math.abs(at(i, i)) : at(i, j))),
    );
    return { n, matrix, right: entries.slice(n * n) };
  });

/** A number as the exact fraction that it is. */
const exactly = (x: number): Fraction => {
  let [whole, halvings] = [x, 0];
  for (; !Number.isInteger(whole); halvings++) whole *= 2;
  return new Fraction(BigInt(whole), 2n ** BigInt(halvings));
};

describe('equations in whole numbers', () => {
  it('are solved exactly: the matrix times the unknowns is the right-hand side times the determinant', () => {
    fc.assert(
      fc.property(equations, ({ n, matrix, right }) => {
        const rows = matrix.map((row, i) => [...row.slice(i), right[i] ?? 0].map(BigInt));
        const unknowns = solveWhole(rows);
        const determinant = unknowns[n] ?? 0n;
        matrix.forEach((row, i) => {
          const product = row.reduce((sum, entry, j) => sum + BigInt(entry) * (unknowns[j] ?? 0n), 0n);
          assert.equal(product, BigInt(right[i] ?? 0) * determinant);
        });
        assert.ok(determinant > 0n);
      }),
      { numRuns },
    );
  });

  it('have the determinant that is known of sixty times Hilbert’s matrix of order 3', () => {
    // 60 × (1, 1/2, 1/3; 1/2, 1/3, 1/4; 1/3, 1/4, 1/5); its determinant is 60³/2160 (Hilbert 1894).
    assert.equal(
      solveWhole([
        [60n, 30n, 20n, 0n],
        [20n, 15n, 0n],
        [12n, 0n],
      ]).at(-1),
      100n,
    );
  });
});

describe('equations in floating-point numbers', () => {
  it('have the solution of the same in whole numbers', () => {
    fc.assert(
      fc.property(equations, ({ n, matrix, right }) => {
        const whole = solveWhole(matrix.map((row, i) => [...row.slice(i), right[i] ?? 0].map(BigInt)));
        const flat = Float64Array.from(matrix.flatMap((row, i) => [...row, right[i] ?? 0]));
        const found = Float64Array.from(right);
        factorise(flat, n);
        substitute(flat, found, n);
        const exact = right.map((_, i) => Number(whole[i]) / Number(whole[n]));
        const largest = Math.max(...exact.map(Math.abs));
        found.forEach((x, i) => assert.ok(Math.abs(x - (exact[i] ?? NaN)) <= 4e-15 * largest));
      }),
      { numRuns },
    );
  });
});

describe('a sum of twice the precision', () => {
  const number = fc
    .double({ min: -1e6, max: 1e6, noNaN: true, noDefaultInfinity: true })
    .filter((x) => x === 0 || Math.abs(x) > 1e-6);

  it('loses of sums and products no more than 1e-30 of the largest', () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(number, number), { maxLength: 12 }), (terms) => {
        const sum = new Twofolds();
        let exact = new Fraction(0);
        let largest = 0;
        for (const [a, b] of terms) {
          sum.addProduct(0, a, b);
          sum.add(0, b);
          exact = exact.add(exactly(a).mul(exactly(b))).add(exactly(b));
          largest = Math.max(largest, Math.abs(a * b), Math.abs(b));
        }
        const off = exact.sub(exactly(sum.high[0] ?? NaN)).sub(exactly(sum.low[0] ?? NaN));
        assert.ok(Math.abs(Number(off)) <= 1e-30 * largest);
      }),
      { numRuns },
    );
  });

  it('keeps what a number alone would lose', () => {
    const sum = new Twofolds();
    for (const x of [1e16, 1, -1e16]) sum.add(0, x);
    assert.equal(sum.rounded(0), 1);
  });
});

describe('rounding a fraction', () => {
  const whole = fc.bigInt({ min: -(2n ** 90n), max: 2n ** 90n });
  const positive = fc.bigInt({ min: 1n, max: 2n ** 90n });

  it('gives the nearest number', () => {
    fc.assert(
      fc.property(whole, positive, (n, d) => {
        const found = round(n, d);
        const off = (x: number): Fraction => exactly(x).sub(new Fraction(n, d)).abs();
        const gap = Math.abs(found) * 2 ** -52;
        for (const other of [found + gap, found - gap]) assert.ok(off(found).compare(off(other)) <= 0);
      }),
      { numRuns },
    );
  });

  it('keeps to it for a negative fraction with a small numerator', () => {
    assert.equal(round(-1n, 99917215828407317088n), -round(1n, 99917215828407317088n));
  });

  it('does so beyond the largest number there is', () => {
    const huge = 7n ** 900n;
    assert.equal(round(huge, 3n * huge), 1 / 3);
    assert.equal(round(-2n * huge, 3n * huge), -2 / 3);
    assert.equal(round(0n, huge), 0);
    assert.equal(round(1n, huge), 7 ** -300 * 7 ** -300 * 7 ** -300);
    assert.equal(round(3n * huge, huge), 3);
  });
});
