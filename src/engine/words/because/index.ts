export { because } from './en.ts';
