export * from './quantity/index.ts';
export {
  courseWords,
  en,
  readCourse,
  say,
  usualCourse,
  type Catalogue,
  type Course,
  type ElementData,
  type Language,
  type Said,
  type Say,
  type Sentences,
} from './words/index.ts';
export * from './circuit/index.ts';
export * from './topology/index.ts';
export * from './notation/index.ts';
export * from './solve/index.ts';
export * from './rules/index.ts';
export * from './schematic/index.ts';
export { needsMore, prepare, prepareQuantities } from './prepare.ts';
