import { say } from '../reasons/index.ts';
import type { Course } from '../words/index.ts';
import type { Known } from './derive.ts';
import type { Step } from './derivation.ts';
import { placesOf, rearranged } from './relation.ts';
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
    const found = known.get(one);
    return one === gives || !found ? name(one) : valueText(one, found.value, style);
  };
  return {
    rule: by.rule,
    about: by.about,
    uses,
    gives,
    equation: written(by, name),
    rearranged: written(turned, name),
    substituted: written(turned, number),
    value,
    text: valueText(gives, value, style),
    why: { code: by.rule, data: { ids: placesOf(by), pd: course.wording } },
  };
}

/** Of each step five hints, one saying more than the other. */
export const hintsOf = (steps: readonly Step[], course: Course): readonly string[] =>
  steps.flatMap(({ about, why, equation, substituted, gives, text }) => [
    say({ code: 'look at', data: { ids: about } }),
    say(why),
    equation,
    substituted,
    `${symbol(gives, course)} = ${text}`,
  ]);
