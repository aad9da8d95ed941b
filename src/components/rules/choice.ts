import { nearest, type Rule } from '../../engine/core.ts';

/** Which rules a page asks for, and the first word that names none, with the name that was probably meant. */
export interface Choice {
  readonly rules: readonly Rule[];
  readonly unknown?: {
    readonly found: string;
    readonly suggestion: string;
    readonly choices: readonly string[];
  };
}

/** A rule's name as an attribute has it: `series-current`, `V=IR`. */
const hyphened = (rule: Rule): string => rule.replace(' = ', '=').replaceAll(' ', '-');

/** What is compared: letters only, with the class's own words turned into the rule's. */
const plain = (word: string): string =>
  word
    .toLowerCase()
    .replace('voltage', 'p.d.')
    .replace(/^ohm.*/, 'V = IR')
    .replace(/[^a-z]/gi, '')
    .toLowerCase();

/**
 * Reads a choice of rules: names, or the beginnings of names, between spaces or commas (`series junction`,
 * `parallel-current, ohm`). No word at all asks for every rule.
 */
export function choiceOf(text: string, all: readonly Rule[]): Choice {
  const words = text.split(/[\s,]+/).filter(Boolean);
  if (words.length === 0) return { rules: all };
  const named = (word: string): readonly Rule[] =>
    all.filter((rule) => plain(word) && plain(rule).startsWith(plain(word)));
  const wanted = words.flatMap(named);
  const found = words.find((word) => named(word).length === 0);
  const names = all.flatMap((rule) => [hyphened(rule), ...rule.split(' ', 1)]);
  return {
    rules: all.filter((rule) => wanted.includes(rule)),
    ...(found !== undefined && {
      unknown: { found, suggestion: nearest(found, names), choices: all.map(hyphened) },
    }),
  };
}
