export { next } from './next.ts';
