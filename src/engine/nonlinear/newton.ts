import type { Straightened, StraightLine } from '../solve/index.ts';
import type { Curve, CurvePoint } from './curve.ts';

/** More steps than any circuit of a school needs. */
const most = 200;
/** What two steps may differ by, as a share of the largest p.d. */
const closeness = 1e-13;
/** The share of the largest e.m.f. that rounding hides in the least p.d. */
const rounding = 1e-15;
/** So small a share of the co-content cannot be won: where diodes only leak, their p.d.s waver by more than `closeness` for ever. */
const nothing = 1e-20;

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
  const total = (drops: Float64Array): number => {
    const points = pointsAt(drops);
    return lines.reduce(
      (sum, line, place) => sum + (points.get(place)?.area ?? areaOf(line, drops[place] ?? 0)),
      0,
    );
  };
  const currentAt = (drops: Float64Array, points: ReadonlyMap<number, CurvePoint>, place: number): number => {
    const { ohms = 0, volts = 0, amperes = 0 } = lines[place] ?? {};
    const straight = ohms > 0 && ohms < Infinity ? ((drops[place] ?? 0) + volts) / ohms : 0;
    return points.get(place)?.current ?? straight + amperes;
  };

  let now = circuit.drops(near ? tangents(near) : new Map());
  const emf = Math.max(...lines.map(({ volts }) => Math.abs(volts)));
  for (let step = 0; step < most; step++) {
    const aim = circuit.drops(tangents(now));
    const way = aim.map((drop, place) => drop - (now[place] ?? 0));
    const close = Math.max(closeness * Math.max(...aim.map(Math.abs)), rounding * emf);
    const [before, points] = [total(now), pointsAt(now)];
    const fall = way.reduce((sum, change, place) => sum + change * currentAt(now, points, place), 0);
    const isClose = [...curves.keys()].every((place) => Math.abs(way[place] ?? 0) <= close);
    if (isClose || -fall <= nothing * Math.abs(before))
      return new Map([...curves.keys()].map((place) => [place, aim[place] ?? 0]));
    let share = 1;
    let next = aim;
    while (share > 1e-10 && !(total(next) <= before + 1e-4 * share * fall + 1e-12 * Math.abs(before))) {
      share /= 2;
      next = now.map((drop, place) => drop + share * (way[place] ?? 0));
    }
    now = next;
  }
  return undefined;
}
