import type { Straightened, StraightLine } from '../solve/index.ts';
import type { Curve, CurvePoint } from './curve.ts';

/** More steps than any circuit of a school needs. */
const mostSteps = 200;
/** What two steps may differ by, as a share of the largest p.d. */
const closeness = 1e-13;
/** The share of the largest e.m.f. that rounding hides in the least p.d. */
const rounding = 1e-15;
/** The share of all co-contents, some of which cancel, that rounding hides in their sum. */
const unseen = 1e-12;
/** The share of the largest current that rounding hides in the others: where diodes only leak, that makes microvolts. */
const hidden = 1e-13;

/** The co-content of a branch, or of one that is a straight line: it is least, over all potentials, where Kirchhoff's laws hold. */
function areaOf({ ohms, volts, amperes = 0 }: StraightLine, drop: number): number {
  return (ohms > 0 && ohms < Infinity ? (drop + volts) ** 2 / (2 * ohms) : 0) + amperes * drop;
}

/**
 * The p.d.s at which every curve carries what the circuit sends through it, by place; undefined where the steps do not end.
 *
 * Newton's method: each curve becomes its tangent, the circuit is solved as one of straight lines, and so on. The sum of all
 * co-contents is convex, and a step leads down it; a step that does not lead down far enough (L. Armijo 1966) is halved until it
 * does, so no step can overshoot for ever. `near` are the p.d.s of a circuit that differs little, by place: its tangents are a better start.
 */
export function settle(
  circuit: Straightened,
  curves: ReadonlyMap<number, Curve>,
  near?: Float64Array,
): ReadonlyMap<number, number> | undefined {
  const { lines } = circuit;
  const pointsAt = (drops: Float64Array): Map<number, CurvePoint> =>
    new Map([...curves].map(([place, curve]) => [place, curve(drops[place] ?? 0)]));
  const tangents = (drops: Float64Array): Map<number, StraightLine> =>
    new Map(
      [...pointsAt(drops)].map(([place, { current, slope }]) => [
        place,
        { ohms: 1 / slope, volts: current / slope - (drops[place] ?? 0) },
      ]),
    );
  const areasAt = (drops: Float64Array): readonly number[] => {
    const points = pointsAt(drops);
    return lines.map((line, place) => points.get(place)?.area ?? areaOf(line, drops[place] ?? 0));
  };
  const total = (areas: readonly number[]): number => areas.reduce((sum, area) => sum + area, 0);

  /** What a step leads the co-content down at its start, as the squares say: the sum of p.d.s times currents is the same, and all noise. */
  const fallOf = (way: Float64Array, points: ReadonlyMap<number, CurvePoint>): number =>
    -lines.reduce((sum, { ohms }, place) => {
      const slope = points.get(place)?.slope ?? (ohms > 0 && ohms < Infinity ? 1 / ohms : 0);
      return sum + slope * (way[place] ?? 0) ** 2;
    }, 0);

  const largestCurrent = (drops: Float64Array, points: ReadonlyMap<number, CurvePoint>): number =>
    lines.reduce((largest, { ohms, volts, amperes = 0 }, place) => {
      const straight = ohms > 0 && ohms < Infinity ? ((drops[place] ?? 0) + volts) / ohms : 0;
      const current = points.get(place)?.current ?? straight;
      return Math.max(largest, Math.abs(current), Math.abs(amperes));
    }, 0);

  let now = circuit.drops(near ? tangents(near) : new Map());
  const emf = Math.max(...lines.map(({ volts }) => Math.abs(volts)));
  for (let step = 0; step < mostSteps; step++) {
    const aim = circuit.drops(tangents(now));
    const way = aim.map((drop, place) => drop - (now[place] ?? 0));
    const close = Math.max(closeness * Math.max(...aim.map(Math.abs)), rounding * emf);
    const points = pointsAt(now);
    const fall = fallOf(way, points);
    const least = hidden * largestCurrent(now, points);
    const isClose = [...points].every(([place, { slope }]) => {
      const change = Math.abs(way[place] ?? 0);
      return change <= close || change * slope <= least;
    });
    if (isClose) return new Map([...curves.keys()].map((place) => [place, aim[place] ?? 0]));
    const before = areasAt(now);
    const most = total(before) + unseen * total(before.map(Math.abs));
    let share = 1;
    let next = aim;
    while (share > 1e-10 && !(total(areasAt(next)) <= most + 1e-4 * share * fall)) {
      share /= 2;
      next = now.map((drop, place) => drop + share * (way[place] ?? 0));
    }
    now = next;
  }
  return undefined;
}
