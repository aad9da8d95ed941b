// What a network with any e.m.f.s does while one of its resistances is set.
import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { circuit, plainParts, positive, type Part } from './random-circuit.ts';
import {
  between,
  exact,
  networks,
  nodesOf,
  ohmsOf,
  one,
  part,
  passive,
  proper,
  zero,
} from './resistor-network.ts';

const numRuns = 1000;

/** A network and one of its resistors. */
interface Setting {
  readonly list: readonly Part[];
  readonly own: Part;
  readonly at: (ohms: Fraction | number) => ExactSolution;
  /** The ohms that the rest shows between the ends of the resistor, the e.m.f.s at 0; undefined where nothing else joins them. */
  readonly seen: Fraction | undefined;
}

const settings: fc.Arbitrary<Setting> = fc
  .tuple(plainParts, fc.nat())
  .map(([list, draw]) => {
    const resistors = proper(list).filter(({ kind }) => kind === 'resistor');
    return { list, own: resistors[draw % resistors.length] };
  })
  .filter((each): each is { list: Part[]; own: Part } => each.own !== undefined)
  .map(({ list, own }) => {
    const rest = passive(list.filter((each) => each !== own));
    const isJoined = [own.from, own.to].every((node) => nodesOf(rest).includes(node));
    return {
      list,
      own,
      at: (ohms) =>
        solveExact(circuit(list.map((each) => (each === own ? part(own.id, own.from, own.to, ohms) : each)))),
      seen: isJoined ? solveExact(circuit(rest, [own.from, own.to])).totalResistance() : undefined,
    };
  });

const readings = ({ list }: Setting): string[] => list.flatMap(({ id }) => [`I_${id}`, `V_${id}`]);

describe('while one resistance is set', () => {
  it('every current and p.d. is (a + b R)/(R + R₀) with one R₀ for all, which is what the rest shows; none moves where nothing else joins its ends', () => {
    fc.assert(
      fc.property(settings, (each) => {
        const { own, at, seen } = each;
        const found = [1, 2, 9].map((ohms) => ({ ohms, solution: at(ohms) }));
        for (const name of readings(each)) {
          const [a = zero, b = zero, c = zero] = found.map(({ ohms, solution }) =>
            exact(solution.quantity(name)).mul(seen?.add(ohms) ?? 1),
          );
          // On a straight line: from 1 to 9 it goes eight times as far as from 1 to 2, or nowhere.
          if (seen) assert.ok(c.sub(a).equals(b.sub(a).mul(8)), name);
          else assert.ok(a.equals(b) && b.equals(c) && (name !== `I_${own.id}` || a.equals(0)), name);
        }
      }),
      { numRuns },
    );
  });

  it('every current and p.d. rises, falls or stays over the whole range', () => {
    fc.assert(
      fc.property(settings, fc.array(positive, { minLength: 6, maxLength: 6 }), (each, ohms) => {
        const sorted = ohms.map((value) => new Fraction(value)).sort((a, b) => a.compare(b));
        const solutions = [zero, ...sorted].map((value) => each.at(value));
        fc.pre(solutions[0]?.status === 'solved');
        for (const name of readings(each)) {
          const values = solutions.map((solution) => exact(solution.quantity(name)));
          const ways = values.slice(1).map((value, k) => value.compare(values[k] ?? NaN));
          assert.ok(ways.every((way) => way >= 0) || ways.every((way) => way <= 0), name);
        }
      }),
      { numRuns },
    );
  });

  it('it takes more power up to what the rest shows, and less beyond; as much at x R₀ as at R₀/x', () => {
    fc.assert(
      fc.property(settings, ({ own, at, seen }) => {
        fc.pre(seen !== undefined && seen.n !== 0n);
        const power = (factor: string): Fraction => exact(at(seen.mul(factor)).power(own.id));
        const [least, less, most, more, end] = ['1/7', '2/3', '1', '3/2', '7'].map(power);
        assert.ok(least && less && most && more && end);
        assert.ok(least.equals(end) && less.equals(more));
        const carries = most.n !== 0n;
        assert.equal(least.compare(less) < 0, carries);
        assert.equal(less.compare(most) < 0, carries);
      }),
      { numRuns },
    );
  });

  it('an ammeter before it reads I (R + R₀)/(R + R₀ + R_A): never more than flows without it, and as much where it is ideal', () => {
    fc.assert(
      fc.property(settings, positive, ({ list, own, at, seen }, ohms) => {
        const before = exact(at(ohmsOf(own)).current(own.id));
        const moved = list.map((each) => (each === own ? { ...own, to: 'x' } : each));
        const reads = (resistance?: string): Fraction =>
          exact(
            solveExact(
              circuit([
                ...moved,
                { id: 'A99', kind: 'ammeter', from: 'x', to: own.to, ...(resistance && { resistance }) },
              ]),
            ).current('A99'),
          );
        assert.ok(reads().equals(before));
        const whole = ohmsOf(own).add(seen ?? 0);
        assert.ok(reads(ohms).equals(before.mul(whole).div(whole.add(ohms))));
      }),
      { numRuns },
    );
  });

  it('at 0 Ω it is as a closed switch, and an open one is what it tends to: b of (a + b R)/(R + R₀)', () => {
    fc.assert(
      fc.property(settings, (each) => {
        const { list, own, at, seen } = each;
        fc.pre(seen !== undefined && seen.n !== 0n);
        const [shorted, cut] = [true, false].map((closed) =>
          solveExact(
            circuit(
              list.map((other) =>
                other === own ? { id: own.id, kind: 'switch', from: own.from, to: own.to, closed } : other,
              ),
            ),
          ),
        );
        const [none, few, more] = [0, 1, 2].map((ohms) => at(ohms));
        for (const name of readings(each)) {
          assert.ok(exact(none?.quantity(name)).equals(exact(shorted?.quantity(name))), name);
          const low = exact(few?.quantity(name)).mul(seen.add(1));
          const high = exact(more?.quantity(name)).mul(seen.add(2));
          assert.ok(exact(cut?.quantity(name)).equals(high.sub(low)), name);
        }
      }),
      { numRuns },
    );
  });
});

describe('the resistance of a network', () => {
  const shared = fc.tuple(networks, fc.array(positive, { minLength: 20, maxLength: 20 }));

  it('is concave: between two settings of all resistors it is at least as far up as the settings are', () => {
    fc.assert(
      fc.property(shared, fc.integer({ min: 1, max: 9 }), ([list, ohms], tenths) => {
        const t = new Fraction(tenths, 10);
        const other = list.map(({ id, from, to }, k) => part(id, from, to, ohms[k] ?? 1));
        const mixed = list.map((each, k) => {
          const value = ohmsOf(each)
            .mul(one.sub(t))
            .add(new Fraction(ohms[k] ?? 1).mul(t));
          return part(each.id, each.from, each.to, value);
        });
        const chord = between(list, 'a', 'b')
          .mul(one.sub(t))
          .add(between(other, 'a', 'b').mul(t));
        assert.ok(between(mixed, 'a', 'b').compare(chord) >= 0);
      }),
      { numRuns },
    );
  });

  it('in parallel is less than the smallest, in series more than the largest', () => {
    fc.assert(
      fc.property(fc.array(positive, { minLength: 2, maxLength: 8 }), (ohms) => {
        const sorted = ohms.map((value) => new Fraction(value)).sort((a, b) => a.compare(b));
        const side = ohms.map((value, k) => part(`R${k}`, 'a', 'b', value));
        const row = ohms.map((value, k) => part(`R${k}`, `n${k}`, `n${k + 1}`, value));
        assert.ok(between(side, 'a', 'b').compare(sorted[0] ?? NaN) < 0);
        assert.ok(between(row, 'n0', `n${ohms.length}`).compare(sorted.at(-1) ?? NaN) > 0);
      }),
      { numRuns },
    );
  });
});
