import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { circuit, numRuns, plainParts, positive, type Part } from './random-circuit.ts';
import { between, networks, ohmsOf, part, passive } from './resistor-network.ts';

const share = fc.integer({ min: 1, max: 9 }).map((tenths) => new Fraction(tenths, 10));
const ideal = (id: string, from: string, to: string, emf: string): Part => ({
  id,
  kind: 'supply',
  from,
  to,
  emf,
});

describe('equivalent circuits', () => {
  it('a resistor split in two, in series or in parallel, changes nothing elsewhere', () => {
    fc.assert(
      fc.property(plainParts, share, fc.boolean(), (list, f, inSeries) => {
        const split = list.find(({ kind }) => kind === 'resistor');
        fc.pre(split !== undefined);
        const { id, from, to } = split;
        const [r, rest] = [ohmsOf(split), new Fraction(1).sub(f)];
        const two = inSeries
          ? [part(id, from, 'x', r.mul(f)), part('R99', 'x', to, r.mul(rest))]
          : [part(id, from, to, r.div(f)), part('R99', from, to, r.div(rest))];
        const whole = solveExact(circuit(list));
        const parted = solveExact(circuit([...list.filter((one) => one !== split), ...two]));
        for (const other of list)
          if (other !== split) assert.ok(parted.current(other.id)?.equals(whole.current(other.id) ?? NaN));
        const [first, second] = [parted.current(id), parted.current('R99')];
        const sum = inSeries ? first : first?.add(second ?? NaN);
        assert.ok(sum?.equals(whole.current(id) ?? NaN));
      }),
      { numRuns },
    );
  });

  it('Thévenin: any load X between two nodes carries E₀/(R₀ + X), and shorted they carry E₀/R₀', () => {
    fc.assert(
      fc.property(plainParts, positive, (list, load) => {
        const open = solveExact(circuit([...list, { id: 'V99', kind: 'voltmeter', from: 'a', to: 'b' }]));
        const source = open.voltage('V99') ?? new Fraction(NaN);
        const inside = between(passive(list), 'a', 'b');
        const current = (more: Part): Fraction | undefined =>
          solveExact(circuit([...list, more])).current('R99');
        assert.ok(current(part('R99', 'a', 'b', load))?.equals(source.div(inside.add(load))));
        assert.ok(current({ id: 'R99', kind: 'wire', from: 'a', to: 'b' })?.equals(source.div(inside)));
      }),
      { numRuns },
    );
  });

  it('Millman: real supplies side by side stand at Σ(E/R) / Σ(1/R)', () => {
    const branch = fc.tuple(fc.integer({ min: -24, max: 24 }), positive);
    fc.assert(
      fc.property(fc.array(branch, { minLength: 1, maxLength: 8 }), (branches) => {
        const list = branches.map(([emf, internalResistance], k) => {
          return { id: `B${k + 1}`, kind: 'supply', from: 'p', to: 'q', emf: `${emf}`, internalResistance };
        });
        let [driving, conducting] = [new Fraction(0), new Fraction(0)];
        for (const [emf, inside] of branches) {
          driving = driving.add(new Fraction(emf).div(inside));
          conducting = conducting.add(new Fraction(inside).inverse());
        }
        assert.ok(solveExact(circuit(list)).voltage('B1')?.equals(driving.div(conducting)));
      }),
      { numRuns },
    );
  });

  it('reciprocity: an e.m.f. moved from one branch to another gives in the first what it gave in the other', () => {
    fc.assert(
      fc.property(networks, fc.nat(), fc.nat(), (list, j, k) => {
        const [one, other] = [list[j % list.length], list[k % list.length]];
        /** The e.m.f. is put at the `to` end of its branch. */
        const current = (driven: Part | undefined, id: string | undefined): Fraction | undefined => {
          const moved = list.map((own) => (own === driven ? { ...own, to: 'x' } : own));
          return solveExact(circuit([...moved, ideal('B99', driven?.to ?? '', 'x', '5')])).current(id ?? '');
        };
        assert.ok(current(one, other?.id)?.equals(current(other, one?.id) ?? NaN));
      }),
      { numRuns },
    );
  });
});

describe('ladders', () => {
  const fibonacci = (n: number): bigint => {
    let [a, b] = [0n, 1n];
    for (let k = 0; k < n; k++) [a, b] = [b, a + b];
    return a;
  };
  const ladder = (n: number, along: string, across: string): Part[] =>
    Array.from({ length: n }, (_, k) => [
      part(`R${2 * k + 1}`, `n${k}`, `n${k + 1}`, along),
      part(`R${2 * k + 2}`, `n${k + 1}`, 'g', across),
    ]).flat();

  it('n sections of 1 Ω along and 1 Ω across have F(2n + 1)/F(2n) ohms, in Fibonacci numbers', () => {
    for (let n = 1; n <= 40; n++) {
      const expected = new Fraction(fibonacci(2 * n + 1), fibonacci(2 * n));
      assert.ok(between(ladder(n, '1', '1'), 'n0', 'g').equals(expected), `${n} sections`);
    }
  });

  it('with the rung first they have F(2n − 1)/F(2n) ohms', () => {
    for (let n = 2; n <= 40; n++) {
      const rungFirst = [part('R99', 'n0', 'g', '1'), ...ladder(n - 1, '1', '1')];
      assert.ok(between(rungFirst, 'n0', 'g').equals(new Fraction(fibonacci(2 * n - 1), fibonacci(2 * n))));
    }
  });

  it('an endless one of r along and R across tends to (r + √(r² + 4rR))/2', () => {
    for (const [along, across] of [
      [1, 1],
      [2, 3],
      [0.5, 10],
    ] as const) {
      const limit = (along + Math.sqrt(along ** 2 + 4 * along * across)) / 2;
      const long = Number(between(ladder(80, `${along}`, `${across}`), 'n0', 'g'));
      assert.ok(Math.abs(long / limit - 1) < 1e-12);
    }
  });
});
