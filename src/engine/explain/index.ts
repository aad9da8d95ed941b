export type { ExplainData, Reasoning } from './codes.ts';
export { lessons } from './courses.ts';
export type { Derivation, Step } from './derivation.ts';
export { explain, type Lesson, type Question } from './explain.ts';
