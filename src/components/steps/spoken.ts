import { heard, type Step } from '../../engine/explain/index.ts';
import { say } from '../../engine/reasons/index.ts';
import { repeats, numberOf, type Shown } from './line.ts';

/** A sentence for the ear: the names in it are said in words. */
const inWords = (text: string, course: Shown['course']): string =>
  text.replace(/\p{L}+_[\p{L}\d_]+/gu, (name) => heard(name, course));

/** What is heard of each rung of a step; where to look only among hints. */
export function spoken(step: Step, { mode, course }: Pick<Shown, 'mode' | 'course'>): readonly string[] {
  const { about, why, rearranged, substituted, gives, text, unknowns, notes = [] } = step;
  const sentences = (isLate: boolean): readonly string[] =>
    notes
      .filter(({ code }) => (code === 'flows the other way') === isLate)
      .map((note) => inWords(say(note), course));
  const result = unknowns ? numberOf(step) : heard(`${gives} = ${text}`, course);
  return [
    [...(mode === 'hints' ? [say({ code: 'look at', data: { ids: about } })] : []), ...sentences(false)],
    [inWords(say(why), course)],
    [heard(rearranged, course)],
    repeats(step, course) ? [] : [heard(substituted, course)],
    [result, ...sentences(true)],
  ].map((rung) => rung.join(' '));
}
