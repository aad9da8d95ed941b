export { save } from './save.ts';
