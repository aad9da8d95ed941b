import type { Arrow, Point, RibbonRun, Turn } from './drawing.ts';
import { cornersOf, wiresOf } from './net.ts';
import type { Piece } from './page.ts';

/** A straight wire this long has an arrowhead even where another in the same run has one. */
const longWire = 90;

interface Leg extends Arrow {
  readonly length: number;
}

/** A straight piece of wire, with its middle. */
function legTo(to: Point, from: Point): Leg {
  const [dx, dy] = [to.x - from.x, to.y - from.y];
  const turn: Turn = dy === 0 ? (dx > 0 ? 0 : 180) : dy > 0 ? 90 : 270;
  return { at: { x: from.x + dx / 2, y: from.y + dy / 2 }, turn, length: Math.abs(dx + dy) };
}

/** An arrowhead on the longest straight wire, and on every long one. */
function arrowsOf(path: readonly Piece[]): Arrow[] {
  const legs = wiresOf(path).flatMap((wire) =>
    cornersOf(wire).flatMap((to, i, points) => points.slice(i - 1, i).map((from) => legTo(to, from))),
  );
  const longest = legs.reduce((best, leg) => (leg.length > best.length ? leg : best));
  return legs
    .filter((leg) => leg === longest || leg.length >= longWire)
    .map(({ at, turn }) => ({ at, turn }));
}

/** The stretches of the circuit that carry one current each. */
export function runsOf(paths: readonly (readonly Piece[])[]): RibbonRun[] {
  return paths.map((path) => ({
    carries: path[0]?.carries ?? [],
    points: cornersOf(path),
    arrows: arrowsOf(path),
  }));
}
