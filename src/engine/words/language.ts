import type { Catalogue } from './catalogue.ts';

/** A sentence for each code of `Data`. */
export type Sentences<Data> = { readonly [Code in keyof Data]: (data: Data[Code]) => string };

/** A language: a sentence for every code, or the compiler refuses it. */
export interface Language<Codes = Catalogue> {
  /** BCP 47 tag, for numbers, plurals and lists. */
  readonly tag: string;
  readonly sentences: Sentences<Codes>;
}
