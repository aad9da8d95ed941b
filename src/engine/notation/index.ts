export type { MistakeData } from './codes.ts';
