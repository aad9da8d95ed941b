import type { Circuit, ExactSolution, Solution } from '../../engine/core.ts';
import { both, type Reach } from '../axis/index.ts';
import { extremesOf } from '../extremes/index.ts';
import { once, type Snapshot } from '../link/index.ts';

/** The lowest and the highest potential of a circuit; the height 0 is always among them. */
function reachIn({ components }: Circuit, readings: ExactSolution | Solution): Reach {
  const heights = components.flatMap(({ from, to }) =>
    [from, to].map((node) => Number(readings.potential(node) ?? 0)),
  );
  return [Math.min(0, ...heights), Math.max(0, ...heights)];
}

/** As far as sliders and switches are likely to take a circuit. */
const usualReach = once((start: Circuit) =>
  extremesOf(start)
    .map(({ circuit, readings }) => reachIn(circuit, readings))
    .reduce(both, [0, 0]),
);

/** As far as the potentials of a board go or went: no less far than before, so that heights can be compared while something is turned. */
export function reachOf({ start, circuit, readings }: Snapshot, before: Reach | undefined): Reach {
  return both(reachIn(circuit, readings), before ?? usualReach(start));
}
