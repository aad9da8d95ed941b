import { decimalsOf, exponentOf, fixed, type Course, type Fraction, type Prefix } from '../../engine/core.ts';

/** A number after a prefix, with as many decimals as the smallest step of its scale has. */
export function written(value: Fraction, step: Fraction, prefix: Prefix, { decimalSign }: Course): string {
  return fixed(value, decimalsOf(step, prefix) ?? 0, -exponentOf(prefix)).replace('.', decimalSign);
}
