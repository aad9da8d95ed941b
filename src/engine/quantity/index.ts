export { decimalsOf, quantity } from './as-written.ts';
export { scanCode, type CodeReading } from './code.ts';
export { fixed, leadingPower, significant } from './figures.ts';
export { Fraction, powerOfTen } from './fraction.ts';
export { roundUp } from './round-up.ts';
export { exactText, inUnit, numberText, scanNumber, type NumberReading } from './number.ts';
export { preferred, preferredPlace, type Series as PreferredSeries } from './preferred.ts';
export { exponentOf, prefixFor, type Prefix } from './prefix.ts';
export type { Quantity, ReadingUnit, Unit } from './quantity.ts';
export {
  figuresWritten,
  sharedPrefix,
  suitablePrefix,
  thinSpace,
  writeQuantity,
  writeReading,
  type Writing,
  type Written,
} from './write.ts';
