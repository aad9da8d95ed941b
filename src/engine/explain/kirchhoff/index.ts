export { kirchhoff } from './kirchhoff.ts';
