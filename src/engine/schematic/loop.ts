import type { Series, Tree } from '../topology/index.ts';
import { blockOf, chain, type Axis, type Block, type Measure } from './block.ts';
import { place, pointOn, wire, type Line, type Sheet } from './place.ts';
import { stretch, unfit, type Plan } from './plan.ts';

/** The blocks of a loop: the supply on one side, the `main` side opposite, two sides between them. */
interface Sides {
  readonly supply: Block;
  readonly lead: Block;
  readonly main: Block;
  readonly tail: Block;
}

const isPlain = (tree: Tree): boolean => tree.kind === 'component';

/** How many parts may stand on the side before the main one: components only, and one part is left for that. */
function plainAtStart(parts: readonly Tree[]): number {
  const first = parts.findIndex((part) => !isPlain(part));
  return Math.min(first < 0 ? parts.length : first, parts.length - 1);
}

function sidesOf(tree: Series, measure: Measure, leading: number, trailing: number): Sides {
  const [supply, ...parts] = tree.parts;
  const across: Measure = { ...measure, axis: measure.axis === 'h' ? 'v' : 'h' };
  const blocks = (from: number, to: number, by: Measure): Block[] =>
    parts.slice(from, to).map((part) => blockOf(part, by, to - from === 1));
  const last = parts.length - trailing;
  return {
    supply: chain(tree, supply ? [blockOf(supply, { ...measure, left: true })] : []),
    lead: chain(tree, blocks(0, leading, across)),
    main: chain(tree, blocks(leading, last, measure)),
    tail: chain(tree, blocks(last, parts.length, { ...across, left: true })),
  };
}

/** One way to draw a loop. */
function planOf(tree: Series, measure: Measure, leading: number, trailing: number, widest: number): Plan {
  const { supply, lead, main, tail } = sidesOf(tree, measure, leading, trailing);
  const whole = main.parts.length === 1 && main.parts[0]?.tree.kind === 'parallel';
  const upright = measure.axis === 'v';
  const inside = Math.max(lead.after, tail.before);
  const sides = Math.max(lead.length, tail.length);
  // Where a corner would be crowded, the blocks of one of its two sides begin later.
  const nearSupply = sides > 0 && !upright ? supply.after : 0;
  const nearMain = sides > 0 && (whole || main.before < inside) ? main.before : 0;
  const along = Math.max(
    main.length + (nearMain > 0 ? 0 : 2 * inside),
    supply.length + (nearSupply > 0 ? 0 : 2 * inside),
  );
  const across = Math.max(sides + nearSupply + nearMain, supply.after + main.before + 8);
  const outside = { along: lead.before + tail.after, across: supply.before + main.after };
  const natural = upright
    ? { width: across + outside.across, height: along + outside.along }
    : { width: along + outside.along, height: across + outside.across };
  const size = stretch(natural, widest);
  const [moreAcross, moreAlong] = upright
    ? [size.width - natural.width, size.height - natural.height]
    : [size.height - natural.height, size.width - natural.width];
  const length = along + moreAlong;
  const depth = across + moreAcross;
  const gaps = [
    [lead, depth],
    [main, length],
    [tail, depth],
  ] as const;
  const spaces = gaps.flatMap(([{ parts, length: used }, room]) =>
    parts.length > 0 ? [(room - used) / parts.length] : [],
  );
  const uneven = Math.max(...spaces) - Math.min(...spaces) + 40 * Math.abs(leading - trailing);
  return {
    cost: unfit(size, widest) + uneven / 4,
    terminals: [],
    draw: (sheet) => {
      const { carries } = chain(
        tree,
        [supply, lead, main, tail].filter((block) => block.parts.length > 0),
      );
      const side = (block: Block, on: Line, total: number, from: number, to: number): void => {
        const [first, last] = [block.parts[0]?.tree.from, block.parts.at(-1)?.tree.to];
        if (first === undefined || last === undefined) return;
        wire(sheet, first, pointOn(on, 0), pointOn(on, from), carries);
        if (block === main && whole && block.parts[0]) place(sheet, block.parts[0], on, total, carries, true);
        else place(sheet, block, { ...on, start: on.start + on.way * from }, to - from, carries);
        wire(sheet, last, pointOn(on, to), pointOn(on, total), carries);
      };
      const across: Measure = { ...measure, axis: upright ? 'h' : 'v' };
      const inset = nearMain > 0 ? 0 : inside;
      side(
        supply,
        { measure: { ...measure, left: true }, start: length, cross: 0, way: -1 },
        length,
        0,
        length,
      );
      const edge = (block: Block, on: Line, near: number, far: number): void => {
        if (block.parts.length > 0) side(block, on, depth, near, depth - far);
        else
          wire(
            sheet,
            on.way > 0 ? (main.parts[0]?.tree.from ?? '') : (main.parts.at(-1)?.tree.to ?? ''),
            pointOn(on, 0),
            pointOn(on, depth),
            carries,
          );
      };
      edge(lead, { measure: across, start: 0, cross: 0, way: 1 }, nearSupply, nearMain);
      side(
        main,
        { measure, start: 0, cross: depth, way: 1 },
        length,
        whole ? 0 : inset,
        whole ? length : length - inset,
      );
      edge(
        tail,
        { measure: { ...across, left: true }, start: depth, cross: length, way: -1 },
        nearMain,
        nearSupply,
      );
    },
  };
}

/** Every way to draw a loop along one axis. */
export function loopPlans(tree: Series, measure: Measure, widest: number): Plan[] {
  const parts = tree.parts.slice(1);
  const most = 12;
  const leading = Math.min(most, plainAtStart(parts));
  const plans: Plan[] = [];
  for (let i = 0; i <= leading; i++) {
    const trailing = Math.min(most, plainAtStart(parts.slice(i).reverse()));
    for (let j = 0; j <= trailing; j++) plans.push(planOf(tree, measure, i, j, widest));
  }
  return plans;
}
