import { Fraction } from './fraction.ts';
import { exponentOf, type Prefix } from './prefix.ts';
import type { Quantity, Unit } from './quantity.ts';

const limit = 100;

/** The decimals that a value needs after a prefix, undefined where no finite number of them is the value. */
export function decimalsOf(value: Fraction, prefix: Prefix): number | undefined {
  let rest = value.d;
  let twos = 0;
  let fives = 0;
  for (; rest % 2n === 0n; rest /= 2n) twos++;
  for (; rest % 5n === 0n; rest /= 5n) fives++;
  const needed = Math.max(twos, fives);
  return rest === 1n && needed <= limit ? decimalsAfter(value, needed, exponentOf(prefix)) : undefined;
}

function decimalsAfter(value: Fraction, needed: number, power: number): number {
  if (needed > 0 || power <= 0) return Math.max(0, needed + power);
  let decimals = power;
  for (let n = value.n; decimals > 0 && n % 10n === 0n; n /= 10n) decimals--;
  return decimals;
}

/** A value with as many decimals as it needs after its prefix, and at least `decimals`. */
export function quantity(
  value: Fraction | number | string,
  unit: Unit,
  prefix: Prefix = '',
  decimals = 0,
): Quantity {
  const exact = new Fraction(value);
  const needed = decimalsOf(exact, prefix);
  return needed === undefined
    ? { value: exact, unit, prefix }
    : { value: exact, unit, prefix, decimals: Math.max(needed, decimals) };
}
