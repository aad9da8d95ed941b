import type { Arrow, Box, Point, QuantityArrow, RibbonRun } from '../drawing.ts';

/** How far an arrowhead of a ribbon stays from the arrow of a current, and from what else is on its line. */
const clear = 26;
const least = 14;

const far = (p: Point, q: Point): number => Math.abs(p.x - q.x) + Math.abs(p.y - q.y);

/** Whether an arrowhead may be at a point: on a straight wire, off its ends and off all symbols. */
function isFree(at: Point, { points }: RibbonRun, symbols: readonly Box[]): boolean {
  const isOn = points.slice(1).some((to, i) => {
    const from = points[i] ?? to;
    return far(from, at) + far(at, to) === far(from, to) && Math.min(far(from, at), far(at, to)) >= least;
  });
  const inSymbol = symbols.some(
    ({ x, y, width, height }) =>
      at.x > x - least && at.x < x + width + least && at.y > y - least && at.y < y + height + least,
  );
  return isOn && !inSymbol;
}

/** Ribbons whose arrowheads stand beside the arrows of currents, not under them; where there is no room one is left out, unless it is the only one. */
export function apart(
  runs: readonly RibbonRun[],
  arrows: readonly QuantityArrow[],
  symbols: readonly Box[],
): readonly RibbonRun[] {
  const currents = arrows.filter(({ kind }) => kind === 'current').map(({ at }) => at);
  const isApart = (at: Point): boolean => currents.every((each) => far(each, at) >= clear);
  return runs.map((run) => {
    const arrows = run.arrows.flatMap((arrow): Arrow[] => {
      const near = currents.find((each) => far(each, arrow.at) < clear);
      if (!near) return [arrow];
      const level = arrow.turn % 180 === 0;
      const places = [-clear, clear].map((by) => ({
        x: near.x + (level ? by : 0),
        y: near.y + (level ? 0 : by),
      }));
      const place = places.find((at) => isApart(at) && isFree(at, run, symbols));
      return place ? [{ ...arrow, at: place }] : [];
    });
    return arrows.length > 0 ? { ...run, arrows } : run;
  });
}
