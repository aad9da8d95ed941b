import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { lacks } from './lacks.ts';

describe('what is not enough, and what disagrees, is said', () => {
  it('of more than forty questions', () => {
    assert.ok(lacks.length >= 44, `${lacks.length}`);
    assert.equal(new Set(lacks.map((lack) => JSON.stringify(lack))).size, lacks.length);
  });
  for (const { line, find, said, ...question } of lacks)
    it(`${find} of ${line}: ${said}`, () => {
      const { status, reason, steps, hints, answer } = explain(parseCircuit(line), { find, ...question });
      assert.equal(reason ? say(reason) : status, said);
      assert.equal(status, said.endsWith('disagree.') ? 'contradiction' : 'not enough');
      assert.deepEqual([steps, hints, answer], [[], [], undefined]);
    });
});

describe('a reading is as near as it was written', () => {
  const series = parseCircuit('B1 6 V + R1 1 Ω + R2 1 Ω');
  const status = (given: Readonly<Record<string, string | number>>, find = 'P_R1'): string =>
    explain(series, { find, given }).status;
  it('decimals agree within half of their last place', () => {
    assert.equal(status({ I_R1: '0.33', V_R1: '6', R_R1: '18' }), 'found');
    assert.equal(status({ I_R1: 0.33, V_R1: 6, R_R1: 18 }), 'found');
    assert.equal(status({ I_R1: '0.34', V_R1: '6', R_R1: '18' }), 'contradiction');
    assert.equal(status({ I_R1: '0.333', V_R1: '6', R_R1: '18' }), 'found');
    assert.equal(status({ I_R1: '0.330', V_R1: '6', R_R1: '18' }), 'contradiction');
  });
  it('whole numbers and ratios are exact', () => {
    assert.equal(status({ I_R1: '1/3', V_R1: '6', R_R1: '18' }), 'found');
    assert.equal(status({ I_R1: '33/100', V_R1: '6', R_R1: '18' }), 'contradiction');
    assert.equal(status({ I_R1: '2', V_R1: '6', R_R1: '4' }), 'contradiction');
  });
  it('also through several steps: three p.d.s as a school meter reads them', () => {
    // Common practice: 0.01 V steps. 1.5 V across three equal resistors reads 0.50 V each; across 1, 2 and 4 Ω 0.21, 0.43 and 0.86.
    const three = parseCircuit('B1 1.5 V + R1 1 Ω + R2 2 Ω + R3 4 Ω');
    const given = { E_B1: '1.50', V_R1: '0.21', V_R2: '0.43', V_R3: '0.86' };
    assert.equal(explain(three, { find: 'V_B1', given }).status, 'found');
    assert.equal(explain(three, { find: 'V_B1', given: { ...given, V_R1: '0.24' } }).status, 'contradiction');
  });
  it('a root that is no fraction agrees with what it was taken from', () => {
    const given = { P_R1: '5', R_R1: '3' };
    const { answer, steps } = explain(series, { find: 'I_R1', given });
    assert.equal(answer?.text, '1.29\u202fA');
    assert.deepEqual(
      steps.map(({ rearranged }) => rearranged),
      ['I_R1 = √(P_R1 ÷ R_R1)'],
    );
    assert.ok(Math.abs(Number(answer.value) - Math.sqrt(5 / 3)) < 1e-15);
    assert.equal(explain(series, { find: 'V_R1', given }).answer?.text, '3.87\u202fV');
    // Both ways to the p.d. are there: √(P R), and I R.
    assert.equal(explain(series, { find: 'V_R1', given: { ...given, I_R1: '1.29' } }).status, 'found');
  });
});
