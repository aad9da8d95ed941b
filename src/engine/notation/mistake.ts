import type { Catalogue, Said } from '../words/index.ts';
import type { MistakeCode, MistakeData } from './codes.ts';

/** No one reads more mistakes than these. */
export const mistakeLimit = 100;

/** What is wrong, without its place. */
export type Wrong = Said<MistakeCode>;

/** A mistake in a line, from the piece of it that is wrong, what to write instead, and what else it is about. */
export function mistake(code: keyof MistakeData, found = '', suggestion = '', about = ''): Wrong {
  return { code, data: { found, suggestion, about } } as Wrong;
}

/** A mistake and the place in the text where it starts. */
export interface Found {
  readonly at: number;
  readonly wrong: Wrong;
}

/** What the sentence of a mistake needs. */
export type MistakeDetails = Catalogue[MistakeCode];
