import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { circuit, numRuns, plainParts, positive, type Part } from './random-circuit.ts';
import { between, exact, networks, nodesOf, ohmsOf, part, total, zero } from './resistor-network.ts';

const withOhms = (part: Part, ohms: Fraction): Part => ({ ...part, resistance: ohms.toFraction() });
const source = (emf: string): Part => ({ id: 'B99', kind: 'supply', from: 'a', to: 'b', emf });

const current = (solution: ExactSolution, { id }: Part): Fraction => exact(solution.current(id));
const volts = (solution: ExactSolution, { id }: Part): Fraction => exact(solution.voltage(id));

describe('identities of networks', () => {
  it('Tellegen: p.d.s of one network and currents of another on the same graph, with other e.m.f.s, give no power (B. D. H. Tellegen 1952)', () => {
    fc.assert(
      fc.property(plainParts, fc.array(positive, { minLength: 13, maxLength: 13 }), (list, ohms) => {
        const other = list.map((part, k): Part => {
          const value = ohms[k] ?? '1';
          return part.kind === 'supply'
            ? { ...part, emf: `${k - 3}`, internalResistance: value }
            : { ...part, resistance: value };
        });
        const [one, two] = [solveExact(circuit(list)), solveExact(circuit(other))];
        const power = list
          .map((part) =>
            volts(one, part)
              .mul(current(two, part))
              .mul(part.kind === 'supply' ? -1 : 1),
          )
          .reduce((sum, term) => sum.add(term), zero);
        assert.ok(power.equals(0));
      }),
      { numRuns },
    );
  });

  it('Rayleigh: raising a resistance never lowers the total, and cutting it out never does either', () => {
    fc.assert(
      fc.property(networks, fc.nat(), positive, (list, at, more) => {
        const chosen = list[at % list.length];
        const raised = list.map((part) => (part === chosen ? withOhms(part, ohmsOf(part).add(more)) : part));
        const [before, after] = [between(list, 'a', 'b'), between(raised, 'a', 'b')];
        assert.ok(after.compare(before) >= 0);
        // Strictly, exactly where it carries a current.
        const carries = chosen && !current(solveExact(circuit([...list, source('1')])), chosen).equals(0);
        assert.equal(after.compare(before) > 0, carries);
        const opened = list.map((part): Part =>
          part === chosen ? { ...part, kind: 'voltmeter', resistance: undefined } : part,
        );
        const cut = solveExact(circuit(opened, ['a', 'b'])).totalResistance();
        assert.ok(cut === undefined || cut.compare(after) >= 0);
      }),
      { numRuns },
    );
  });

  it('Euler: the resistances, weighed with the squares of their currents at 1 A, sum to the total', () => {
    fc.assert(
      fc.property(networks, (list) => {
        const driven = solveExact(circuit([...list, source('1')]));
        const main = driven.current('B99') ?? zero;
        const sum = list
          .map((part) => current(driven, part).div(main).pow(2).mul(ohmsOf(part)))
          .reduce((total, term) => total.add(term), zero);
        assert.ok(sum.equals(between(list, 'a', 'b')));
      }),
      { numRuns },
    );
  });

  it('compensation: a resistance raised by h changes every current as an e.m.f. of −h i there would', () => {
    fc.assert(
      fc.property(plainParts, positive, (list, h) => {
        const chosen = list.find(({ kind }) => kind === 'resistor');
        fc.pre(chosen !== undefined);
        const raised = list.map((part) => (part === chosen ? withOhms(part, ohmsOf(part).add(h)) : part));
        const before = solveExact(circuit(list));
        const after = solveExact(circuit(raised));
        const dead = raised.map((part) => (part.kind === 'supply' ? { ...part, emf: '0' } : part));
        const { to } = chosen;
        const emf = current(before, chosen).mul(h).neg().toFraction();
        const moved = dead.map((part) => (part.id === chosen.id ? { ...part, to: 'x' } : part));
        const change = solveExact(circuit([...moved, { id: 'B99', kind: 'supply', from: to, to: 'x', emf }]));
        for (const part of list)
          assert.ok(current(after, part).sub(current(before, part)).equals(current(change, part)));
      }),
      { numRuns },
    );
  });

  it('no gain: with one supply no p.d. is more than the supply’s and no current more than the main one', () => {
    fc.assert(
      fc.property(networks, (list) => {
        const driven = solveExact(circuit([...list, source('7')]));
        for (const part of list) {
          assert.ok(volts(driven, part).abs().compare(7) <= 0);
          assert.ok(
            current(driven, part)
              .abs()
              .compare(driven.current('B99') ?? NaN) <= 0,
          );
        }
      }),
      { numRuns },
    );
  });

  it('a star of a, b and c is a delta of (ab + bc + ca) over the arm opposite each side, and back (Kennelly 1899)', () => {
    fc.assert(
      fc.property(networks, fc.tuple(positive, positive, positive), (list, arms) => {
        const [p = '', q = '', s = 'y'] = nodesOf(list);
        const [x = zero, y = zero, z = zero] = arms.map((arm) => new Fraction(arm));
        const pairs = total([x.mul(y), y.mul(z), z.mul(x)]);
        const sides = [pairs.div(x), pairs.div(y), pairs.div(z)] as const;
        const [qs, sp, pq] = sides;
        const star = [part('R90', p, 'z', x), part('R91', q, 'z', y), part('R92', s, 'z', z)];
        const delta = [part('R90', q, s, qs), part('R91', s, p, sp), part('R92', p, q, pq)];
        // Each arm is the product of the sides that meet at its end over the sum of all.
        const back = [sp.mul(pq), pq.mul(qs), qs.mul(sp)].map((product) => product.div(total(sides)));
        assert.deepEqual(
          back.map((arm) => arm.toFraction()),
          [x, y, z].map((arm) => arm.toFraction()),
        );
        for (const [from, to] of [
          [p, q],
          [q, s],
          [s, p],
        ] as const)
          assert.ok(between([...list, ...star], from, to).equals(between([...list, ...delta], from, to)));
      }),
      { numRuns },
    );
  });

  it('a load takes most when it equals the resistance inside: E²/4r, and as much at x r as at r/x', () => {
    fc.assert(
      fc.property(positive, positive, (inside, ratio) => {
        const power = (load: Fraction): Fraction =>
          solveExact(
            circuit([
              { ...source('6'), internalResistance: inside },
              { id: 'R1', kind: 'resistor', from: 'a', to: 'b', resistance: load.toFraction() },
            ]),
          ).power('R1') ?? zero;
        const r = new Fraction(inside);
        assert.ok(power(r).equals(new Fraction(9).div(r)));
        assert.ok(power(r.mul(ratio)).equals(power(r.div(ratio))));
        assert.ok(power(r.mul(ratio)).compare(power(r)) <= 0);
      }),
      { numRuns },
    );
  });
});
