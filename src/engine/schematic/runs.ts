import type { Arrow, Point, RibbonRun, Turn } from './drawing.ts';
import { pathsOf } from './net.ts';
import type { Piece } from './place.ts';

/** The least straight wire that has room for an arrowhead. */
const arrowRoom = 14;
/** A leg of a path this long has an arrowhead of its own. */
const longLeg = 150;

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

/** One arrowhead on the longest stretch of wire, and one on each side of a loop. */
function arrowsOf(pieces: readonly Piece[]): Arrow[] {
  const wires = stretches(pieces).filter((stretch) => lengthOf(stretch) >= arrowRoom);
  const longest = Math.max(...wires.map(lengthOf));
  const chosen = wires.filter((wire) => lengthOf(wire) === longest).slice(0, 1);
  return chosen.map(arrowOn);
}

/** The stretches of the circuit that carry one current each. */
export function runsOf(pieces: readonly Piece[]): RibbonRun[] {
  return pathsOf(pieces).map(({ points, pieces: own }) => ({
    carries: own[0]?.carries ?? [],
    points,
    arrows: arrowsOf(own),
  }));
}
