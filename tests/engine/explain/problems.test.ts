import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, lessons, type Lesson } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { problems, type Problem } from './problems.ts';

const thin = /\u202f/g;
const courses: Readonly<Record<NonNullable<Problem['how']> | 'usual', Lesson>> = {
  usual: usualCourse,
  t: usualCourse,
  '14–16': lessons['14–16'],
  U: { ...usualCourse, wording: 'voltage', letter: 'U', figures: 2, decimalSign: ',' },
};

void describe('the solution of a problem', () => {
  for (const { what, circuit, find, how = 'usual', steps } of problems)
    void it(`is told in full: ${what}`, () => {
      const given = how === 't' ? { E_B1: '6', R_R1: '12', t: '60' } : undefined;
      const found = explain(parseCircuit(circuit), { find, course: courses[how], ...(given && { given }) });
      assert.equal(found.status, 'found');
      assert.deepEqual(
        found.steps.map(({ why, rearranged, substituted, text }) =>
          [say(why), rearranged, substituted, text].map((one) => one.replace(thin, ' ')),
        ),
        steps,
      );
      assert.equal(found.answer?.text.replace(thin, ' '), steps.at(-1)?.[3]);
    });

  void it('uses no number before a step has given it', () => {
    for (const { steps, what } of problems) {
      const given = steps.map(([, equation]) => equation.split(' = ')[0]);
      assert.equal(new Set(given).size, given.length, what);
      steps.forEach(([, equation], place) => {
        // What is marked on a lamp is given from the start.
        const right = (equation.split(' = ')[1] ?? '').replace(/\S+ rated/g, '');
        for (const later of given.slice(place))
          if (later) assert.ok(!right.split(' ').includes(later), `${what}: ${later}`);
      });
    }
  });
});
