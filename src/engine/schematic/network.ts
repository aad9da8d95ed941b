import type { Tree } from '../topology/index.ts';
import { blockOf, type Measure } from './block.ts';
import { onwards, pointOn, wire } from './page.ts';
import { place } from './place.ts';
import { margin, unfit, type Plan } from './plan.ts';

/** From a terminal to the first part. */
const stub = 16;
/** The radius of the open circle that marks a terminal. */
export const terminalRadius = 4;

/** A network between two terminals, drawn along one axis. */
export function networkPlan(tree: Tree, measure: Measure, widest: number): Plan {
  const block = blockOf(tree, measure);
  const { before, after, carries } = block;
  const length = block.length + 2 * stub;
  const edge = margin + terminalRadius;
  const [along, across] = [length + 2 * edge, before + after + 2 * margin];
  const { upright } = measure;
  const size = upright ? { width: across, height: along } : { width: along, height: across };
  return {
    // A line of text runs along the page, and so does a network that has the room for it.
    cost: unfit(size, widest) + (upright ? 60 : 0),
    size,
    draw: (page) => {
      const on = { page, measure, start: edge, cross: margin + before, way: 1, carries } as const;
      wire(on, tree.from, terminalRadius, stub);
      place(block, onwards(on, stub), block.length);
      wire(on, tree.to, length - stub, length - terminalRadius);
      return [pointOn(on, 0), pointOn(on, length)];
    },
  };
}
