import type { Point } from './drawing.ts';
import type { Piece } from './place.ts';

/** A point as a key. */
export const keyOf = ({ x, y }: Point): string => `${x},${y}`;

/** The pieces at each point. */
export function meetings<P extends Piece>(pieces: readonly P[]): Map<string, P[]> {
  const at = new Map<string, P[]>();
  for (const piece of pieces) {
    for (const end of [piece.from, piece.to]) {
      const key = keyOf(end);
      const there = at.get(key);
      if (there) there.push(piece);
      else at.set(key, [piece]);
    }
  }
  return at;
}

/** The paths that pieces make from one point where not just two meet to the next; a closed one ends where it began. */
export function pathsOf<P extends Piece>(
  pieces: readonly P[],
): { readonly points: Point[]; readonly pieces: P[] }[] {
  const at = meetings(pieces);
  const done = new Set<P>();
  const follow = (start: P): { points: Point[]; pieces: P[] } => {
    const path = [start];
    done.add(start);
    for (;;) {
      const last = path.at(-1) ?? start;
      const next = at.get(keyOf(last.to));
      const other = next?.length === 2 ? next.find((piece) => piece !== last) : undefined;
      if (!other || done.has(other) || keyOf(other.from) !== keyOf(last.to)) break;
      done.add(other);
      path.push(other);
    }
    return { points: straight([start.from, ...path.map((piece) => piece.to)]), pieces: path };
  };
  const begins = (piece: P): boolean => {
    const there = at.get(keyOf(piece.from)) ?? [];
    return (
      there.length !== 2 || there.every((other) => other === piece || keyOf(other.to) !== keyOf(piece.from))
    );
  };
  const first = pieces.filter(begins).map(follow);
  // What is left is a loop without a junction: it begins at a symbol, never at a corner.
  const rest = pieces.flatMap((piece) =>
    done.has(piece) || piece.node !== undefined ? [] : [follow(piece)],
  );
  return [...first, ...rest];
}

/** Without the points at which the path does not turn. */
function straight(points: readonly Point[]): Point[] {
  return points.filter((p, i) => {
    const before = points[i - 1];
    const after = points[i + 1];
    if (!before || !after) return true;
    return !((before.x === p.x && p.x === after.x) || (before.y === p.y && p.y === after.y));
  });
}
