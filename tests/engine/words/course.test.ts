import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { readCourse, usualCourse } from '../../../src/engine/words/index.ts';

void describe('a course', () => {
  void it('is the usual one where nothing is said', () => {
    assert.deepEqual(readCourse('  '), { course: usualCourse, unknown: [] });
  });

  void it('is read from its words in any order and in any capitals', () => {
    const expected = { wording: 'voltage', letter: 'U', figures: 2, decimalSign: ',' };
    assert.deepEqual(readCourse('voltage U 2 comma').course, expected);
    assert.deepEqual(readCourse('COMMA 2\nu  Voltage').course, expected);
    assert.equal(readCourse('as-given').course.figures, 'as given');
  });

  void it('gives back the words that say nothing, and keeps the rest', () => {
    const { course, unknown } = readCourse('voltage 7 toString __proto__ volts');
    assert.deepEqual(unknown, ['7', 'toString', '__proto__', 'volts']);
    assert.equal(course.wording, 'voltage');
  });

  const said = {
    wording: fc.constantFrom('p.d.', 'voltage'),
    letter: fc.constantFrom('V', 'U'),
    figures: fc.integer({ min: 2, max: 6 }),
    decimalSign: fc.constantFrom('.', ','),
  };
  const word = ([key, value]: readonly [string, unknown]): string =>
    key === 'decimalSign' ? (value === ',' ? 'comma' : 'point') : String(value);

  void it('is what its words say, in whatever order, and as usual in what they do not say', () => {
    fc.assert(
      fc.property(fc.record(said, { requiredKeys: [] }), fc.infiniteStream(fc.nat()), (course, draws) => {
        const entries = Object.entries(course);
        const order = entries
          .map((entry) => [entry, draws.next().value] as const)
          .sort(([, a], [, b]) => Number(a) - Number(b));
        const text = order.map(([entry]) => word(entry)).join(' ');
        assert.deepEqual(readCourse(text), { course: { ...usualCourse, ...course }, unknown: [] });
      }),
    );
  });

  void it('is what was said last, where two words say the same thing', () => {
    const twice = fc.tuple(fc.record(said), fc.record(said));
    fc.assert(
      fc.property(twice, ([first, then]) => {
        const text = [first, then].flatMap((each) => Object.entries(each).map(word)).join('\n');
        assert.deepEqual(readCourse(text).course, { ...then });
      }),
    );
  });

  for (const figures of ['0', '1', '7', '2.0', '-3', '٣', 'six'])
    void it(`has no ${figures} figures`, () => {
      assert.deepEqual(readCourse(figures), { course: usualCourse, unknown: [figures] });
    });

  void it('is read no further than a page would write it: twenty words, of which forty letters are given back', () => {
    const { course, unknown } = readCourse(`${'x'.repeat(99)} ${'y '.repeat(19)} voltage`);
    assert.equal(course, usualCourse);
    assert.deepEqual(unknown, ['x'.repeat(40), ...Array<string>(19).fill('y')]);
    assert.equal(readCourse(`${'y '.repeat(19)} voltage`).course.wording, 'voltage');
  });
});
