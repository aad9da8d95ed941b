import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { circuit, numRuns, parts, plainParts, positive, resistor, type Part } from './random-circuit.ts';

const zero = new Fraction(0);
const resistorParts = parts(resistor(), resistor());
const ohmsOf = (part: Part): Fraction => new Fraction(String(part['resistance']));
const withOhms = (part: Part, ohms: Fraction): Part => ({ ...part, resistance: ohms.toFraction() });
const source = (emf: string): Part => ({ id: 'B99', kind: 'supply', from: 'a', to: 'b', emf });

/** The resistance between two nodes of a network. */
function between(list: readonly Part[], p = 'a', q = 'b'): Fraction {
  return solveExact(circuit(list, [p, q])).totalResistance() ?? new Fraction(NaN);
}

const current = (solution: ExactSolution, { id }: Part): Fraction =>
  solution.current(id) ?? new Fraction(NaN);
const volts = (solution: ExactSolution, { id }: Part): Fraction => solution.voltage(id) ?? new Fraction(NaN);

describe('identities of networks', () => {
  it('Tellegen: p.d.s of one network and currents of another on the same graph give no power', () => {
    fc.assert(
      fc.property(plainParts, fc.array(positive, { minLength: 13, maxLength: 13 }), (list, ohms) => {
        const other = list.map((part, k): Part => {
          const value = ohms[k] ?? '1';
          return part.kind === 'supply'
            ? { ...part, internalResistance: value }
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
      fc.property(resistorParts, fc.nat(), positive, (list, at, more) => {
        const chosen = list[at % list.length];
        const raised = list.map((part) => (part === chosen ? withOhms(part, ohmsOf(part).add(more)) : part));
        const [before, after] = [between(list), between(raised)];
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
      fc.property(resistorParts, (list) => {
        const driven = solveExact(circuit([...list, source('1')]));
        const main = driven.current('B99') ?? zero;
        const sum = list
          .map((part) => current(driven, part).div(main).pow(2).mul(ohmsOf(part)))
          .reduce((total, term) => total.add(term), zero);
        assert.ok(sum.equals(between(list)));
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
      fc.property(resistorParts, (list) => {
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

  it('any current is (a + b R)/(R + R₀) in any one resistance: three settings tell a fourth', () => {
    fc.assert(
      fc.property(plainParts, fc.nat(), (list, at) => {
        const chosen = list.find(({ kind }) => kind === 'resistor');
        fc.pre(chosen !== undefined);
        const other = list[at % list.length] ?? chosen;
        const [i1, i2, i3, i4] = [1, 2, 4, 9].map((ohms) =>
          current(
            solveExact(
              circuit(list.map((part) => (part === chosen ? withOhms(part, new Fraction(ohms)) : part))),
            ),
            other,
          ),
        );
        // The cross-ratio of four values of a bilinear function is that of their arguments: (1 − 4)(2 − 9)/((2 − 4)(1 − 9)).
        const [p, q] = [
          i1?.sub(i3 ?? 0).mul(i2?.sub(i4 ?? 0) ?? 0),
          i2?.sub(i3 ?? 0).mul(i1?.sub(i4 ?? 0) ?? 0),
        ];
        assert.ok(p?.mul(16).equals(q?.mul(21) ?? NaN));
      }),
      { numRuns },
    );
  });

  it('a star of a, b and c is a delta of (ab + bc + ca) over the arm opposite each side (Kennelly 1899)', () => {
    fc.assert(
      fc.property(positive, positive, positive, positive, (a, b, c, load) => {
        const arms = [a, b, c].map((arm) => new Fraction(arm));
        const [x = zero, y = zero, z = zero] = arms;
        const pairs = x.mul(y).add(y.mul(z)).add(z.mul(x));
        const part = (id: string, from: string, to: string, ohms: Fraction): Part => {
          return { id, kind: 'resistor', from, to, resistance: ohms.toFraction() };
        };
        const rest = [part('R7', 'a', 'b', new Fraction(load)), part('R8', 'c', 'b', new Fraction(7))];
        const star = [part('R1', 'a', 's', x), part('R2', 'b', 's', y), part('R3', 'c', 's', z), ...rest];
        const delta = [
          part('R4', 'b', 'c', pairs.div(x)),
          part('R5', 'c', 'a', pairs.div(y)),
          part('R6', 'a', 'b', pairs.div(z)),
          ...rest,
        ];
        for (const [p, q] of [
          ['a', 'b'],
          ['b', 'c'],
          ['c', 'a'],
        ] as const)
          assert.ok(between(star, p, q).equals(between(delta, p, q)));
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
