import { usualCourse } from '../words/index.ts';
import type { Reasoning } from './codes.ts';
import type { Lesson } from './explain.ts';

const inside: readonly Reasoning[] = [
  'e.m.f. and internal resistance',
  'internal resistance in series',
  'e.m.f. round the loop',
];
const powers: readonly Reasoning[] = [
  'power',
  'power from current',
  'power from p.d.',
  'power of the e.m.f.',
];

/** What is usual by age: to 14 no powers, to 16 no reciprocals, no internal resistance and no equations for loops. A teacher's own may differ. */
export const lessons: Readonly<Record<'11–14' | '14–16' | '16–18', Lesson>> = {
  '11–14': {
    ...usualCourse,
    figures: 2,
    without: ['resistances in parallel', 'e.m.f.s round a loop', ...inside, ...powers],
  },
  '14–16': { ...usualCourse, without: ['resistances in parallel', 'e.m.f.s round a loop', ...inside] },
  '16–18': usualCourse,
};
