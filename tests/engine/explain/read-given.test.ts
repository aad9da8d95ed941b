import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { readGiven } from '../../../src/engine/explain/read-given.ts';
import { readLesson, lessonWords } from '../../../src/engine/explain/read-lesson.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

const circuit = parseCircuit('B1 6 V + R1 3 Ω hidden + R2 2 Ω');
const has = (name: string): Fraction | undefined =>
  ({ R_R1: new Fraction(3), R_R2: new Fraction(2), I_R1: new Fraction(6, 5) })[name];
const given = (text: string): object => readGiven(circuit, has, text);

void describe('what is given is read', () => {
  const rows = [
    ['', {}],
    [' ; \n', {}],
    ['I_R1 = 0.5 A', { given: { I_R1: '0.5' } }],
    ['I_R1 = 0,50 A', { given: { I_R1: '0.50' } }],
    ['I_R1=450mA', { given: { I_R1: '0.450' } }],
    ['I_R1 = 1.2 kA', { given: { I_R1: '1200' } }],
    ['I_R1 = -2', { given: { I_R1: '-2' } }],
    ['R_R2 = 1/3 Ω', { given: { R_R2: '1/3' } }],
    ['R_R2 = 4k7', { given: { R_R2: '4700' } }],
    ['U_R1 = 3 V; E_B1 = 6.0 V', { given: { V_R1: '3', E_B1: '6.0' } }],
    ['t = 60 s; Q_R1 = 1,5 C; W_R1 = 9 J', { given: { t: '60', Q_R1: '1.5', W_R1: '9' } }],
    ['Pr_B1 = 2 W', { given: { Pr_B1: '2' } }],
    ['R_R2', { given: { R_R2: new Fraction(2) } }],
    ['I_R1; R_R2 = 2 Ω', { given: { I_R1: new Fraction(6, 5), R_R2: '2' } }],
    ['R_R1', { unread: 'R_R1' }],
    ['R_R9', { unread: 'R_R9' }],
    ['R_R2; I_R1 = lots', { unread: 'I_R1 = lots' }],
    ['I_R1 = 5 V', { unread: 'I_R1 = 5 V' }],
    ['I_R1 =', { unread: 'I_R1 =' }],
    ['= 5', { unread: '= 5' }],
    ['t = 1 hour', { unread: 't = 1 hour' }],
  ] as const;
  for (const [text, expected] of rows)
    void it(JSON.stringify(text), () => {
      assert.deepEqual(given(text), expected);
    });

  void it('every text comes to an end, as what is given or as what is not read', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const read = readGiven(circuit, has, text);
        assert.ok(!(read.given && read.unread !== undefined));
      }),
    );
  });
});

void describe('what a class may use is read', () => {
  void it('from words, each adding to what is left out', () => {
    assert.deepEqual(readLesson(''), { choice: { without: [], productOverSum: false }, unknown: [] });
    assert.deepEqual(readLesson('without-reciprocals product-over-sum').choice, {
      without: ['resistances in parallel'],
      productOverSum: true,
    });
    const [young, older] = ['11-14', '14-16'].map((text) => readLesson(text).choice.without ?? []);
    assert.ok(
      older?.every((rule) => young?.includes(rule)),
      'the younger use no more than the older',
    );
    assert.ok(young?.includes('power') && !older?.includes('power'));
  });

  void it('with any dash and any capitals; what says nothing is given back', () => {
    assert.deepEqual(readLesson('14–16').choice, readLesson('14-16').choice);
    assert.deepEqual(readLesson('Product-Over-Sum  toString').unknown, ['tostring']);
    for (const word of lessonWords) assert.deepEqual(readLesson(word).unknown, []);
  });
});
