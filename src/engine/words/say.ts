import type { Catalogue } from './catalogue.ts';
import { en } from './en.ts';
import type { Language } from './language.ts';
import type { Said } from './said.ts';

/** The sentence for a code and its data, in English unless another language is given. */
export function say<Code extends keyof Catalogue>(said: Said<Code>, language: Language = en): string {
  const sentence: (data: Catalogue[Code]) => string = language.sentences[said.code];
  return sentence(said.data);
}
