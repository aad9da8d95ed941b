import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, lessons, type Lesson } from '../../../src/engine/index.ts';
import { trialOf } from '../../../src/engine/explain/trial.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { assertInOrder, assertNothingIdle, assertReplays, statedNames } from './replay.ts';
import { truthOf } from './truth.ts';

const to16 = lessons['14–16'];
const plain = (text: string | undefined): string => (text ?? '').replaceAll('\u202f', ' ');

describe('a resistance in parallel without reciprocals', () => {
  const circuit = parseCircuit('B1 12 V + R1 4 Ω + (R2 6 Ω ∥ R3 3 Ω)');
  it('is found by a p.d. that is only thought of: currents that add up', () => {
    const [step] = explain(circuit, { find: 'I_B1', course: to16 }).steps;
    assert.equal(
      step && say(step.why),
      'Think of one p.d. across R2 and R3 side by side: their currents add up, and the p.d. over the whole current is their resistance together.',
    );
    assert.equal(step?.equation, 'R_(R2∥R3) = V_(R2∥R3) ÷ (V_(R2∥R3) ÷ R_R2 + V_(R2∥R3) ÷ R_R3)');
    assert.equal(plain(step.substituted), 'R_(R2∥R3) = 6.00 V ÷ (6.00 V ÷ 6.00 Ω + 6.00 V ÷ 3.00 Ω)');
    assert.equal(plain(step.text), '2.00 Ω');
  });
  it('only where the real p.d. is not known', () => {
    const straight = parseCircuit('B1 12 V + (R2 6 Ω ∥ R3 3 Ω)');
    for (const find of ['I_B1', 'R_total'])
      assert.ok(explain(straight, { find, course: to16 }).steps.every(({ rule }) => rule !== 'trial p.d.'));
  });
  it('never in a class that has reciprocals', () => {
    const { steps } = explain(circuit, { find: 'I_B1' });
    assert.ok(steps.some(({ rule }) => rule === 'resistances in parallel'));
    assert.ok(steps.every(({ rule }) => rule !== 'trial p.d.'));
  });
  it('not backwards: that rule is missed', () => {
    const given = { R_total: '6', R_R1: '4', R_R2: '6' };
    const { reason } = explain(circuit, { find: 'R_R3', given, course: to16 });
    assert.match(reason ? say(reason) : '', /this rule is needed.*reciprocals/);
  });
  it('nor in a class that leaves it out', () => {
    const course: Lesson = { ...to16, without: [...(to16.without ?? []), 'trial p.d.'] };
    assert.equal(explain(circuit, { find: 'I_B1', course }).reason?.code, 'needs a rule');
  });
  for (const line of [
    'B1 12 V + R1 4 Ω + (R2 6 Ω ∥ R3 3 Ω)',
    'B1 6 V + (R1 2 Ω ∥ R2 3 Ω ∥ R3 6 Ω) + R4 5 Ω',
    'B1 9 V + R1 1 Ω + (R2 4.7 Ω ∥ R3 33 Ω) + A1',
    'B1 12 V + ((R1 2 Ω + R2 4 Ω) ∥ R3 3 Ω) + R4 1 Ω',
    'B1 12 V + (R1 1 kΩ ∥ R2 1.5 kΩ) + (R3 2 Ω ∥ R4 2 Ω)',
  ])
    it(`${line}: every current and p.d.`, () => {
      const branched = parseCircuit(line);
      for (const { id } of branched.components)
        for (const find of [`I_${id}`, ...(id === 'A1' ? [] : [`V_${id}`])]) {
          const derivation = explain(branched, { find, course: to16 });
          const same = explain(branched, { find });
          assert.equal(derivation.answer?.value.toFraction(), same.answer?.value.toFraction(), find);
          assertReplays(derivation, truthOf(branched));
          assertInOrder(derivation, statedNames(branched));
          assertNothingIdle(derivation);
        }
    });
});

it('the p.d. thought of makes easy currents where there are some', () => {
  const of = (...ohms: readonly (string | number)[]): string =>
    trialOf(ohms.map((one) => new Fraction(one))).toFraction();
  assert.equal(of(6, 3), '6');
  assert.equal(of(4, 6), '12');
  assert.equal(of(1000, 1500), '3');
  assert.equal(of('0.5', '0.2'), '1');
  assert.equal(of('4.7', 33), '12');
  assert.equal(of(2, 3, 6), '6');
  assert.equal(of(8, 9, 5), '36');
});
