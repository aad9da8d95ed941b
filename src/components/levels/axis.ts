import {
  decimalsOf,
  exponentOf,
  fixed,
  roundUp,
  suitablePrefix,
  type Circuit,
  type ExactSolution,
  type Prefix,
  type Solution,
} from '../../engine/core.ts';
import { extremesOf } from '../extremes/index.ts';
import { once, type Snapshot } from '../link/index.ts';

/** An axis in volts, from one round height to another. */
export interface Axis {
  readonly low: number;
  readonly high: number;
  readonly prefix: Prefix;
  /** The round heights, lowest first. */
  readonly marks: readonly { readonly volts: number; readonly text: string }[];
}

type Reach = readonly [low: number, high: number];

/** The steps that an axis has room for. */
const most = 5;

/** The lowest and the highest potential of a circuit; the height 0 is always among them. */
function reach({ components }: Circuit, readings: ExactSolution | Solution): Reach {
  const nodes = components.flatMap(({ from, to }) => [from, to]);
  const heights = [0, ...nodes.map((node) => Number(readings.potential(node) ?? 0))];
  return [Math.min(...heights), Math.max(...heights)];
}

const both = ([low, high]: Reach, [lower, higher]: Reach): Reach => [
  Math.min(low, lower),
  Math.max(high, higher),
];

/** As far as sliders and switches are likely to take a circuit. */
const usualReach = once((start): Reach =>
  extremesOf(start).reduce<Reach>((all, each) => both(all, reach(each.circuit, each.readings)), [0, 0]),
);

/** The axis of a board's potentials: no shorter than the one before it, so that heights can be compared while something is turned. */
export function axisOf({ start, circuit, readings, course }: Snapshot, before?: Axis): Axis {
  const now = reach(circuit, readings);
  if (before && now[0] >= before.low && now[1] <= before.high) return before;
  const [low, high] = both(now, before ? [before.low, before.high] : usualReach(start));
  const step = roundUp((high - low || 1) / most);
  const slack = 1e-9; // a float may lie just beyond a round height
  const first = Math.floor(low / Number(step) + slack);
  const last = Math.ceil(high / Number(step) - slack) || 1;
  const prefix = suitablePrefix(step.mul(Math.max(-first, last)), 'V');
  const decimals = decimalsOf(step, prefix) ?? 0;
  const marks = Array.from({ length: last - first + 1 }, (_, place) => {
    const volts = step.mul(first + place);
    const text = fixed(volts, decimals, -exponentOf(prefix)).replace('.', course.decimalSign);
    return { volts: Number(volts), text };
  });
  return { low: Number(step) * first, high: Number(step) * last, prefix, marks };
}
