import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { exact } from './resistor-network.ts';

/** A resistor, or parts in series and in parallel by turns. */
type Shape = string | readonly Shape[];

const ohms = fc
  .tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 1, max: 3 }))
  .map(([k, m]) => `${k}/${m}`);
const { shape } = fc.letrec<{ shape: Shape }>((tie) => ({
  shape: fc.oneof(
    { maxDepth: 4 },
    { weight: 2, arbitrary: ohms },
    { weight: 3, arbitrary: fc.array(tie('shape'), { minLength: 2, maxLength: 3 }) },
  ),
}));

const sizeOf = (whole: Shape): number =>
  typeof whole === 'string' ? 1 : whole.reduce((sum, each) => sum + sizeOf(each), 0);
const resistorsOf = (whole: Shape): string[] => Array.from({ length: sizeOf(whole) }, (_, k) => `R${k + 1}`);

/** A line of a shape; its dual has parallel for series, and 1/R for R. */
function line(whole: Shape, inSeries: boolean, dual: boolean): string {
  let count = 0;
  const text = (each: Shape, series: boolean): string => {
    if (typeof each === 'string') {
      const value = new Fraction(each);
      return `R${++count} ${(dual ? new Fraction(1).div(value) : value).toFraction()} Ω`;
    }
    return `(${each.map((one) => text(one, !series)).join(series ? ' + ' : ' ∥ ')})`;
  };
  return text(whole, inSeries);
}
const total = (text: string): Fraction => exact(solveExact(parseCircuit(text)).totalResistance());

describe('series and parallel', () => {
  it('are duals: with + for ∥ and 1/R for R the total is 1/total', () => {
    fc.assert(
      fc.property(shape, (whole) => {
        const [own, dual] = [total(line(whole, true, false)), total(line(whole, false, true))];
        assert.ok(own.mul(dual).equals(1));
      }),
      { numRuns: 1000 },
    );
  });

  it('change places with their duals: driven by as many volts as the other takes amperes, each p.d. is the other’s current', () => {
    fc.assert(
      fc.property(shape, fc.integer({ min: 1, max: 24 }), (whole, volts) => {
        const own = solveExact(parseCircuit(`B1 ${volts} V + ${line(whole, true, false)}`));
        const main = exact(own.current('B1')).toFraction();
        const dual = solveExact(parseCircuit(`B1 ${main} V + ${line(whole, false, true)}`));
        for (const id of ['B1', ...resistorsOf(whole)]) {
          assert.ok(exact(own.current(id)).equals(exact(dual.voltage(id))), id);
          assert.ok(exact(own.voltage(id)).equals(exact(dual.current(id))), id);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('make 1, 2, 4, 9, 22, 53, 131 totals of one to seven equal resistors (OEIS A048211), none of larger terms than F(n + 1) (S. A. Khan 2012)', () => {
    const counts = [1, 2, 4, 9, 22, 53, 131];
    const fibonacci = [1n, 2n, 3n, 5n, 8n, 13n, 21n];
    const totals: Map<string, Fraction>[] = [new Map<string, Fraction>(), new Map([['1', new Fraction(1)]])];
    // One resistor more is the sum, or the parallel sum, of two smaller networks; the solver says what each is.
    const found = counts.map((_, index) => {
      const n = index + 1;
      const all = totals[n] ?? new Map<string, Fraction>();
      for (let k = 1; k <= n / 2; k++) {
        for (const a of totals[k]?.values() ?? []) {
          for (const b of totals[n - k]?.values() ?? []) {
            for (const join of ['+', '∥']) {
              const value = total(`R1 ${a.toFraction()} Ω ${join} R2 ${b.toFraction()} Ω`);
              all.set(value.toFraction(), value);
            }
          }
        }
      }
      totals[n] = all;
      const terms = [...all.values()].flatMap(({ n, d }) => [n, d]);
      assert.equal(
        terms.reduce((most, term) => (term > most ? term : most)),
        fibonacci[index],
      );
      return all.size;
    });
    assert.deepEqual(found, counts);
  });

  it('the seven-twelfths, three-quarters and five-sixths of a cube of equal resistors (handbook values)', () => {
    const corners = Array.from({ length: 8 }, (_, k) => k);
    const edges = corners.flatMap((p) =>
      [1, 2, 4].map((bit) => [p, p | bit] as const).filter(([a, b]) => a !== b),
    );
    const between = (end: number): string => {
      const placed = edges.map(([p, q], k) => `R${k + 1} 1 Ω @n${p}–@n${q}`);
      return total(`${placed.join('; ')}; ends @n0–@n${end}`).toFraction();
    };
    assert.equal(edges.length, 12);
    assert.deepEqual([between(1), between(3), between(7)], ['7/12', '3/4', '5/6']);
  });
});
