import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { claimNow, parseCircuit, testClaim, turnable, unset, withValue } from '../../../src/engine/index.ts';
import { table } from './verdicts.ts';

const line = 'B1 6 V r [0..2] 1 Ω + S1 closed + (R1 [2..40] 12 Ω ∥ R2 6 Ω)';
const circuit = parseCircuit(line);

describe('a claim as the circuit is set', () => {
  const rows = [
    ['V_R1 = 2 V_R2', false, '24/5', '48/5', 'V'],
    ['2 = V_R1', false, '2', '24/5', 'V'],
    ['R_R1 / R_R2 = 2', true, '2', '2', ''],
    ['V_R1² / R_R1 ≤ 2 W', true, '48/25', '2', 'W'],
    ['V_B1 = E_B1 − I_B1 r_B1', true, '24/5', '24/5', 'V'],
    ['I_R1 + I_R2 = I_B1', true, '6/5', '6/5', 'A'],
    ['I_R1 < 0.4', false, '2/5', '2/5', 'A'],
    ['2 > 3', false, '2', '3', ''],
    ['R_total ≥ 4 Ω', true, '4', '4', 'Ω'],
    ['V_R1 V_R1 > 20', true, '576/25', '20', 'V²'],
  ] as const;
  for (const [text, holds, left, right, unit] of rows)
    it(text, () => {
      const now = claimNow(circuit, text);
      assert.deepEqual(
        [now?.holds, now?.left.toFraction(), now?.right.toFraction(), now?.unit],
        [holds, left, right, unit],
      );
    });

  it('has none where a quantity has no value, and where it is not understood', () => {
    assert.equal(claimNow(withValue(circuit, 'S1', 'open'), 'R_total > 0'), undefined);
    for (const text of ['', 'V_R1', 'V_R9 = 1', 'V_R1 = I_R1', 'x'.repeat(600)])
      assert.equal(claimNow(circuit, text), undefined, text);
  });

  it('holds at every setting, or at none, as the verdict says', () => {
    for (const [text, claims] of Object.entries(table))
      for (const [claim, verdict] of claims) {
        const now = claimNow(parseCircuit(text), claim);
        if (now && verdict !== 'sometimes') assert.equal(now.holds, verdict === 'always', claim);
      }
  });

  it('fails with as little turned as may be', () => {
    const both = parseCircuit('B1 [1..12] 6 V r [0..2 step 0.1] 1 Ω + S1 closed + R1 [2..40] 5 Ω');
    assert.deepEqual(testClaim(both, 'I_R1 ≠ 0').counterexample, { B1: '6 r 1', S1: 'open', R1: '5' });
    // At 12 V without anything inside it needs 4 Ω; with any one of these as it was, it would hold.
    const { counterexample = {} } = testClaim(both, 'I_R1 < 3 A');
    assert.deepEqual(counterexample, { B1: '12 r 0', S1: 'closed', R1: '4' });
    const at = Object.entries(counterexample).reduce((to, [id, setting]) => withValue(to, id, setting), both);
    for (const [id, setting] of [
      ['B1', '6 r 0'],
      ['B1', '12 r 1'],
      ['R1', '5'],
    ] as const) {
      const there = withValue(at, id, setting);
      assert.equal(claimNow(there, 'I_R1 < 3 A')?.holds, true, `${id} ${setting}`);
    }
  });

  it('fails at the settings that are given against it', () => {
    for (const [text, claims] of Object.entries(table))
      for (const [claim] of claims) {
        const { counterexample = {} } = testClaim(parseCircuit(text), claim);
        const there = Object.entries(counterexample).reduce(
          (at, [id, setting]) => withValue(at, id, setting),
          parseCircuit(text),
        );
        if (Object.keys(counterexample).length > 0) assert.equal(claimNow(there, claim)?.holds, false, claim);
      }
  });
});

describe('what can be turned', () => {
  it('is named once', () => {
    assert.deepEqual(turnable(circuit), ['B1', 'S1', 'R1']);
    assert.deepEqual(turnable(parseCircuit('B1 6 V + R1 4 Ω')), []);
  });

  it('unset, all settings of a circuit are one', () => {
    const setting = fc.record({
      R1: fc.integer({ min: 2, max: 40 }).map(String),
      S1: fc.constantFrom('open', 'closed'),
      B1: fc.constantFrom('r 0', 'r 0.5', 'r 2'),
    });
    fc.assert(
      fc.property(setting, (settings) => {
        const set = Object.entries(settings).reduce((at, [id, value]) => withValue(at, id, value), circuit);
        assert.equal(unset(set), unset(circuit));
      }),
    );
  });

  it('unset, what is done to a component is left', () => {
    const broken = withValue(circuit, 'R2', 'broken');
    assert.notEqual(unset(broken), unset(circuit));
  });
});
