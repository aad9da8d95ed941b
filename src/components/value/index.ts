export { RheoletValue } from './value.ts';
