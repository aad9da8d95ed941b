import type { Series } from '../topology/index.ts';
import { blockOf, chain, type Block, type Measure } from './block.ts';

/** A loop's four sides in the order in which the current passes them: the supply is opposite the `main` side. */
export interface Sides {
  readonly supply: Block;
  readonly lead: Block;
  readonly main: Block;
  readonly tail: Block;
  /** Whether the main side is one parallel group, whose junctions then are the loop's corners. */
  readonly whole: boolean;
}

/** Every way to share the parts of a loop out among its sides: the main side has one at least, the two beside it about as many. */
export function shareOut(tree: Series, measure: Measure): Sides[] {
  const [first, ...parts] = tree.parts;
  const square: Measure = { ...measure, axis: measure.axis === 'h' ? 'v' : 'h' };
  const blocks = (by: Measure, hanging = false): Block[] => parts.map((part) => blockOf(part, by, hanging));
  const supply = chain(tree, first ? [blockOf(first, { ...measure, left: true })] : []);
  const leads = blocks(square);
  const mains = blocks(measure);
  const alone = blocks(measure, true);
  const tails = blocks({ ...square, left: true });
  const ways: Sides[] = [];
  for (let i = 0; i < parts.length; i++) {
    for (let j = Math.max(0, i - 4); j <= i + 4 && i + j < parts.length; j++) {
      const last = parts.length - j;
      const single = last - i === 1;
      ways.push({
        supply,
        lead: chain(tree, leads.slice(0, i)),
        main: chain(tree, (single ? alone : mains).slice(i, last)),
        tail: chain(tree, tails.slice(last)),
        whole: single && parts[i]?.kind === 'parallel',
      });
    }
  }
  return ways;
}
