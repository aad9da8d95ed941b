import type { NodeWires, Point } from './drawing.ts';
import { cornersOf, wiresOf, type Meeting } from './net.ts';
import type { Page, Piece } from './page.ts';

/** The wires of each node, with a dot wherever three or more of their pieces meet, and a hop wherever one crosses another's. */
export function nodesOf(
  paths: readonly (readonly Piece[])[],
  at: ReadonlyMap<string, Meeting>,
  hops: Page['hops'],
): NodeWires[] {
  const nodes = new Map<string, { node: string; lines: Point[][]; dots: Point[]; hops: Point[] }>();
  const nodeAt = (node: string): { lines: Point[][]; dots: Point[]; hops: Point[] } => {
    const found = nodes.get(node) ?? { node, lines: [], dots: [], hops: [] };
    nodes.set(node, found);
    return found;
  };
  for (const wire of paths.flatMap(wiresOf)) nodeAt(wire[0]?.node ?? '').lines.push(cornersOf(wire));
  for (const { point, begin, count, node } of at.values()) {
    const own = begin[0]?.node ?? node;
    // Inside a changeover switch no wires meet.
    if (count > 2 && own) nodeAt(own).dots.push(point);
  }
  for (const { node, at: point } of hops) nodeAt(node).hops.push(point);
  return [...nodes.values()];
}
