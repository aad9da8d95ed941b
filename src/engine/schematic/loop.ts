import type { Series } from '../topology/index.ts';
import { chain, ribbonRoom, type Block, type Measure } from './block.ts';
import { onwards, wire, type Line, type Page } from './page.ts';
import { place } from './place.ts';
import { margin, stretch, unfit, type Plan } from './plan.ts';
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
    // Between two upright sides no label stands: there is room for a wire across a component of either.
    across: Math.max(sides + nearSupply + nearMain, supply.after + main.before + (upright ? ribbonRoom : 0)),
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
  const strays = [...lead.parts, ...tail.parts].some(({ kind }) => kind === 'parallel');
  const uneven = (Math.max(...spaces) - Math.min(...spaces)) / 4;
  return uneven + 10 * Math.abs(lead.parts.length - tail.parts.length) + (strays ? 60 : 0);
}

/** Shares more depth out between the supply, the branches of the group opposite, and each other. */
function evenly(main: Block, across: number, more: number): readonly [main: Block, across: number] {
  const [group] = main.parts;
  const branches = group?.parts ?? [];
  const last = branches.at(-1)?.offset ?? 0;
  const depth = across + last + more;
  const first = Math.max(across, 2 * Math.round(depth / branches.length / 2));
  const factor = (depth - first) / last;
  if (!group || factor < 1) return [main, across + more];
  const parts = branches.map((branch) => ({
    ...branch,
    offset: 2 * Math.round((branch.offset * factor) / 2),
  }));
  return [{ ...main, parts: [{ ...group, parts }] }, first];
}

/** Draws the four sides in the direction in which the supply drives; `first` and `cross` are the corner at its positive end. */
function draw(
  page: Page,
  measure: Measure,
  sides: Sides,
  rectangle: Rectangle,
  first: number,
  cross: number,
): void {
  const { supply, lead, main, tail, whole } = sides;
  const { along, across, inset, nearSupply, nearMain } = rectangle;
  const { carries } = chain([supply, lead, main, tail].filter(({ parts }) => parts.length > 0));
  const edge = (
    block: Block,
    on: Omit<Line, 'page' | 'carries'>,
    length: number,
    near: number,
    far: number,
  ): void => {
    const from = { ...on, page, carries };
    wire(from, block.from, 0, near);
    place(block, onwards(from, near), length - near - far, whole && block === main);
    wire(from, block.to, length - far, length);
  };
  const square = { ...measure, upright: !measure.upright };
  edge(supply, { measure: { ...measure, left: true }, start: first + along, cross, way: -1 }, along, 0, 0);
  edge(lead, { measure: square, start: cross, cross: first, way: 1 }, across, nearSupply, nearMain);
  edge(main, { measure, start: first, cross: cross + across, way: 1 }, along, inset, inset);
  edge(
    tail,
    { measure: { ...square, left: true }, start: cross + across, cross: first + along, way: -1 },
    across,
    nearMain,
    nearSupply,
  );
}

function planOf(sides: Sides, measure: Measure, widest: number): Plan {
  const { upright } = measure;
  const least = rectangleOf(sides, upright);
  const { supply, lead, main, tail, whole } = sides;
  const edge = (room: number): number => margin + Math.max(room, ribbonRoom);
  const [first, cross] = [edge(lead.before), edge(supply.before)];
  const along = first + least.along + edge(tail.after);
  const across = cross + least.across + edge(main.after);
  const natural = upright ? { width: across, height: along } : { width: along, height: across };
  const size = stretch(natural, widest);
  const [wider, higher] = [size.width - natural.width, size.height - natural.height];
  const [longer, deeper] = upright ? [higher, wider] : [wider, higher];
  const [spread, depth] = whole ? evenly(main, least.across, deeper) : [main, least.across + deeper];
  const rectangle = { ...least, along: least.along + longer, across: depth };
  return {
    cost: unfit(size, widest) + awkwardness(sides, rectangle) + (upright ? 60 : 0),
    size,
    draw: (page) => {
      draw(page, measure, { ...sides, main: spread }, rectangle, first, cross);
      return [];
    },
  };
}

/** Every way to draw a loop along one axis. */
export function loopPlans(tree: Series, measure: Measure, widest: number): Plan[] {
  return shareOut(tree, measure).map((sides) => planOf(sides, measure, widest));
}
