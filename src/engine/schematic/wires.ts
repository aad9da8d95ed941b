import type { NodeWires, Point } from './drawing.ts';
import { cornersOf, wiresOf, type Meeting } from './net.ts';
import type { Piece } from './page.ts';

/** The wires of each node, with a dot wherever three or more of their pieces meet. */
export function nodesOf(paths: readonly (readonly Piece[])[], at: ReadonlyMap<string, Meeting>): NodeWires[] {
  const nodes = new Map<string, { node: string; lines: Point[][]; dots: Point[] }>();
  const nodeAt = (node: string): { lines: Point[][]; dots: Point[] } => {
    const found = nodes.get(node) ?? { node, lines: [], dots: [] };
    nodes.set(node, found);
    return found;
  };
  for (const wire of paths.flatMap(wiresOf)) nodeAt(wire[0]?.node ?? '').lines.push(cornersOf(wire));
  for (const { point, begin, count } of at.values()) {
    if (count > 2) nodeAt(begin[0]?.node ?? '').dots.push(point);
  }
  return [...nodes.values()];
}
