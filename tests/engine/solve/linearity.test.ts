import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { anything, circuit, driver, numRuns, parts, positive, type Part } from './random-circuit.ts';

const anyParts = parts(driver(), anything());
/** What drives a circuit. */
const drives = ['emf', 'current'];
const isDriver = ({ kind }: Part): boolean => kind === 'supply' || kind === 'source';

/** A part with the values in some of its fields replaced. */
function changed(part: Part, fields: readonly string[], change: (value: Fraction) => Fraction): Part {
  const values = fields.flatMap((field) => {
    const value = part[field];
    return typeof value === 'string' ? [[field, change(new Fraction(value)).toFraction()] as const] : [];
  });
  return { ...part, ...Object.fromEntries(values) };
}

const times = (list: readonly Part[], fields: readonly string[], factor: string): Part[] =>
  list.map((part) => changed(part, fields, (value) => value.mul(factor)));

/** Tries a law on random circuits that have an answer. */
function always(law: (list: Part[], solution: ExactSolution) => void): void {
  fc.assert(
    fc.property(anyParts, (list) => {
      const solution = solveExact(circuit(list));
      fc.pre(solution.status === 'solved');
      law(list, solution);
    }),
    { numRuns: 2 * numRuns, maxSkipsPerRun: 1000 },
  );
}

/** The p.d. or the current of two readings are in a ratio. */
const inRatio = (a: Fraction | undefined, b: Fraction | undefined, ratio: Fraction): boolean =>
  a === undefined || b === undefined ? a === b : a.equals(b.mul(ratio));

const one = new Fraction(1);

describe('linear circuits', () => {
  it('superposition: every current and p.d. is the sum of what each e.m.f. gives alone, and each constant current', () => {
    always((list, solution) => {
      const supplies = list.filter(isDriver);
      const alone = supplies.map(({ id }) =>
        solveExact(
          circuit(list.map((part) => (part.id === id ? part : changed(part, drives, () => new Fraction(0))))),
        ),
      );
      const total = (name: string): Fraction | undefined =>
        alone.reduce<Fraction | undefined>(
          (sum, one) => sum && one.quantity(name)?.add(sum),
          new Fraction(0),
        );
      // An ideal supply of 0 V may stand across another: then that one alone is a fault.
      fc.pre(alone.every(({ status }) => status === 'solved'));
      for (const { id } of list)
        for (const name of [`I_${id}`, `V_${id}`])
          assert.ok(inRatio(total(name), solution.quantity(name), one));
    });
  });

  it('but powers do not add: two equal e.m.f.s in series give four times the power of one alone', () => {
    const cell = (id: string, from: string, to: string, emf: string): Part => ({
      id,
      kind: 'supply',
      from,
      to,
      emf,
    });
    const power = (first: string, second: string): string | undefined =>
      solveExact(
        circuit([
          cell('B1', 'a', 'b', first),
          cell('B2', 'b', 'c', second),
          { id: 'R1', kind: 'resistor', from: 'a', to: 'c', resistance: '3' },
        ]),
      )
        .power('R1')
        ?.toFraction();
    assert.equal(power('3', '0'), '3');
    assert.equal(power('3', '3'), '12');
  });

  it('scaling: all resistances k times, the currents are divided by k and the p.d.s stay', () => {
    fc.assert(
      fc.property(anyParts, positive, (list, k) => {
        // Lamps are written by their ratings: k times the resistance is the same voltage at 1/k of the power.
        const scaled = times(
          times(list, ['resistance', 'internalResistance'], k),
          ['ratedPower', 'current'],
          new Fraction(k).inverse().toFraction(),
        );
        const [before, after] = [solveExact(circuit(list)), solveExact(circuit(scaled))];
        assert.equal(after.status, before.status);
        for (const { id } of list) {
          assert.ok(inRatio(before.current(id), after.current(id), new Fraction(k)));
          assert.ok(inRatio(after.voltage(id), before.voltage(id), one));
        }
        assert.ok(inRatio(after.totalResistance(), before.totalResistance(), new Fraction(k)));
      }),
      { numRuns },
    );
  });

  it('scaling: all e.m.f.s k times, currents and p.d.s are k times and powers k² times, with constant currents k times', () => {
    fc.assert(
      fc.property(anyParts, positive, (list, k) => {
        const [before, after] = [solveExact(circuit(list)), solveExact(circuit(times(list, drives, k)))];
        assert.equal(after.status, before.status);
        for (const { id } of list) {
          assert.ok(inRatio(after.current(id), before.current(id), new Fraction(k)));
          assert.ok(inRatio(after.voltage(id), before.voltage(id), new Fraction(k)));
          assert.ok(inRatio(after.power(id), before.power(id), new Fraction(k).mul(k)));
        }
      }),
      { numRuns },
    );
  });

  it('reversing every e.m.f. reverses every current, with every constant current reversed', () => {
    always((list, solution) => {
      const reversed = solveExact(circuit(times(list, drives, '-1')));
      for (const { id } of list) assert.ok(inRatio(reversed.current(id), solution.current(id), one.neg()));
    });
  });

  it('names, the order of the components and which end of a resistor is `from` change nothing but signs', () => {
    fc.assert(
      fc.property(anyParts, fc.array(fc.nat(), { minLength: 26 }), (list, random) => {
        const renamed = list
          .map((part, k) => {
            const [draw = 0, key = 0] = random.slice(2 * k);
            return { part, turned: !isDriver(part) && draw % 2 === 1, key };
          })
          .sort((a, b) => a.key - b.key)
          .map(({ part, turned }) => {
            const [from, to] = turned ? [part.to, part.from] : [part.from, part.to];
            return {
              part,
              turned,
              as: { ...part, id: `X${part.id.slice(1)}`, from: `x${from}`, to: `x${to}` },
            };
          });
        const [before, after] = [solveExact(circuit(list)), solveExact(circuit(renamed.map(({ as }) => as)))];
        assert.equal(after.status, before.status);
        for (const { part, as, turned } of renamed) {
          const sign = turned ? one.neg() : one;
          assert.ok(inRatio(after.current(as.id), before.current(part.id), sign));
          assert.ok(inRatio(after.voltage(as.id), before.voltage(part.id), sign));
          assert.ok(inRatio(after.power(as.id), before.power(part.id), one));
        }
      }),
      { numRuns },
    );
  });
});
