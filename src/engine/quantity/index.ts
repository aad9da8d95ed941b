export { Fraction, powerOfTen } from './fraction.ts';
export { exponentOf, prefixFor, type Prefix } from './prefix.ts';
export type { Quantity, Unit } from './quantity.ts';
