import type { Arrow, Drawing, Point, RibbonRun } from './drawing.ts';
import { keyOf } from './net.ts';
import { fine, outlineOf, type Outline } from './outline.ts';

/** Ribbons ready to be written again and again as the currents change. */
export interface Ribbons {
  /** The current along each run of `drawing.ribbons`, in amperes. */
  along(run: number, currents: Float64Array): number;
  /** All ribbons and their arrowheads as one path in hundredths of a pixel, its fill rule nonzero; `scale` is pixels for an ampere. */
  path(currents: Float64Array, scale: number): string;
}

/** Ribbons thinner than this part of a pixel are not drawn, nor do they have an arrowhead. */
const thinnest = 0.01 * fine;
/** The breadth of the chevron cut out in front of an arrowhead. */
const cut = 2 * fine;

interface Prepared {
  readonly shares: readonly (readonly [index: number, sign: number])[];
  readonly outline: Outline;
  readonly arrows: readonly Arrow[];
  /** The runs that cross this one's line at its two ends. */
  readonly across: readonly [readonly number[], readonly number[]];
}

/**
 * An arrowhead, clockwise like the outlines: where they overlap they add. In front of it a thin chevron is cut out of the ribbon by
 * going round it the other way. Both are written from the tip.
 */
function arrowhead({ at, turn }: Arrow, half: number, flows: 1 | -1): string {
  const ahead = turn < 180 ? flows : -flows;
  const [x, y] = [Math.round(at.x * fine), Math.round(at.y * fine)];
  const length = Math.round(5 * fine + half / 2);
  const breadth = Math.round(half + 4.5 * fine);
  const [tip, side, edge, on] = [ahead * length, ahead * breadth, ahead * Math.round(half), ahead * cut];
  const back = ahead * Math.round((2 * length * half) / breadth);
  return turn % 180 === 0
    ? `M${x + tip} ${y}l${-2 * tip} ${side}v${-2 * side}Zl${-back} ${edge}h${on}l${back} ${-edge} ${-back} ${-edge}h${-on}Z`
    : `M${x} ${y + tip}l${-side} ${-2 * tip}h${2 * side}Zl${-edge} ${-back}v${on}l${edge} ${back} ${edge} ${-back}v${-on}Z`;
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
      for (let run = 0; run < runs.length; run++) signed[run] = along(run, currents) * scale * fine;
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
