import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { quantities, solveExact, track } from '../../../src/engine/solve/index.ts';
import {
  anyCircuit,
  numRuns,
  parts,
  resistor,
  circuit as circuitOf,
  spread,
  spreadCircuit,
} from './random-circuit.ts';
import { short } from './short.ts';

const untouched = -123;

/** How far what a tracker writes is from the exact readings, relative to the largest of the same kind. */
function error(circuit: Circuit, id: string, ohms: readonly number[]): number {
  const names = quantities(circuit);
  const tracker = track(circuit, id, names);
  const out = new Float64Array(names.length);
  let worst = 0;
  for (const setting of ohms) {
    const exact = solveExact(withValue(circuit, id, setting));
    out.fill(untouched);
    assert.equal(tracker.at(setting, out), exact.status === 'solved', `${setting} Ω`);
    const largest = new Map<string, number>();
    for (const name of names) {
      const size = Math.abs(Number(exact.quantity(name) ?? 0));
      largest.set(name.charAt(0), Math.max(size, largest.get(name.charAt(0)) ?? 0));
    }
    names.forEach((name, place) => {
      const truth = exact.quantity(name);
      const value = out[place] ?? NaN;
      // Without a value nothing is written, or for a power that no current makes, at most 0.
      if (!truth || exact.status === 'faulty') {
        assert.ok(value === untouched || value === 0, `no ${name}`);
        return;
      }
      const off = Math.abs(value - Number(truth));
      if (off > 0) worst = Math.max(worst, off / (largest.get(name.charAt(0)) ?? 0));
      if (Number.isNaN(off)) worst = NaN;
    });
  }
  return worst;
}

const settings = fc.array(
  fc.oneof(
    fc.constant(0),
    fc.integer({ min: 1, max: 400 }).map((k) => k / 10),
    fc.integer({ min: -5, max: 5 }).map((power) => 10 ** power),
  ),
  { minLength: 6, maxLength: 6 },
);

const some = [0, 1e-5, 0.5, 2, 7.3, 30, 1e5];

describe('a tracked resistor', () => {
  it('gives every quantity as the exact solution does, within 1e-15 of the largest', () => {
    fc.assert(
      fc.property(anyCircuit, settings, (circuit, ohms) => {
        const resistor = circuit.components.find(({ kind }) => kind === 'resistor');
        fc.pre(resistor !== undefined);
        assert.ok(error(circuit, resistor.id, ohms) <= 1e-15);
      }),
      { numRuns: numRuns / 2 },
    );
  });

  it('stays so when resistances are spread over a factor of more than 10¹⁰', () => {
    fc.assert(
      fc.property(spreadCircuit, settings, (circuit, ohms) => {
        const resistor = circuit.components.find(({ kind }) => kind === 'resistor');
        fc.pre(resistor !== undefined);
        assert.ok(error(circuit, resistor.id, ohms) <= 1e-15);
      }),
      { numRuns: numRuns / 2 },
    );
  });

  it('gives the total resistance of a network between its terminals', () => {
    fc.assert(
      fc.property(parts(resistor(), resistor(spread)), settings, (list, ohms) => {
        assert.ok(error(circuitOf(list, ['a', 'b']), 'R1', ohms) <= 1e-15);
        assert.ok(error(circuitOf(list, ['a', 'b']), 'R2', ohms) <= 1e-15);
      }),
      { numRuns: numRuns / 2 },
    );
  });

  for (const [what, circuit] of [
    ['in a chain', 'B1 a g 6; R1 a b 10; R2 b g 8'],
    ['in a branch', 'B1 a g 6 1/2; R1 a b 10; R2 a b 8; R3 b g 5'],
    ['straight across an ideal supply, a fault at 0 Ω', 'B1 a g 6; R1 a g 10; R2 a g 0.001'],
    ['across a real supply', 'B1 a g 6 0.1; R1 a g 10'],
    ['beside an ideal ammeter, which takes all', 'B1 a g 6; R1 a b 10; A1 a b; R2 b g 5'],
    ['on a dead end', 'B1 a g 6; R2 a g 8; R1 a b 10'],
    ['on a part of its own', 'B1 a g 6; R2 a g 8; R1 c d 10'],
    ['behind an open switch', 'B1 a g 6; S1 a b open; R1 b g 10; V1 a b'],
    ['in the middle of a balanced bridge', 'B1 a g 6; R2 a b 1; R3 b g 2; R4 a c 3; R5 c g 6; R1 b c 10'],
    ['in an arm of a bridge', 'B1 a g 6; R1 a b 10; R2 b g 2; R3 a c 3; R4 c g 6; A1 b c'],
    ['in series with a constant current', 'I1 a g 2; R1 a b 10; B1 g b 12'],
    ['alone across a constant current', 'I1 a g 1/2; R1 a g 10'],
    ['beside another across a constant current', 'I1 a g 1/2; R1 a g 10; R2 a g 30'],
    [
      'where it takes the difference of constant currents, a fault when open',
      'I1 a g 2; I2 b a 3; R1 a g 10; R2 b g 1000',
    ],
    ['between two supplies', 'B1 a g 6 1; R1 a b 10; B2 b g 4 2; R2 b g 30'],
    ['under a supply of 0 V', 'B1 a g 0 1; R1 a b 10; R2 b g 4'],
    ['beside a short circuit elsewhere', 'B1 a g 6; W1 a g; R1 a g 10'],
    [
      'where its short takes the current from an undetermined share',
      'B1 b a 6 1; R2 b d 1; R1 a d 9; A1 a e; W1 a e; R3 e d 1',
    ],
    ['by itself between terminals', 'R1 a b 10; ends a b'],
    ['in a network without a path', 'R1 a b 10; R2 c d 5; ends a c'],
  ] as const) {
    it(`${what}: the same at every setting`, () => assert.ok(error(short(circuit), 'R1', some) <= 1e-15));
  }

  it('is exact where it is shorted, and tends to what it is when open', () => {
    const circuit = short('B1 a g 6; R1 a b 10; R2 a b 8; R3 b g 4');
    const out = new Float64Array(2);
    const tracker = track(circuit, 'R1', ['I_R1', 'V_R1']);
    tracker.at(0, out);
    assert.deepEqual([...out], [1.5, 0]);
    tracker.at(1e30, out);
    assert.ok(Math.abs((out[0] ?? NaN) / 4e-30 - 1) < 1e-15);
    assert.equal(out[1], 4);
  });

  it('writes nothing for what is no resistance', () => {
    const tracker = track(short('B1 a g 6; R1 a g 10'), 'R1', ['I_R1']);
    const out = Float64Array.of(untouched);
    for (const setting of [NaN, -1, Infinity, -Infinity]) assert.equal(tracker.at(setting, out), false);
    assert.deepEqual([...out], [untouched]);
  });

  it('leaves a quantity that has no value as it is', () => {
    const circuit = short('B1 a g 6; R1 a g 10; V1 c d; B2 e f 2; R2 e f 1');
    const names = ['I_R1', 'V_V1', 'R_total', 'nonsense', 'R_V1'];
    const out = new Float64Array(names.length).fill(untouched);
    assert.equal(track(circuit, 'R1', names).at(3, out), true);
    assert.deepEqual([...out], [2, untouched, untouched, untouched, untouched]);
  });

  it('writes a quantity that is asked twice in both places', () => {
    const names = ['R_R1', 'P_R1', 'R_loop', 'R_R1', 'P_R1', 'R_loop'];
    const out = new Float64Array(names.length);
    assert.ok(track(short('B1 a g 6 1; R1 a g 10'), 'R1', names).at(2, out));
    assert.deepEqual([...out], [2, 8, 3, 2, 8, 3]);
  });

  it('gives the whole solution for a setting', () => {
    const tracker = track(short('B1 a g 6; R1 a g 10'), 'R1', []);
    assert.equal(tracker.solution(4).current('R1'), 1.5);
    assert.throws(() => tracker.solution(-4), { name: 'CircuitFormatError' });
  });

  it('a step allocates nothing, whichever circuit it is a step in', () => {
    const followed = [
      'B1 a g 6 1/2; A1 a p; R1 p q 12; R2 p q 8; R3 q g 3; V1 q g',
      'B1 a g 6; R1 a g 10; R2 a g 0.001',
      'I1 a g 2; R1 a b 10; B1 g b 12',
      'I1 a g 1/2; R1 a g 10; R2 a g 30',
    ].map((text) => {
      const circuit = short(text);
      const names = quantities(circuit);
      return { text, tracker: track(circuit, 'R1', names), out: new Float64Array(names.length) };
    });
    // Whole numbers of ohms, which are no objects themselves.
    const grownBy = ({ tracker, out }: (typeof followed)[number]): number => {
      const before = process.memoryUsage().heapUsed;
      for (let step = 0; step < 2000; step++) tracker.at(1 + (step % 80), out);
      return process.memoryUsage().heapUsed - before;
    };
    // So few steps at a time that rubbish is hardly ever taken away among them: the middle one of many times is without that.
    const rounds = Array.from({ length: 500 }, () => followed.map(grownBy)).slice(-101);
    followed.forEach(({ text }, at) => {
      const grown = rounds.map((round) => round[at] ?? NaN).sort((a, b) => a - b);
      // A number a step would be 24,000 bytes or more.
      assert.ok((grown[50] ?? NaN) < 2000, `${grown[50]} bytes in 2000 steps of ${text}`);
    });
  });
});
