export { sparseFlow } from './flow.ts';
