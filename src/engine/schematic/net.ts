import type { Point } from './drawing.ts';
import type { Piece } from './page.ts';

/** A point as a key. */
export const keyOf = ({ x, y }: Point): string => `${x},${y}`;

/** How many pieces end at each point, which begin there, and the node whose they are. */
export interface Meeting {
  readonly point: Point;
  readonly begin: readonly Piece[];
  readonly count: number;
  readonly node: string;
}

/** The points at which pieces begin or end. */
export function meetingsOf(pieces: readonly Piece[]): ReadonlyMap<string, Meeting> {
  const at = new Map<string, { point: Point; begin: Piece[]; count: number; node: string }>();
  const meet = (point: Point, { node = '' }: Piece, ...begin: Piece[]): void => {
    const there = at.get(keyOf(point)) ?? { point, begin: [], count: 0, node };
    there.begin.push(...begin);
    there.count++;
    at.set(keyOf(point), there);
  };
  for (const piece of pieces) {
    meet(piece.from, piece, piece);
    meet(piece.to, piece);
  }
  return at;
}

/** The paths of pieces from one junction (or open end) to the next; a loop without any begins at a symbol and ends there. */
export function pathsOf(pieces: readonly Piece[], at: ReadonlyMap<string, Meeting>): (readonly Piece[])[] {
  const done = new Set<Piece>();
  const passes = (point: Point): boolean => at.get(keyOf(point))?.count === 2;
  const follow = (start: Piece): readonly Piece[] => {
    const path: Piece[] = [];
    for (let next: Piece | undefined = start; next && !done.has(next);) {
      done.add(next);
      path.push(next);
      next = passes(next.to) ? at.get(keyOf(next.to))?.begin[0] : undefined;
    }
    return path;
  };
  const open = pieces.filter(({ from }) => !passes(from)).map(follow);
  const closed = pieces.filter(({ node }) => node === undefined).map(follow);
  return [...open, ...closed.filter((path) => path.length > 0)];
}

/** The corners of a path, with its two ends. */
export function cornersOf(path: readonly Piece[]): Point[] {
  const points = [...path.slice(0, 1).map(({ from }) => from), ...path.map(({ to }) => to)];
  return points.filter((p, i) => {
    const [before, after] = [points[i - 1], points[i + 1]];
    if (!before || !after) return true;
    return !((before.x === p.x && p.x === after.x) || (before.y === p.y && p.y === after.y));
  });
}

/** The wires of a path, each from one symbol (or junction) to the next. */
export function wiresOf(path: readonly Piece[]): (readonly Piece[])[] {
  const wires: Piece[][] = [];
  path.forEach((piece, i) => {
    if (piece.node === undefined) return;
    if (i > 0 && path[i - 1]?.node !== undefined) wires.at(-1)?.push(piece);
    else wires.push([piece]);
  });
  return wires;
}
