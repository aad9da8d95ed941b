import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
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
});
