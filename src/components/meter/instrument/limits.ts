import { Fraction, readQuantity, type Prefix, type Quantity, type Unit } from '../../../engine/core.ts';

/** The ends of what a meter can show, in SI units; 0 is one of them, or lies between. */
export interface Limits {
  readonly min: Fraction;
  readonly max: Fraction;
  /** The prefix that they were written with. */
  readonly prefix: Prefix;
}

/** Reads `0.6 A` (which begins at 0), `600 mA`, `-0.6..0.6 A`; undefined where that is no range in this unit. */
export function readLimits(text: string, unit: Unit): Limits | undefined {
  const [first = '', last, ...more] = text.split(/\.\.|…/);
  const max = readQuantity(last ?? first, unit);
  if ('code' in max || more.length > 0) return undefined;
  const min = last === undefined ? { value: new Fraction(0) } : readQuantity(first, unit, max.prefix);
  if ('code' in min || min.value.compare(0) > 0 || max.value.compare(0) <= 0) return undefined;
  return { min: min.value, max: max.value, prefix: max.prefix };
}

/** Reads the smallest step that a meter tells apart, within its limits; undefined where that is no such step. */
export function readResolution(text: string, unit: Unit, limits: Limits | undefined): Quantity | undefined {
  const step = readQuantity(text, unit, limits?.prefix);
  const fits = !('code' in step) && step.value.compare(0) > 0 && step.decimals !== undefined;
  return fits && !(limits && step.value.compare(limits.max) > 0) ? step : undefined;
}
