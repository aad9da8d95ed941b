import type { Arrow, Point, RibbonRun, Turn } from './drawing.ts';
import { pathsOf } from './net.ts';
import type { Piece } from './place.ts';

/** The least straight wire that has room for an arrowhead. */
const arrowRoom = 16;
/** A straight wire this long has an arrowhead even where another in the same run has one. */
const longLeg = 60;

interface Stretch {
  readonly from: Point;
  readonly to: Point;
}

const lengthOf = ({ from, to }: Stretch): number => Math.abs(to.x - from.x) + Math.abs(to.y - from.y);

function turnOf({ from, to }: Stretch): Turn {
  if (from.y === to.y) return to.x > from.x ? 0 : 180;
  return to.y > from.y ? 90 : 270;
}

/** Pieces of wire that lie in one straight line, put together; symbols divide them. */
function stretches(pieces: readonly Piece[]): Stretch[] {
  const joined: Stretch[] = [];
  let open = false;
  for (const piece of pieces) {
    const last = joined.at(-1);
    if (piece.node === undefined) open = false;
    else if (last && open && turnOf(last) === turnOf(piece))
      joined.splice(-1, 1, { from: last.from, to: piece.to });
    else {
      joined.push(piece);
      open = true;
    }
  }
  return joined;
}

function arrowOn(stretch: Stretch): Arrow {
  const { from, to } = stretch;
  return { at: { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 }, turn: turnOf(stretch) };
}

/** One arrowhead on the longest stretch of wire, and one on every long leg. */
function arrowsOf(pieces: readonly Piece[]): Arrow[] {
  const wires = stretches(pieces);
  const longest = Math.max(...wires.map(lengthOf));
  const legs: Stretch[][] = [];
  for (const wire of wires) {
    const before = legs.at(-1)?.at(-1);
    const onward = before && turnOf(before) === turnOf(wire);
    if (onward) legs.at(-1)?.push(wire);
    else legs.push([wire]);
  }
  return legs.flatMap((leg) => {
    const best = leg.reduce((best, wire) => (lengthOf(wire) > lengthOf(best) ? wire : best));
    return lengthOf(best) >= Math.min(longest, longLeg) && lengthOf(best) >= arrowRoom ? [arrowOn(best)] : [];
  });
}

/** The stretches of the circuit that carry one current each. */
export function runsOf(pieces: readonly Piece[]): RibbonRun[] {
  return pathsOf(pieces).map(({ points, pieces: own }) => ({
    carries: own[0]?.carries ?? [],
    points,
    arrows: arrowsOf(own),
  }));
}
