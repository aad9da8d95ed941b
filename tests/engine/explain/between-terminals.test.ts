import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain, lessons, workedSolution } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { assertInOrder, assertNothingIdle, assertReplays } from './replay.ts';
import { truthOf } from './truth.ts';

const between = (ohms: readonly (number | string)[]): string => {
  const [a, b, c, d, e] = ohms;
  return `(R1 ${a} Ω + @p + R2 ${b} Ω) ∥ (R3 ${c} Ω + @q + R4 ${d} Ω); R5 ${e} Ω @p–@q`;
};
const plain = (text: string): string => text.replaceAll('\u202f', ' ');

describe('a bridge between terminals', () => {
  const circuit = parseCircuit(between([1, 2, 3, 4, 5]));

  it('is driven by a supply that is thought of, whose p.d. over its current is the resistance', () => {
    const { steps, answer } = explain(circuit, { find: 'R_total' });
    assert.equal(answer?.value.toFraction(), solveExact(circuit).quantity('R_total')?.toFraction());
    assert.equal(plain(`${steps[0]?.gives} ${steps[0]?.text}`), 'E_B0 12.0 V');
    assert.equal(
      steps[0] && say(steps[0].why),
      'Think of a supply B0 between the terminals: its p.d. over its current is the resistance between them.',
    );
    assert.equal(steps.at(-1)?.rearranged, 'R_total = V_B0 ÷ I_B0');
  });

  it('shows as given what its line states, not what is thought of', () => {
    const { given } = workedSolution(circuit, solveExact(circuit), usualCourse, {
      of: 'R_total',
      given: '',
      lesson: '',
    });
    assert.deepEqual(given.map(plain), [
      'R_R1 = 1.00 Ω',
      'R_R2 = 2.00 Ω',
      'R_R3 = 3.00 Ω',
      'R_R4 = 4.00 Ω',
      'R_R5 = 5.00 Ω',
    ]);
  });

  it('needs Kirchhoff’s equations, and says so to a class without them', () => {
    const { status, reason } = explain(circuit, { find: 'R_total', course: lessons['14–16'] });
    assert.equal(status, 'not enough');
    assert.equal(
      reason && say(reason),
      'To find R_total, this rule is needed. Round the loop of R1, R2 and B0, the e.m.f.s together are as much as the p.d.s together.',
    );
  });

  it('what is series and parallel needs none', () => {
    const { steps } = explain(parseCircuit('R1 1 Ω + (R2 2 Ω ∥ R3 3 Ω)'), { find: 'R_total' });
    assert.ok(steps.every(({ rule }) => rule !== 'trial supply'));
  });

  it('is called by a number that is free', () => {
    const { steps } = explain(parseCircuit(between([1, 2, 3, 4, 5]).replace('R5', 'resistor B0')), {
      find: 'R_total',
    });
    assert.equal(steps[0]?.gives, 'E_B1');
  });
});

describe('whatever its resistances are', () => {
  it('a bridge has the resistance that the solver finds, and each step holds', () => {
    const ohms = fc.array(fc.constantFrom(1, 2, 3, 4, 6, 8, 12, 100), { minLength: 5, maxLength: 5 });
    fc.assert(
      fc.property(ohms, (all) => {
        const circuit = parseCircuit(between(all));
        const derivation = explain(circuit, { find: 'R_total' });
        assert.equal(
          derivation.answer?.value.toFraction(),
          solveExact(circuit).quantity('R_total')?.toFraction(),
        );
        assertInOrder(derivation, ['R_R1', 'R_R2', 'R_R3', 'R_R4', 'R_R5']);
        assertNothingIdle(derivation);
        const isThought = derivation.steps.some(({ rule }) => rule === 'trial supply');
        if (isThought)
          assertReplays(derivation, truthOf(parseCircuit(`B0 12 V + (${between(all).replace(';', ');')}`)));
      }),
      { numRuns: 100 },
    );
  });
});
