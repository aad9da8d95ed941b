import type { NodeWires, Point } from './drawing.ts';
import { keyOf, meetings, pathsOf } from './net.ts';
import type { Piece } from './place.ts';

/** The wires of each node, with a dot wherever three or more pieces meet. */
export function wiresOf(pieces: readonly Piece[]): NodeWires[] {
  const nodes = new Map<string, Piece[]>();
  for (const piece of pieces) {
    if (piece.node === undefined) continue;
    const there = nodes.get(piece.node);
    if (there) there.push(piece);
    else nodes.set(piece.node, [piece]);
  }
  return [...nodes].map(([node, own]) => ({
    node,
    lines: pathsOf(own).map((path) => path.points),
    dots: dotsOf(own),
  }));
}

function dotsOf(pieces: readonly Piece[]): Point[] {
  const at = meetings(pieces);
  const points = new Map(pieces.flatMap(({ from, to }) => [from, to].map((point) => [keyOf(point), point])));
  return [...points].flatMap(([key, point]) => ((at.get(key)?.length ?? 0) > 2 ? [point] : []));
}
