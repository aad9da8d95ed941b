import type { Tree } from '../topology/index.ts';
import { blockOf, type Measure } from './block.ts';
import { place, pointOn, wire } from './place.ts';
import { unfit, type Plan } from './plan.ts';

/** From a terminal to the first part. */
const stub = 16;
/** The radius of the open circle that marks a terminal. */
export const terminalRadius = 4;

/** A network between two terminals, drawn along one axis. */
export function networkPlan(tree: Tree, measure: Measure, widest: number): Plan {
  const block = blockOf(tree, measure);
  const length = block.length + 2 * stub;
  const breadth = block.before + block.after;
  const on = { measure, start: 0, cross: 0, way: 1 } as const;
  const size = measure.axis === 'h' ? { width: length, height: breadth } : { width: breadth, height: length };
  return {
    // A line of text runs along the page, and so does a network that has the room for it.
    cost: unfit(size, widest) + (measure.axis === 'h' ? 0 : 60),
    width: size.width,
    terminals: [pointOn(on, 0), pointOn(on, length)],
    draw: (sheet) => {
      wire(sheet, tree.from, pointOn(on, terminalRadius), pointOn(on, stub), block.carries);
      place(sheet, block, { ...on, start: stub }, block.length);
      wire(
        sheet,
        tree.to,
        pointOn(on, stub + block.length),
        pointOn(on, length - terminalRadius),
        block.carries,
      );
    },
  };
}
