export type { Catalogue } from './catalogue.ts';
export type { ElementData } from './element-codes.ts';
export { en } from './en.ts';
export { json } from './en/json.ts';
export { all, any } from './en/list.ts';
export type { Language, Sentences } from './language.ts';
export type { Said, SaidOf } from './said.ts';
export { say, saying, type Say } from './say.ts';
export { courseWords, readCourse, usualCourse, type Course } from './course.ts';
