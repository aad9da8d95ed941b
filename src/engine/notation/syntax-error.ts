import { say } from '../words/index.ts';
import type { MistakeCode } from './codes.ts';
import { mistakeLimit, type Found, type MistakeDetails } from './mistake.ts';
import { positions } from './position.ts';

/** One mistake in a line of notation, and where it is. */
export interface Mistake {
  /** Which sentence. */
  readonly code: MistakeCode;
  /** What the sentence needs. */
  readonly data: MistakeDetails;
  /** From 1. */
  readonly line: number;
  /** In characters (Unicode code points) from 1, in the text as given. */
  readonly column: number;
  /** What was expected there: a part of the grammar ('component', 'junction', …), else the suggestion. */
  readonly expected: string;
  /** What to write instead, or ''. */
  readonly suggestion: string;
  /** The English sentence. */
  readonly message: string;
}

/** What is wrong with a line of notation: the first mistake in it, and `all` of them. */
export class CircuitSyntaxError extends Error implements Mistake {
  declare readonly code: MistakeCode;
  declare readonly data: MistakeDetails;
  declare readonly line: number;
  declare readonly column: number;
  declare readonly expected: string;
  declare readonly suggestion: string;
  /** The mistakes of the text in its order, up to a hundred. */
  readonly all: readonly Mistake[];

  /** `found` is not empty. */
  constructor(text: string, found: readonly Found[]) {
    const sorted = found.toSorted((a, b) => a.at - b.at).slice(0, mistakeLimit);
    const places = positions(text, sorted);
    const all = sorted.map(({ wrong }, index): Mistake => {
      const { line = 1, column = 1 } = places[index] ?? {};
      const suggestion = 'suggestion' in wrong.data ? wrong.data.suggestion : '';
      const expected = wrong.code === 'expected' ? wrong.data.about : suggestion;
      return { ...wrong, line, column, expected, suggestion, message: say(wrong) };
    });
    super(all[0]?.message);
    Object.assign(this, all[0]);
    this.name = 'CircuitSyntaxError';
    this.all = all;
  }
}
