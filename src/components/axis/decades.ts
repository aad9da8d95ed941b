import { exponentOf, fixed, powerOfTen, suitablePrefix, type Unit } from '../../engine/core.ts';
import type { Axis, Reach } from './axis.ts';

/** A power of ten with a prefix of its own, as data sheets mark such axes: "10", "1k", "100k"; lux have none. */
function mark(power: number, unit: Unit): Axis['marks'][number] {
  const value = powerOfTen(power);
  const prefix = unit === 'lx' ? '' : suitablePrefix(value, unit, 1);
  return {
    value: Number(value),
    text: fixed(value, Math.max(0, exponentOf(prefix) - power), -exponentOf(prefix)) + prefix,
  };
}

/** An axis that is even in the logarithm, from a power of ten to another; its reach is above 0. */
export function decadesOver([low, high]: Reach, unit: Unit): Axis {
  const slack = 1e-9; // a float may lie just beyond a power of ten
  const first = Math.floor(Math.log10(low) + slack);
  const last = Math.max(Math.ceil(Math.log10(high) - slack), first + 1);
  const marks = Array.from({ length: last - first + 1 }, (_, place) => mark(first + place, unit));
  return { low: 10 ** first, high: 10 ** last, prefix: '', marks };
}
