import type { Series } from '../topology/index.ts';
import { blockOf, chain, partsIn, type Block, type Measure } from './block.ts';

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
  const parts = partsIn(tree, measure);
  const square = { ...measure, upright: !measure.upright };
  const blocks = (by: Measure, hanging = false): Block[] => parts.map((part) => blockOf(part, by, hanging));
  const leads = blocks(square);
  const mains = blocks(measure);
  const alone = blocks(measure, true);
  const tails = blocks({ ...square, left: true });
  const supply = chain(blocks({ ...measure, left: true }).slice(0, 1));
  const count = parts.length;
  const ways: Sides[] = [];
  for (let first = 1; first < count; first++) {
    for (let last = count; last > first; last--) {
      if (Math.abs(first - 1 - (count - last)) > 4) continue;
      const single = last - first === 1;
      const main = chain((single ? alone : mains).slice(first, last));
      ways.push({
        supply,
        lead: chain(leads.slice(1, first), main.from),
        main,
        tail: chain(tails.slice(last), main.to),
        whole: single && main.parts[0]?.kind === 'parallel' && !main.parts[0].start && !main.parts[0].end,
      });
    }
  }
  return ways;
}
