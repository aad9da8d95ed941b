import { lessons } from './courses.ts';
import type { Lesson } from './explain.ts';

type Choice = Pick<Lesson, 'without' | 'productOverSum'>;

const choices: ReadonlyMap<string, Choice> = new Map([
  ['11-14', { without: lessons['11–14'].without ?? [] }],
  ['14-16', { without: lessons['14–16'].without ?? [] }],
  ['16-18', {}],
  ['without-reciprocals', { without: ['resistances in parallel'] }],
  ['product-over-sum', { productOverSum: true }],
] satisfies [string, Choice][]);

/** The words that `readLesson` knows. */
export const lessonWords: readonly string[] = [...choices.keys()];

/** What rules a class may use, from words such as `14-16 product-over-sum`; words that say nothing are given back. */
export function readLesson(text: string): { readonly choice: Choice; readonly unknown: readonly string[] } {
  const words = text.toLowerCase().replaceAll('–', '-').split(/\s+/).filter(Boolean);
  const chosen = words.flatMap((word) => choices.get(word) ?? []);
  return {
    choice: {
      without: chosen.flatMap(({ without = [] }) => without),
      productOverSum: chosen.some(({ productOverSum }) => productOverSum),
    },
    unknown: words.filter((word) => !choices.has(word)),
  };
}
