export type { GapMistake, ReasoningElementData } from './element-codes.ts';
export type { Catalogue, Language, Said } from './catalogue.ts';
export { en, say } from './say.ts';
