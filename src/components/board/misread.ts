import { courseWords, nearest, readCourse, say } from '../../engine/core.ts';
import { words, wordsIn } from './shown.ts';

/** What a page says of how a board is to look. */
interface Look {
  readonly show: string;
  readonly hide: string;
  readonly symbols: string;
  readonly course: string;
}

const forms = ['iec', 'ansi'];

/** Sentences about words that an attribute does not have: of each the first. */
export function misread({ show, hide, symbols, course }: Look): readonly string[] {
  const strange = (list: string, choices: readonly string[]): string | undefined =>
    wordsIn(list).find((word) => !choices.includes(word));
  const rows = [
    ['show', strange(show, words), words],
    ['hide', strange(hide, words), words],
    ['symbols', strange(symbols, forms), forms],
    ['course', readCourse(course).unknown[0], courseWords],
  ] as const;
  return rows.flatMap(([of, found, choices]) => {
    if (found === undefined) return [];
    const suggestion = nearest(found, choices);
    return [say({ code: 'not a choice', data: { found, of: `word of ${of}`, suggestion, choices } })];
  });
}
