import { isPoint } from '../circuit/index.ts';
import type { Box, NodeWires, PlacedLabel, PlacedSymbol, Point } from './drawing.ts';
import { terminalRadius } from './network.ts';
import type { Size } from './plan.ts';
import { labelWidth } from './text.ts';

/** What has been drawn round the points that are to be labelled. */
export interface Scene {
  readonly width: number;
  readonly height: number;
  /** Without the wires across components, so that nothing moves when there are some. */
  readonly wires: readonly NodeWires[];
  readonly symbols: readonly PlacedSymbol[];
  /** What labels, marks and arrows take up. */
  readonly taken: readonly Box[];
  readonly terminals: readonly Point[];
}

/** A labelled point: its letter, and where its dot is; at a terminal, which has an open circle already, it has none. */
export interface Spot {
  readonly label: PlacedLabel;
  readonly dot: Point | undefined;
}

/** How far a letter stays away from wires, where there is the room and where there is little: half of the widest ribbon at least. */
const clearances = [12, 9];
/** Room for a wire across a component. */
const across = 8;
/** From one place that is tried to the next, along a wire. */
const step = 8;
/** How high a capital is above its line; a subscript goes below it. */
const capital = 11;

const grown = ({ x, y, width, height }: Box, by: number): Box => ({
  x: x - by,
  y: y - by,
  width: width + 2 * by,
  height: height + 2 * by,
});

const overlap = (a: Box, b: Box): boolean =>
  a.x < b.x + b.width && b.x < a.x + a.width && a.y < b.y + b.height && b.y < a.y + a.height;

const legsOf = (lines: NodeWires['lines']): (readonly [Point, Point])[] =>
  lines.flatMap((line) => line.slice(1).map((to, i) => [line[i] ?? to, to] as const));

const boxOf = ([p, q]: readonly [Point, Point]): Box => ({
  x: Math.min(p.x, q.x),
  y: Math.min(p.y, q.y),
  width: Math.abs(p.x - q.x),
  height: Math.abs(p.y - q.y),
});

/** The points on a wire, from its middle outwards. */
function alongLeg([p, q]: readonly [Point, Point]): Point[] {
  const length = Math.abs(q.x - p.x) + Math.abs(q.y - p.y);
  const steps = Math.floor(length / 2 / step);
  const places = Array.from({ length: steps }, (_, i) => i * step).flatMap((far) =>
    far === 0 ? [length / 2] : [length / 2 - far, length / 2 + far],
  );
  const [dx, dy] = [(q.x - p.x) / length, (q.y - p.y) / length];
  return places.map((far) => ({ x: Math.round(p.x + far * dx), y: Math.round(p.y + far * dy) }));
}

/** Where the dot of a point may be, the best first: at a terminal, where wires meet, in the middle of a long wire, anywhere on one. */
function dotsFor({ lines, dots }: NodeWires, terminals: readonly Point[]): readonly Point[] {
  const ends = lines.flatMap((line) => [line[0], line.at(-1)]);
  const own = terminals.filter(({ x, y }) =>
    ends.some((end) => end && Math.abs(end.x - x) + Math.abs(end.y - y) === terminalRadius),
  );
  if (own.length > 0) return own;
  const legs = legsOf(lines).map((leg) => ({ leg, box: boxOf(leg) }));
  legs.sort((a, b) => b.box.width + b.box.height - a.box.width - a.box.height);
  return [...dots, ...legs.flatMap(({ leg }) => alongLeg(leg))];
}

/** The boxes for a letter round a point, the best first: straight above it, beside and below, then at its corners. */
function boxesRound({ x, y }: Point, { width, height }: Size, away: number): Box[] {
  const [left, right] = [x - away - width, x + away];
  const [over, under] = [y - away - height, y + away];
  const [middle, level] = [x - width / 2, y - height / 2];
  const corners = [
    [middle, over],
    [right, level],
    [left, level],
    [middle, under],
    [left, over],
    [right, over],
    [left, under],
    [right, under],
  ] as const;
  return corners.map(([x, y]) => ({ x: Math.round(x), y: Math.round(y), width, height }));
}

/** The first dot that has a free box beside it, and the box: of those with the widest clearance, before narrower ones. */
function firstFree(
  dots: readonly Point[],
  freeBeside: (dot: Point, clear: number) => Box | undefined,
): { readonly dot: Point; readonly box: Box } | undefined {
  for (const clear of clearances)
    for (const dot of dots) {
      const box = freeBeside(dot, clear);
      if (box) return { dot, box };
    }
  return undefined;
}

/** Labels the points of a drawing, each where its letter touches nothing. */
export function spotsOf({ width, height, wires, symbols, taken: texts, terminals }: Scene): Spot[] {
  const spots: Spot[] = [];
  const legs = wires.flatMap(({ lines }) => legsOf(lines).map(boxOf));
  const solid = [
    ...symbols.map(({ box }) => grown(box, across)),
    ...symbols.flatMap(({ aside }) => (aside ? [grown(aside, 2)] : [])),
    ...texts.map((box) => grown(box, 2)),
    ...terminals.map(({ x, y }) => grown({ x, y, width: 0, height: 0 }, terminalRadius + 2)),
  ];
  // No dot stands on the arrow of a current.
  const marks = texts.map((box) => grown(box, 4));
  for (const node of wires.filter((each) => isPoint(each.node))) {
    const text = node.node;
    const room = { width: labelWidth(text), height: capital + (text.length > 1 ? 4 : 1) };
    const places = dotsFor(node, terminals).filter(({ x, y }) => {
      const spot = { x, y, width: 0, height: 0 };
      return !marks.some((mark) => overlap(spot, mark));
    });
    const taken = [...solid, ...spots.map(({ label }) => grown(label.box, 2))];
    const isInside = (box: Box): boolean =>
      box.x >= 2 && box.y >= 2 && box.x + box.width <= width - 2 && box.y + box.height <= height - 2;
    const freeBeside = (dot: Point, clear: number): Box | undefined =>
      boxesRound(dot, room, clear).find(
        (box) =>
          isInside(box) &&
          !taken.some((other) => overlap(box, other)) &&
          !legs.some((leg) => overlap(grown(box, clear), leg)),
      );
    const found = firstFree(places, freeBeside);
    if (!found) continue;
    const { dot, box } = found;
    spots.push({
      label: {
        id: text,
        role: 'point',
        text,
        at: { x: box.x + box.width / 2, y: box.y + capital },
        anchor: 'middle',
        box,
      },
      dot: terminals.includes(dot) ? undefined : dot,
    });
  }
  return spots;
}
