import type { JsonData } from './circuit/index.ts';
import * as reasons from './reasons/index.ts';
import { activity, type ActivityData } from './words/activity/index.ts';
import type { BecauseData } from './whatif/index.ts';
import { because } from './words/because/index.ts';
import { comparison, type ChangeData } from './words/comparison/index.ts';
import { json, saying, type Language as LanguageOf, type Say, type SaidOf } from './words/index.ts';
import { levels, type LevelData } from './words/levels/index.ts';
import { written, type WrittenData } from './words/written/index.ts';

/** Every code that has a sentence, with the data the sentence needs. */
export interface Catalogue
  extends reasons.Catalogue, ActivityData, BecauseData, ChangeData, JsonData, LevelData, WrittenData {}

/** Something to be said: a code and the data its sentence needs. */
export type Said<Code extends keyof Catalogue = keyof Catalogue> = SaidOf<Catalogue, Code>;

/** A language: a sentence for every code, or the compiler refuses it. */
export type Language = LanguageOf<Catalogue>;

/** English. */
export const en: Language = {
  tag: reasons.en.tag,
  sentences: {
    ...reasons.en.sentences,
    ...activity,
    ...because,
    ...comparison,
    ...json,
    ...levels,
    ...written,
  },
};

/** The sentence for a code and its data, in English unless another language is given. */
export const say: Say<Catalogue> = saying(en);
