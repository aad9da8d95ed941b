import type { Series } from '../topology/index.ts';
import { chain, type Block, type Measure } from './block.ts';
import { place, pointOn, wire, type Line, type Sheet } from './place.ts';
import { stretch, unfit, type Plan } from './plan.ts';
import { shareOut, type Sides } from './sides.ts';

/** Where the lines of a loop run, in its own directions: `along` the main side and `across` to it. */
interface Rectangle {
  /** From the first side to the last. */
  readonly along: number;
  /** From the supply to the main side. */
  readonly across: number;
  /** How far the main side's blocks stay away from its two corners. */
  readonly inset: number;
  /** How far the blocks of the first and last side stay away from the supply's corner, and from the main side's. */
  readonly nearSupply: number;
  readonly nearMain: number;
}

/** The least rectangle; where a corner would be crowded, the blocks of one of its two sides stay away from it. */
function rectangleOf({ supply, lead, main, tail, whole }: Sides, upright: boolean): Rectangle {
  const sides = Math.max(lead.length, tail.length);
  const inside = Math.max(lead.after, tail.before);
  const nearSupply = sides > 0 && !upright ? supply.after : 0;
  const nearMain = sides > 0 && (whole || main.before < inside) ? main.before : 0;
  const inset = whole || nearMain > 0 ? 0 : inside;
  return {
    along: Math.max(
      main.length + 2 * inset,
      lead.after + tail.before + 8,
      supply.length + (nearSupply > 0 ? 0 : 2 * inside),
    ),
    across: Math.max(sides + nearSupply + nearMain, supply.after + main.before + 8),
    inset,
    nearSupply,
    nearMain,
  };
}

/** How far the sides are from what a teacher would draw: parts unevenly spaced, groups anywhere but on the main side. */
function awkwardness({ lead, main, tail }: Sides, { along, across }: Rectangle): number {
  const spaces = [lead, main, tail].flatMap((block) => {
    const room = block === main ? along : across;
    return block.parts.length > 0 ? [(room - block.length) / block.parts.length] : [];
  });
  const strays = [...lead.parts, ...tail.parts].some(({ tree }) => tree.kind === 'parallel');
  const uneven = (Math.max(...spaces) - Math.min(...spaces)) / 4;
  return uneven + 10 * Math.abs(lead.parts.length - tail.parts.length) + (strays ? 60 : 0);
}

/** Draws the four sides in the direction in which the supply drives. */
function draw(sheet: Sheet, tree: Series, sides: Sides, rectangle: Rectangle, measure: Measure): void {
  const { supply, lead, main, tail, whole } = sides;
  const { along, across, inset, nearSupply, nearMain } = rectangle;
  const { carries } = chain(
    tree,
    tree.parts.length > 1 ? [supply, lead, main, tail].filter((side) => side.parts.length > 0) : [],
  );
  const square: Measure = { ...measure, axis: measure.axis === 'h' ? 'v' : 'h' };
  const [before, after] = [main.parts[0]?.tree.from ?? '', main.parts.at(-1)?.tree.to ?? ''];

  const side = (block: Block, on: Line, length: number, from: number, to: number, corner: string): void => {
    wire(sheet, block.parts[0]?.tree.from ?? corner, pointOn(on, 0), pointOn(on, from), carries);
    if (block.parts.length > 0)
      place(
        sheet,
        block,
        { ...on, start: on.start + on.way * from },
        to - from,
        carries,
        whole && block === main,
      );
    else wire(sheet, corner, pointOn(on, from), pointOn(on, to), carries);
    wire(sheet, block.parts.at(-1)?.tree.to ?? corner, pointOn(on, to), pointOn(on, length), carries);
  };
  side(supply, { measure: { ...measure, left: true }, start: along, cross: 0, way: -1 }, along, 0, along, '');
  side(lead, { measure: square, start: 0, cross: 0, way: 1 }, across, nearSupply, across - nearMain, before);
  side(main, { measure, start: 0, cross: across, way: 1 }, along, inset, along - inset, '');
  side(
    tail,
    { measure: { ...square, left: true }, start: across, cross: along, way: -1 },
    across,
    nearMain,
    across - nearSupply,
    after,
  );
}

/** Shares more depth out between the supply, the branches of the group opposite, and each other. */
function evenly(main: Block, across: number, more: number): { main: Block; across: number } {
  const [group] = main.parts;
  const offsets = group?.offsets ?? [];
  const last = offsets.at(-1) ?? 0;
  const depth = across + last + more;
  const first = Math.max(across, 2 * Math.round(depth / offsets.length / 2));
  const factor = (depth - first) / last;
  if (!group || factor < 1) return { main, across: across + more };
  const spread = { ...group, offsets: offsets.map((offset) => 2 * Math.round((offset * factor) / 2)) };
  return { main: { ...main, parts: [spread] }, across: first };
}

function planOf(tree: Series, sides: Sides, measure: Measure, widest: number): Plan {
  const upright = measure.axis === 'v';
  const least = rectangleOf(sides, upright);
  const { supply, lead, main, tail } = sides;
  const along = least.along + lead.before + tail.after;
  const across = least.across + supply.before + main.after;
  const natural = upright ? { width: across, height: along } : { width: along, height: across };
  const size = stretch(natural, widest);
  const [wider, higher] = [size.width - natural.width, size.height - natural.height];
  const [longer, deeper] = upright ? [higher, wider] : [wider, higher];
  const { whole } = sides;
  const spaced = whole ? evenly(main, least.across, deeper) : { main, across: least.across + deeper };
  const rectangle = { ...least, along: least.along + longer, across: spaced.across };
  return {
    cost: unfit(size, widest) + awkwardness(sides, rectangle) + (upright ? 60 : 0),
    width: size.width,
    terminals: [],
    draw: (sheet) => {
      draw(sheet, tree, { ...sides, main: spaced.main }, rectangle, measure);
    },
  };
}

/** Every way to draw a loop along one axis. */
export function loopPlans(tree: Series, measure: Measure, widest: number): Plan[] {
  return shareOut(tree, measure).map((sides) => planOf(tree, sides, measure, widest));
}
