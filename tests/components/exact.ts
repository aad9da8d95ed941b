import type { Fraction } from '../../src/engine/core.ts';

/** An exact reading as a ratio; a reading in decimals is none. */
export function exact(reading: Fraction | number | undefined): string {
  return typeof reading === 'object' ? reading.toFraction() : `not exact: ${reading}`;
}
