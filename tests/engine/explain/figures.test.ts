import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, type Lesson } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { en, say, type Language } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';

const course: Lesson = { ...usualCourse, figures: 'as given' };
const answer = (line: string, find: string, given?: Record<string, string | number>): string =>
  (explain(parseCircuit(line), { find, course, ...(given && { given }) }).answer?.text ?? '').replace(
    '\u202f',
    ' ',
  );

describe('as many figures as what is given', () => {
  const cases: readonly (readonly [string, Record<string, string | number> | undefined, string])[] = [
    ['B1 12.0 V + R1 7.00 Ω', undefined, '1.71 A'],
    ['B1 12 V + R1 7.00 Ω', undefined, '1.7 A'],
    ['B1 12.00 V + R1 7.000 Ω', undefined, '1.714 A'],
    ['B1 6 V + R1 7.00 Ω', undefined, '0.86 A'],
    ['B1 12.00 V + R1 0.070 kΩ', undefined, '0.17 A'],
    ['B1 1 V + R1 1 Ω', { E_B1: '12.00', R_R1: '7.000' }, '1.714 A'],
    ['B1 1 V + R1 1 Ω', { E_B1: 12.5, R_R1: '0.0070' }, '1.8 kA'],
    ['B1 1 V + R1 1 Ω', { E_B1: '12.00', R_R1: '22/3' }, '1.636 A'],
    ['B1 1 V + R1 1 Ω', { E_B1: '12.00', R_R1: '7.000', r_B1: '0' }, '1.714 A'],
    ['B1 1 V + R1 1 Ω', { E_B1: '12/1', R_R1: '22/3' }, '1.64 A'],
  ];
  for (const [line, given, text] of cases)
    it(`${line}${given ? ` with ${JSON.stringify(given)}` : ''}: ${text}`, () => {
      assert.equal(answer(line, 'I_R1', given), text);
    });
  it('what is hidden says nothing', () => {
    const line = 'B1 12.0 V + R1 7 Ω hidden';
    assert.equal(explain(parseCircuit(line), { find: 'E_B1', course }).answer?.text, '12.0\u202fV');
  });
  it('in every step, also of equations', () => {
    const bridge = 'B1 24.0 V + ((R1 150 Ω + @l + R4 300 Ω) ∥ (R2 50 Ω + @q + R5 250 Ω)); R3 100 Ω @q–@l';
    const { steps } = explain(parseCircuit(bridge), { find: 'I_R3', course });
    assert.equal(steps.at(-1)?.text, '0.017\u202fA');
    assert.match(steps.at(2)?.text ?? '', /^24\u202fV = /);
  });
});

describe('the hints of a step', () => {
  const { hints, rungs, steps } = explain(parseCircuit('B1 6 V + R1 4 Ω + R2 8 Ω'), { find: 'I_R1' });
  it('are five, each saying more', () => {
    assert.deepEqual(
      hints.slice(0, 5).map((hint) => hint.replaceAll('\u202f', ' ')),
      [
        'Look at R1 and R2.',
        'R1 and R2 are in series: their resistances add up.',
        'R_total = R_R1 + R_R2',
        'R_total = 4.00 Ω + 8.00 Ω',
        'R_total = 12.0 Ω',
      ],
    );
    assert.equal(hints.length, 5 * steps.length);
  });
  it('are codes, so that another language can say them', () => {
    assert.deepEqual(
      rungs.map((rung) => say(rung)),
      hints,
    );
    const other: Language = {
      tag: 'de',
      sentences: { ...en.sentences, 'look at': ({ ids }) => `Sieh dir ${ids.join(' und ')} an.` },
    };
    assert.equal(rungs[0] && say(rungs[0], other), 'Sieh dir R1 und R2 an.');
  });
  it('are none where nothing is found', () => {
    const none = explain(parseCircuit('B1 6 V + R1 4 Ω'), { find: 'I_R1', given: {} });
    assert.deepEqual([none.hints, none.rungs], [[], []]);
  });
});
