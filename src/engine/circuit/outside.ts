import { writeQuantity, type Quantity } from '../quantity/index.ts';
import type { FormatData } from './codes.ts';

/** What is said of a value that is outside two others, each as it was written. */
export const outside = (found: Quantity, low: Quantity, high: Quantity): FormatData['out of range'] => ({
  found: writeQuantity(found).text,
  low: writeQuantity(low).text,
  high: writeQuantity(high).text,
});
