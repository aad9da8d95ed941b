import { roundUp, suitablePrefix, type Course, type Prefix, type Unit } from '../../engine/core.ts';
import { written } from './written.ts';

/** From the lowest value to the highest. */
export type Reach = readonly [low: number, high: number];

/** An axis from one round value to another. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly prefix: Prefix;
  /** The round values, lowest first. */
  readonly marks: readonly { readonly value: number; readonly text: string }[];
}

/** The reach of both. */
export const both = ([low, high]: Reach, [lower, higher]: Reach): Reach => [
  Math.min(low, lower),
  Math.max(high, higher),
];

/** What is closer than this part of its size is one value with the noise of floats. */
const noise = 1e-6;

/** An axis that reaches so far or a little further, with about `most` steps of 1, 2 or 5 × 10ⁿ. */
export function axisOver([low, high]: Reach, most: number, unit: Unit, course: Course): Axis {
  const isPoint = high - low <= noise * Math.max(Math.abs(low), Math.abs(high));
  const step = roundUp((isPoint ? 1 : high - low) / most);
  const size = Number(step);
  const slack = 1e-9; // a float may lie just beyond a round value
  const first = Math.floor(low / size + slack);
  const last = Math.max(Math.ceil(high / size - slack), first + 1);
  const prefix = suitablePrefix(size * Math.max(-first, last), unit);
  const at = (times: number): number => Number(step.mul(times));
  const marks = Array.from({ length: last - first + 1 }, (_, place) => {
    const times = first + place;
    return { value: at(times), text: written(step.mul(times), step, prefix, course) };
  });
  return { low: at(first), high: at(last), prefix, marks };
}
