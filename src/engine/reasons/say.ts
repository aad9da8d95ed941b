import { en as usual, saying, type Say } from '../words/index.ts';
import type { Catalogue, Language } from './catalogue.ts';
import { claims } from './en/claims.ts';
import { elements } from './en/elements.ts';
import { explain } from './en/explain.ts';

/** English. */
export const en: Language = {
  tag: usual.tag,
  sentences: { ...usual.sentences, ...explain, ...claims, ...elements },
};

/** The sentence for a code and its data, in English unless another language is given. */
export const say: Say<Catalogue> = saying(en);
