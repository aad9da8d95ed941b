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

/** The most parts that are put on the sides before and after the main one. */
const most = 12;

/** Every way to share the parts of a loop out among its sides; the main side has one at least. */
export function shareOut(tree: Series, measure: Measure): Sides[] {
  const [first, ...parts] = tree.parts;
  const square: Measure = { ...measure, axis: measure.axis === 'h' ? 'v' : 'h' };
  const supply = chain(tree, first ? [blockOf(first, { ...measure, left: true })] : []);
  const leads = parts.map((part) => blockOf(part, square));
  const mains = parts.map((part) => blockOf(part, measure));
  const tails = parts.map((part) => blockOf(part, { ...square, left: true }));
  const ways: Sides[] = [];
  for (let i = 0; i <= Math.min(most, parts.length - 1); i++) {
    for (let j = 0; j <= Math.min(most, parts.length - 1 - i); j++) {
      const last = parts.length - j;
      const only = last - i === 1 ? parts[i] : undefined;
      const whole = only?.kind === 'parallel';
      ways.push({
        supply,
        lead: chain(tree, leads.slice(0, i)),
        main: chain(tree, whole ? [blockOf(only, measure, true)] : mains.slice(i, last)),
        tail: chain(tree, tails.slice(last)),
        whole,
      });
    }
  }
  return ways;
}
