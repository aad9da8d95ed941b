import { Fraction, quantity, roundUp, type Quantity, type Unit } from '../quantity/index.ts';
import type { CurrentSource, Range, Supply } from './model.ts';
import { defaultStep } from './range.ts';

/** From 0 to a round value at or beyond twice the value, on its side of 0; up to `most` where the value is 0. */
function roomy(of: Quantity | undefined, unit: Unit, most: number): Range {
  const { value, prefix } = of ?? quantity(0, unit);
  const zero = new Fraction(0);
  const end = value.n ? roundUp(2 * Math.abs(value.valueOf())).mul(value.s) : new Fraction(most);
  const [min, max] = value.s < 0n ? [end, zero] : [zero, end];
  const step = defaultStep(min, max, value) ?? defaultStep(min, max, zero) ?? max.sub(min).div(20);
  return {
    min: quantity(min, unit, prefix),
    max: quantity(max, unit, prefix),
    step: quantity(step, unit, prefix),
  };
}

/**
 * What a supply may be turned through: the ranges that it states; else its e.m.f. from 0 to the next of 1, 2, 5 × 10ⁿ at or above
 * twice its e.m.f. (10 V for none), and its internal resistance likewise (5 Ω for none). A value that no even step meets lies
 * between two settings.
 */
export function supplyRanges(supply: Supply): { readonly emf: Range; readonly internalResistance: Range } {
  const { emf, range, internalResistance, internalRange } = supply;
  return {
    emf: range ?? roomy(emf, 'V', 10),
    internalResistance: internalRange ?? roomy(internalResistance, 'Ω', 5),
  };
}

/** What a supply of constant current may be turned through: the range that it states, else likewise (1 A for none). */
export const sourceRange = ({ current, range }: CurrentSource): Range => range ?? roomy(current, 'A', 1);
