import type { Arrow, Drawing, Point, RibbonRun } from './drawing.ts';
import { keyOf } from './net.ts';
import { outlineOf, type Outline } from './outline.ts';

/** Ribbons ready to be written again and again as the currents change. */
export interface Ribbons {
  /** The current along each run of `drawing.ribbons`, in amperes. */
  along(run: number, currents: Float64Array): number;
  /** All ribbons and their arrowheads as one path, its fill rule nonzero; `scale` is pixels for an ampere. */
  path(currents: Float64Array, scale: number): string;
}

/** Ribbons thinner than this are not drawn, nor do they have an arrowhead. */
const thinnest = 0.01;
/** The breadth of the chevron cut out in front of an arrowhead. */
const cut = 2;

interface Prepared {
  readonly shares: readonly (readonly [index: number, sign: number])[];
  readonly outline: Outline;
  readonly arrows: readonly Arrow[];
  /** The runs that cross this one's line at its two ends. */
  readonly across: readonly [readonly number[], readonly number[]];
}

const round = (x: number): number => Math.round(x * 100) / 100;

/**
 * An arrowhead, clockwise like the outlines: where they overlap they add. In front of it a thin chevron is cut out of the ribbon by
 * going round it the other way.
 */
function arrowhead({ at: { x, y }, turn }: Arrow, half: number, flows: 1 | -1): string {
  const side = half + 4.5;
  const tip = 5 + half / 2;
  const edge = tip - (2 * tip * half) / side;
  const way = turn < 180 ? flows : -flows;
  const point = (ahead: number, aside: number): string =>
    turn % 180 === 0
      ? `${round(x + way * ahead)} ${round(y + way * aside)}`
      : `${round(x - way * aside)} ${round(y + way * ahead)}`;
  return (
    `M${point(tip, 0)}L${point(-tip, side)}L${point(-tip, -side)}Z` +
    `M${point(tip, 0)}L${point(edge, half)}L${point(edge + cut, half)}L${point(tip + cut, 0)}` +
    `L${point(edge + cut, -half)}L${point(edge, -half)}Z`
  );
}

const isLevel = (p: Point | undefined, q: Point | undefined): boolean => p?.y === q?.y;

/** For each run, the runs that leave its first and its last point square to it: its end is drawn through to their far edge. */
function crossings(runs: readonly RibbonRun[]): Prepared['across'][] {
  const ends = runs.flatMap(({ points }, run) => [
    { run, point: points[0], level: isLevel(points[0], points[1]) },
    { run, point: points.at(-1), level: isLevel(points.at(-1), points.at(-2)) },
  ]);
  const at = new Map<string, typeof ends>();
  for (const end of ends) {
    const key = end.point ? keyOf(end.point) : '';
    at.set(key, [...(at.get(key) ?? []), end]);
  }
  const across = (end: (typeof ends)[number] | undefined): number[] => {
    const there = end?.point ? (at.get(keyOf(end.point)) ?? []) : [];
    return there.filter(({ run, level }) => run !== end?.run && level !== end?.level).map(({ run }) => run);
  };
  return runs.map((_, run) => [across(ends[2 * run]), across(ends[2 * run + 1])]);
}

/** Prepares the ribbons of a drawing for currents in the order of `ids`. */
export function prepareRibbons(drawing: Drawing, ids: readonly string[]): Ribbons {
  const index = new Map(ids.map((id, i) => [id, i]));
  const across = crossings(drawing.ribbons);
  const runs = drawing.ribbons.map(({ carries, points, arrows }, run): Prepared => ({
    shares: carries.map(({ id, sign }) => [index.get(id) ?? -1, sign]),
    outline: outlineOf(points),
    arrows,
    across: across[run] ?? [[], []],
  }));
  const signed = new Float64Array(runs.length);

  const along = (run: number, currents: Float64Array): number => {
    let sum = 0;
    for (const [i, sign] of runs[run]?.shares ?? []) sum += sign * (currents[i] ?? 0);
    return sum;
  };
  const widest = (among: readonly number[]): number => {
    let width = 0;
    for (const run of among) width = Math.max(width, Math.abs(signed[run] ?? 0));
    return width;
  };
  return {
    along,
    path(currents, scale) {
      for (let run = 0; run < runs.length; run++) signed[run] = along(run, currents) * scale;
      let path = '';
      runs.forEach(({ outline, arrows, across: [first, last] }, run) => {
        const width = signed[run] ?? 0;
        const half = Math.abs(width) / 2;
        if (2 * half < thinnest) return;
        path += outline(half, widest(first) / 2, widest(last) / 2);
        for (const arrow of arrows) path += arrowhead(arrow, half, width > 0 ? 1 : -1);
      });
      return path;
    },
  };
}
