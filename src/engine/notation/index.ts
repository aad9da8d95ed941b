export type { Expected, MistakeCode, MistakeData } from './codes.ts';
export { parseCircuit } from './parse.ts';
export { readQuantity } from './read-quantity.ts';
export { CircuitSyntaxError, type Mistake } from './syntax-error.ts';
