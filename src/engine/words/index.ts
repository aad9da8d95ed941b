export type { Catalogue } from './catalogue.ts';
export type { ElementData } from './element-codes.ts';
export { en } from './en.ts';
export type { Language, Sentences } from './language.ts';
export type { Said } from './said.ts';
export { say } from './say.ts';
export { readCourse, usualCourse, type Course } from './course.ts';
