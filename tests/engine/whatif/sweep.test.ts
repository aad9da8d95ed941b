import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  CircuitFormatError,
  Fraction,
  parseCircuit,
  solveExact,
  sweep,
  withValue,
  type Circuit,
} from '../../../src/engine/index.ts';

const ohms = fc.integer({ min: 1, max: 99 });
const names = ['I_R1', 'V_R2', 'P_R1', 'P_B1', 'I_A1', 'R_total', 'R_loop', 'P_dissipated'];

/** A control in series with a pair side by side, on a battery with resistance inside; nothing states a range. */
const circuitOf = (a: number, b: number, c: number, inside: number): Circuit =>
  parseCircuit(`B1 9 V r ${inside} Ω + A1 + R1 ${a} Ω + (R2 ${b} Ω ∥ R3 ${c} Ω)`);

/** The same with one thing set by hand. */
function at(circuit: Circuit, what: string, value: Fraction): Circuit {
  if (what === 'r_B1') return withValue(circuit, 'B1', `r ${value.toFraction()}`);
  return withValue(circuit, what, value);
}

const near = (found: number, exact: number, about: string): void =>
  assert.ok(
    Math.abs(found - exact) <= 1e-12 * Math.max(1e-3, Math.abs(exact)),
    `${about}: ${found}, not ${exact}`,
  );

describe('a sweep over a span', () => {
  it('has at each of its settings what solving exactly has there, whatever is varied', () => {
    fc.assert(
      fc.property(
        fc.tuple(ohms, ohms, ohms, fc.integer({ min: 1, max: 9 })),
        fc.constantFrom('R1', 'R3', 'B1', 'r_B1'),
        fc.integer({ min: 1, max: 40 }),
        fc.integer({ min: 1, max: 60 }),
        ([a, b, c, inside], what, from, more) => {
          const circuit = circuitOf(a, b, c, inside);
          const { settings, values } = sweep(
            circuit,
            what,
            { from, to: from + more, points: more + 1 },
            names,
          );
          assert.deepEqual(
            settings.map((setting) => Math.round(setting * 1e9) / 1e9),
            Array.from({ length: more + 1 }, (_, k) => from + k),
          );
          for (const k of [0, Math.floor(more / 2), more]) {
            const exact = solveExact(at(circuit, what, new Fraction(from + k)));
            for (const name of names)
              near(
                values[name]?.[k] ?? NaN,
                Number(exact.quantity(name)),
                `${name} with ${what} at ${from + k}`,
              );
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  it('goes from one end to the other in equal steps, or in equal ratios', () => {
    const end = fc.double({ min: 1e-3, max: 1e6, noNaN: true });
    const points = fc.integer({ min: 2, max: 200 });
    const circuit = parseCircuit('B1 6 V + R1 5 Ω + R2 3 Ω');
    fc.assert(
      fc.property(end, end, points, fc.boolean(), (from, to, count, evenInRatio) => {
        const span = { from, to, points: count };
        const { settings } = sweep(circuit, 'R1', evenInRatio ? { ...span, scale: 'log' } : span, ['I_R1']);
        assert.equal(settings.length, count);
        assert.deepEqual([settings[0], settings.at(-1)], [from, to]);
        const gaps = settings
          .slice(1)
          .map((setting, k) =>
            evenInRatio ? setting / (settings[k] ?? NaN) : setting - (settings[k] ?? NaN),
          );
        const gap = evenInRatio ? (to / from) ** (1 / (count - 1)) : (to - from) / (count - 1);
        const slack = evenInRatio ? gap * 1e-9 : 1e-9 * Math.max(from, to);
        for (const each of gaps) assert.ok(Math.abs(each - gap) <= slack, `${each}, not ${gap}`);
      }),
    );
  });

  it('may run downwards', () => {
    const circuit = parseCircuit('B1 6 V + R1 5 Ω + R2 3 Ω');
    const up = sweep(circuit, 'R1', { from: 1, to: 9, points: 9 }, ['I_R1']);
    const down = sweep(circuit, 'R1', { from: 9, to: 1, points: 9 }, ['I_R1']);
    assert.deepEqual(down.settings, up.settings.toReversed());
    assert.deepEqual(down.values['I_R1'], up.values['I_R1']?.toReversed());
  });

  it('has at least both ends, and no more settings than anyone can look at', () => {
    const circuit = parseCircuit('B1 6 V + R1 5 Ω');
    const count = (points: number): number =>
      sweep(circuit, 'R1', { from: 1, to: 2, points }, ['I_R1']).settings.length;
    assert.deepEqual([-5, 0, 1, 2, 2.4, 101, 1e9].map(count), [2, 2, 2, 2, 2, 101, 10_000]);
  });

  it('goes beyond the range of a slider where a span says so, and leaves the circuit as it is', () => {
    const circuit = parseCircuit('B1 6 V + R1 [4..40] 12 Ω');
    const before = JSON.stringify(circuit, (_, value: unknown) =>
      typeof value === 'bigint' ? `${value}` : value,
    );
    const { values } = sweep(circuit, 'R1', { from: 1, to: 1000, points: 2 }, ['I_R1']);
    assert.deepEqual(
      values['I_R1']?.map((value) => value?.toPrecision(6)),
      ['6.00000', '0.00600000'],
    );
    assert.equal(
      JSON.stringify(circuit, (_, value: unknown) => (typeof value === 'bigint' ? `${value}` : value)),
      before,
    );
  });
});

describe('a sweep says what it cannot do', () => {
  const plain = parseCircuit('B1 6 V + R1 5 Ω + L1 3 Ω');
  it('without a span, of what has no range', () => {
    for (const what of ['R1', 'B1', 'r_B1', 'L1'])
      assert.throws(
        () => sweep(plain, what, undefined, ['I_R1']),
        new RegExp(`^RangeError: ${what} has no range`),
      );
  });

  it('of what is not there, or cannot be varied', () => {
    const span = { from: 1, to: 2 };
    assert.throws(() => sweep(plain, 'R9', span, ['I_R1']), CircuitFormatError);
    const without = (what: string) => () => sweep(plain, what, undefined, ['I_R1']);
    assert.throws(without('R9'), {
      name: 'RangeError',
      message: 'There is no R9 in this circuit; did you mean R1?',
    });
    assert.throws(without('temprature'), /no temprature in this circuit; did you mean temperature\?/);
    const curved = parseCircuit('B1 6 V + R1 5 Ω + L1 6 V 3 W filament');
    assert.throws(() => sweep(curved, 'L1', span, ['I_R1']), CircuitFormatError);
    assert.throws(() => sweep(plain, 'R1', { from: -2, to: -1 }, ['I_R1']), CircuitFormatError);
  });

  it('in even ratios from 0, which they never leave, or to 0 or below, which they never reach', () => {
    for (const [from, to] of [
      [0, 40],
      [40, 0],
      [-1, 4],
    ] as const)
      assert.throws(() => sweep(plain, 'B1', { from, to, scale: 'log' }, ['I_R1']), {
        name: 'RangeError',
        message: `Even ratios lead from above 0 to above 0, not from ${from} to ${to}.`,
      });
  });

  it('a quantity that has no value has none at that setting', () => {
    const { values } = sweep(parseCircuit('B1 6 V + R1 5 Ω'), 'R1', { from: 0, to: 2, points: 3 }, [
      'I_R1',
      'R_R1',
    ]);
    assert.deepEqual(
      values['I_R1']?.map((value) => value !== undefined),
      [false, true, true],
    );
    assert.deepEqual(values['R_R1']?.slice(1), [1, 2]);
  });

  it('of a quantity that does not exist, of a switch, or from no number, says why not', () => {
    const circuit = parseCircuit('B1 6 V + S1 + R1 5 Ω');
    const span = { from: 1, to: 2 };
    const refused = (what: string, over: typeof span, names: readonly string[], message: string): void => {
      assert.throws(() => sweep(circuit, what, over, names), { name: 'RangeError', message });
    };
    refused('R1', span, ['I_R1', 'I_R9'], '“I_R9” is not a quantity of this circuit; did you mean I_R1?');
    refused('S1', span, ['I_R1'], 'S1 is open or closed, and has no range.');
    refused(
      'R1',
      { from: NaN, to: 2 },
      ['I_R1'],
      '"NaN" is not a number that can be read; write 4.7 or 1/3.',
    );
  });

  it('goes over all temperatures and lights that there may be, and along the resistance of a meter', () => {
    const warm = sweep(parseCircuit('B1 6 V + T1 4 kΩ + R2 5 kΩ'), 'temperature', undefined, ['V_T1']);
    assert.ok((warm.settings[0] ?? 0) < 0 && (warm.settings.at(-1) ?? 0) >= 100);
    const loaded = parseCircuit('B1 6 V + R1 10 kΩ + R2 10 kΩ; V1 across R2');
    const span = { from: 5000, to: 20_000, points: 2 };
    assert.deepEqual(sweep(loaded, 'V1', span, ['V_V1']).values['V_V1'], [1.5, 2.4]);
  });
});
