export { formatCircuit } from './format.ts';
