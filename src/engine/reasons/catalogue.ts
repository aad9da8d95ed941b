import type { ClaimData } from '../claims/index.ts';
import type { ExplainData } from '../explain/index.ts';
import type * as words from '../words/index.ts';
import type { ReasoningElementData } from './element-codes.ts';

/** Every code that has a sentence, with the data the sentence needs. */
export interface Catalogue extends words.Catalogue, ExplainData, ClaimData, ReasoningElementData {}

/** Something to be said: a code and the data its sentence needs. */
export type Said<Code extends keyof Catalogue = keyof Catalogue> = words.SaidOf<Catalogue, Code>;

/** A language: a sentence for every code, or the compiler refuses it. */
export type Language = words.Language<Catalogue>;
