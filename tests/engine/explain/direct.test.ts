import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';

/** The steps to a quantity, as they are written. */
const steps = (line: string, find: string, given?: Record<string, string>): readonly string[] =>
  explain(parseCircuit(line), { find, ...(given && { given }) }).steps.map(
    ({ rearranged, about }) => `${rearranged} (${about.join(' ')})`,
  );

describe('what is the same is the same at once', () => {
  it('a current along a path, not by way of the supply’s', () => {
    assert.deepEqual(steps('B1 3 V + R2 22 Ω + A1 + R1 8 Ω', 'R_R1', { V_R1: '0.8', I_A1: '0.1' }), [
      'I_R1 = I_A1 (R1 A1)',
      'R_R1 = V_R1 ÷ I_R1 (R1)',
    ]);
  });

  it('a p.d. from branch to branch', () => {
    assert.deepEqual(steps('B1 6 V + (R1 4 Ω ∥ R2 3 Ω ∥ R3 6 Ω)', 'V_R3', { V_R1: '6' }), [
      'V_R3 = V_R1 (R3 R1)',
    ]);
  });

  it('turned round where one is counted the other way', () => {
    const [step] = explain(parseCircuit('B1 3 V + R2 2 Ω reversed + R1 8 Ω'), {
      find: 'I_R2',
      given: { I_R1: '0.3' },
    }).steps;
    assert.equal(step?.rearranged, 'I_R2 = −I_R1');
    assert.equal(step.text, '−0.300\u202fA');
  });

  it('read from left to right: no equation is only swapped', () => {
    const { steps: found } = explain(parseCircuit('B1 6 V + A1 + R1 4 Ω'), {
      find: 'I_R1',
      given: { I_A1: '1.5' },
    });
    assert.deepEqual(
      found.map(({ equation, rearranged }) => [equation, rearranged]),
      [['I_R1 = I_A1', 'I_R1 = I_A1']],
    );
  });

  it('but a p.d. that is the e.m.f. is one by another rule, and stays a step of its own', () => {
    assert.deepEqual(steps('B1 6 V + (R1 4 Ω ∥ R2 3 Ω)', 'V_R2'), [
      'V_B1 = E_B1 (B1)',
      'V_R2 = V_B1 (B1 R2)',
    ]);
  });
});

describe('what adds up is called by what is read', () => {
  const quay = 'B1 6 V + A1 + ((A2 + L1 12 Ω) ∥ (A3 + L2 24 Ω))';

  it('two meters in branches and one in the line: one step', () => {
    assert.deepEqual(steps(quay, 'I_A1', { I_A2: '0.50', I_A3: '0.25' }), ['I_A1 = I_A2 + I_A3 (L1 L2)']);
  });

  it('backwards too', () => {
    assert.deepEqual(
      steps(quay, 'I_A3', { I_A1: '0.75', I_A2: '0.50' }).at(-1),
      'I_A3 = I_A1 − I_A2 (L1 L2)',
    );
  });

  it('voltmeters along a path', () => {
    const path = 'B1 9 V + L1 12 Ω + L2 6 Ω; V1 across L1; V2 across L2';
    assert.deepEqual(steps(path, 'E_B1', { V_V1: '6', V_V2: '3' }).at(0), 'V_B1 = V_V1 + V_V2 (L1 L2)');
  });

  it('a resistance from the two meters beside and before it', () => {
    const bench = 'B1 6 V + A1 + (R1 15 Ω ∥ V1)';
    assert.deepEqual(steps(bench, 'R_R1', { V_V1: '6.0', I_A1: '0.40' }), [
      'V_R1 = V_V1 (V1 R1)',
      'I_R1 = I_A1 (R1 A1)',
      'R_R1 = V_R1 ÷ I_R1 (R1)',
    ]);
  });

  it('no current from no power, and no p.d.', () => {
    const given = { P_R1: '0', R_R1: '5' };
    assert.deepEqual(steps('B1 0 V + R1 5 Ω', 'I_R1', given), ['I_R1 = √(P_R1 ÷ R_R1) (R1)']);
    assert.deepEqual(steps('B1 0 V + R1 5 Ω', 'V_R1', given), ['V_R1 = √(P_R1 × R_R1) (R1)']);
  });
});
