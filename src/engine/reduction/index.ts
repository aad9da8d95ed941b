export { stagesOf, type Stage } from './stages.ts';
