import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { sidesOf } from './equation.ts';
import { driven, told } from './random-circuit.ts';
import { assertDirect, assertInOrder, assertNothingIdle, assertReplays, statedNames } from './replay.ts';
import { truthOf } from './truth.ts';

/** What need not be said: that what only joins has no resistance. */
const silent = ({ components }: Circuit): readonly string[] =>
  components.filter(({ kind }) => kind === 'ammeter' || kind === 'switch').map(({ id }) => `R_${id}`);

describe('every step holds on the solution', () => {
  it('of random circuits, from what their line states', () => {
    fc.assert(
      fc.property(driven, fc.nat(), (circuit, pick) => {
        const names = [...told(circuit).keys()];
        const find = names[pick % names.length] ?? '';
        const derivation = explain(circuit, { find });
        if (!/^[REr]_[A-Z]/.test(find)) assert.equal(derivation.status, 'found', find);
        assertReplays(derivation, truthOf(circuit));
        assertInOrder(derivation, statedNames(circuit));
        assertNothingIdle(derivation);
        assertDirect(derivation);
      }),
      { numRuns: 300 },
    );
  });

  it('of random circuits, from any readings that are enough', () => {
    let found = 0;
    const runs = 600;
    fc.assert(
      fc.property(
        driven,
        fc.nat(),
        fc.array(fc.nat(), { minLength: 2, maxLength: 12 }),
        (circuit, pick, picks) => {
          const all = [...told(circuit)];
          const [find = ''] = all[pick % all.length] ?? [];
          const given = Object.fromEntries(
            picks.flatMap((one) => {
              const reading = all[one % all.length];
              return reading && reading[0] !== find ? [reading] : [];
            }),
          );
          const derivation = explain(circuit, { given, find });
          assert.notEqual(derivation.status, 'contradiction', 'readings of one circuit agree');
          if (derivation.status === 'found') found += 1;
          assertReplays(derivation, truthOf(circuit));
          assertInOrder(derivation, [...Object.keys(given), ...silent(circuit)]);
          assertNothingIdle(derivation);
          assertDirect(derivation);
        },
      ),
      { numRuns: runs },
    );
    assert.ok(found > runs / 6, `only ${found} of ${runs} were enough`);
  });

  it('with a time: energy and charge', () => {
    const circuit = parseCircuit('B1 6 V r 0.5 Ω + R1 12 Ω + R2 2.5 Ω');
    const given = { E_B1: 6, r_B1: '0.5', R_R1: 12, R_R2: '2.5', t: 90 };
    for (const find of ['W_R1', 'Q_R1', 'W_B1', 'Q_R2']) {
      const derivation = explain(circuit, { given, find });
      assert.equal(derivation.status, 'found', find);
      assertReplays(derivation, truthOf(circuit, 90));
      assertInOrder(derivation, Object.keys(given));
    }
  });
});

describe('a replay notices', () => {
  const circuit = parseCircuit('B1 12 V + R1 4 Ω + R2 2 Ω');
  const good = explain(circuit, { find: 'V_R2' });
  const spoilt = (change: (step: (typeof good.steps)[number]) => object): typeof good => ({
    ...good,
    steps: good.steps.map((step) => ({ ...step, ...change(step) })),
  });
  const replays = (derivation: typeof good) => () => {
    assertReplays(derivation, truthOf(circuit));
    assertInOrder(derivation, statedNames(circuit));
    assertNothingIdle(derivation);
    assertDirect(derivation);
  };
  it('nothing where nothing is wrong', () => {
    assert.doesNotThrow(replays(good));
  });
  it('a wrong sign, a wrong number, a wrong text', () => {
    assert.throws(replays(spoilt(({ equation }) => ({ equation: equation.replace('+', '−') }))));
    assert.throws(
      replays(spoilt(({ substituted }) => ({ substituted: substituted.replace('12.0', '12.9') }))),
    );
    assert.throws(replays(spoilt(({ text }) => ({ text: text.replace(/^\d/, '3') }))));
  });
  it('steps in the wrong order, twice, or of no use', () => {
    assert.throws(replays({ ...good, steps: good.steps.toReversed() }));
    assert.throws(replays({ ...good, steps: [...good.steps, ...good.steps] }));
    const { steps } = explain(circuit, { find: 'P_R1' });
    assert.throws(replays({ ...good, steps: [...steps, ...good.steps.slice(-1)] }));
  });
  it('what is no equation', () => {
    for (const text of [
      'V_R1',
      'V_R1 = ',
      '√(4.00\u202fV = 2',
      '(1.00\u202fV = 1.00\u202fV',
      'V_R1 = 1.00\u202fV 2',
    ])
      assert.throws(() => sidesOf(text, () => ({ value: 1, error: 0 })), text);
  });
});
