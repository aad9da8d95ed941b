import { twinOf } from '../../../src/engine/circuit/index.ts';
import type { Box, Drawing, Point } from '../../../src/engine/schematic/index.ts';

/** A straight line from one point to another. */
export interface Leg {
  readonly from: Point;
  readonly to: Point;
}

/** The straight pieces of a path. */
export const legsOf = (points: readonly Point[]): Leg[] =>
  points.slice(1).flatMap((to, i) => {
    const from = points[i];
    return from ? [{ from, to }] : [];
  });

/** A point as a key. */
export const keyOf = ({ x, y }: Point): string => `${x},${y}`;

export const lengthOf = ({ from, to }: Leg): number => Math.abs(to.x - from.x) + Math.abs(to.y - from.y);

/** The least box round an axis-parallel line. */
export const boxOf = ({ from, to }: Leg): Box => ({
  x: Math.min(from.x, to.x),
  y: Math.min(from.y, to.y),
  width: Math.abs(to.x - from.x),
  height: Math.abs(to.y - from.y),
});

/** Whether two boxes have a point in common, edges included. */
export const touches = (a: Box, b: Box): boolean =>
  a.x <= b.x + b.width && b.x <= a.x + a.width && a.y <= b.y + b.height && b.y <= a.y + a.height;

type WireLeg = Leg & { readonly node: string };
const legsOfDrawings = new WeakMap<Drawing, readonly WireLeg[]>();

/** The wires of a drawing as straight pieces with their nodes. */
export function wireLegs(drawing: Drawing): readonly WireLeg[] {
  const legs =
    legsOfDrawings.get(drawing) ??
    drawing.wires.flatMap(({ node, lines }) =>
      lines.flatMap((line) => legsOf(line).map((leg) => ({ ...leg, node }))),
    );
  legsOfDrawings.set(drawing, legs);
  return legs;
}

/** Whether wires are the one across a component, not those of a node. */
export const isBridge = ({ node }: { readonly node: string }): boolean => node.endsWith(' bridge');

/** The two points at which a symbol's wires end. */
export function endsOf({ box }: Drawing['symbols'][number]): [Point, Point] {
  const upright = box.height > box.width;
  const [x, y] = [box.x + box.width / 2, box.y + box.height / 2];
  return upright
    ? [
        { x, y: box.y },
        { x, y: box.y + box.height },
      ]
    : [
        { x: box.x, y },
        { x: box.x + box.width, y },
      ];
}

/** The two points in the middle of a changeover switch at which the wire of its common terminal may end: of one of its contacts. */
export function forkEnds(symbol: Drawing['symbols'][number], { symbols }: Drawing): readonly Point[] {
  const { id, at } = symbol;
  const other = symbols.find((each) => each.id === twinOf(id));
  if (!other || lengthOf({ from: at, to: other.at }) !== 24) return [];
  const [x, y] = [(other.at.x - at.x) / 2, (other.at.y - at.y) / 2];
  return endsOf(symbol).map((end) => ({ x: end.x + x, y: end.y + y }));
}

/** The point at which the wire of a potentiometer's contact may end, beside the middle of its track: of one of its parts. */
export function wiperEnds(symbol: Drawing['symbols'][number], { symbols }: Drawing): readonly Point[] {
  const { id, at, box } = symbol;
  const other = symbols.find((each) => each.id === twinOf(id));
  if (!other || lengthOf({ from: at, to: other.at }) !== 30) return [];
  const [x, y] = [(at.x + other.at.x) / 2, (at.y + other.at.y) / 2];
  return [box.height > box.width ? { x: x + 22, y } : { x, y: y + 22 }];
}

/** The first two things of a list that touch, as their names; undefined where none do. */
export function firstTouch<T>(
  things: readonly T[],
  box: (thing: T) => Box,
  name: (thing: T) => string,
): string | undefined {
  for (const [i, a] of things.entries()) {
    for (const b of things.slice(i + 1)) if (touches(box(a), box(b))) return `${name(a)} and ${name(b)}`;
  }
  return undefined;
}

/** The point inside two lines where they cross at a right angle; undefined where they do not. */
export function crossingOf(a: Leg, b: Leg): Point | undefined {
  const [level, upright] = a.from.y === a.to.y ? [a, b] : [b, a];
  if (level.from.y !== level.to.y || upright.from.x !== upright.to.x) return undefined;
  const point = { x: upright.from.x, y: level.from.y };
  const inside = [level, upright].every((leg) =>
    [leg.from, leg.to].every((end) => keyOf(end) !== keyOf(point)),
  );
  return inside && touches(boxOf(a), boxOf(b)) ? point : undefined;
}

/** Where wires pass over others, and which nodes they are of. */
export const hopsOf = (drawing: Drawing): { readonly node: string; readonly at: Point }[] =>
  drawing.wires.flatMap(({ node, hops }) => hops.map((at) => ({ node, at })));
