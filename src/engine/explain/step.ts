import type { Said } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';
import type { Known } from './derive.ts';
import type { HintCode, Note, Step } from './derivation.ts';
import { placeOf, placesOf, rearranged } from './relation.ts';
import { why } from './why.ts';
import { trialOf } from './trial.ts';
import { styleOf, symbol, valueText, written } from './write.ts';

/** A step as a class reads it; none for what is given. */
export function stepTo(gives: string, known: ReadonlyMap<string, Known>, course: Course): Step | undefined {
  const way = known.get(gives);
  const turned = way?.by && rearranged(way.by, gives);
  if (!way?.by || !turned) return undefined;
  const { by, uses, value } = way;
  const style = styleOf(course);
  const name = (one: string): string => symbol(one, style);
  const number = (one: string): string => {
    if (one === by.trial) return valueText(one, trialOf(uses.map((used) => known.get(used)?.value)), style);
    const found = known.get(one);
    return one === gives || !found ? name(one) : valueText(one, found.value, style);
  };
  const step: Step = {
    rule: by.rule,
    about: by.about,
    uses,
    gives,
    equation: written(by, name),
    rearranged: written(turned, name),
    substituted: written(turned, number),
    value,
    text: valueText(gives, value, style),
    why: why(by.rule, placesOf(by), course),
    ...(by.idle !== undefined && { notes: [{ code: 'left out', data: { id: placeOf(by.idle) } }] }),
  };
  return noted(step, course);
}

/** Steps with what may be left out said once of each component. */
export function saidOnce(steps: readonly Step[]): readonly Step[] {
  const said = new Set<string>();
  const isNew = (note: Note): boolean => {
    if (note.code !== 'left out') return true;
    const isFirst = !said.has(note.data.id);
    said.add(note.data.id);
    return isFirst;
  };
  return steps.map(({ notes, ...step }) => {
    const left = notes?.filter(isNew) ?? [];
    return left.length > 0 ? { ...step, notes: left } : step;
  });
}

/** A step with what is to be said of a current that comes out negative. */
export const noted = (step: Step, course: Course): Step =>
  step.gives.startsWith('I_') && step.value.compare(0) < 0
    ? {
        ...step,
        notes: [
          ...(step.notes ?? []),
          { code: 'flows the other way', data: { name: symbol(step.gives, course) } },
        ],
      }
    : step;

/** Of each step five hints, one saying more than the other. */
export const rungsOf = (steps: readonly Step[], course: Course): readonly Said<HintCode>[] =>
  steps.flatMap(({ about, why: reason, equation, substituted, gives, text, unknowns }): Said<HintCode>[] => [
    { code: 'look at', data: { ids: about } },
    reason,
    { code: 'hint equation', data: { equation } },
    { code: 'hint numbers', data: { equation: substituted } },
    { code: 'hint answer', data: { answer: unknowns ? text : `${symbol(gives, course)} = ${text}` } },
  ]);
