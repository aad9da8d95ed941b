import type { Said } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';
import type { Reasoning, Solving, Special } from './codes.ts';

const half: ReadonlySet<string> = new Set<Solving | Special>([
  'rating',
  'balanced bridge',
  'trial supply',
  'no closed path',
  'passed by',
  'whole track',
  'currents at a junction',
  'e.m.f.s round a loop',
  'one alone',
  'put in',
  'one unknown left',
  'put back',
]);

const isInHalf = (rule: Reasoning): rule is Solving | Special => half.has(rule);

/** Why a step may be taken, to be said. (In two halves: the compiler does not match a union of more than 25 with one object.) */
export function why(
  rule: Reasoning,
  ids: readonly string[],
  { wording: pd }: Pick<Course, 'wording'>,
): Said<Reasoning> {
  const data = { ids, pd };
  return isInHalf(rule) ? { code: rule, data } : { code: rule, data };
}
