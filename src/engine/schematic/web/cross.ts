import { back, edgeOf, tail, type Dart, type Edge } from './graph.ts';

/**
 * The edges to cross, as few as may be, on a way from one vertex to another: each as the dart with the face that the way leaves on
 * its left. What is not drawn counts nothing; the edge that closes the graph is not crossed.
 */
export function crossed(
  edges: readonly Edge[],
  faces: readonly (readonly Dart[])[],
  from: number,
  to: number,
): readonly Dart[] {
  const around = (face: readonly Dart[], vertex: number): boolean =>
    face.some((dart) => tail(edges, dart) === vertex);
  const faceOf = new Map(faces.flatMap((face) => face.map((dart) => [dart, face] as const)));
  const seen = new Set<readonly Dart[]>();
  let waiting = faces
    .filter((face) => around(face, from))
    .map((face) => ({ face, over: [] as readonly Dart[], cost: 0 }));
  for (let next = waiting.shift(); next; next = waiting.shift()) {
    const { face, over, cost } = next;
    if (seen.has(face)) continue;
    if (around(face, to)) return over;
    seen.add(face);
    const further = face.flatMap((dart) => {
      const beyond = faceOf.get(back(dart));
      if (!beyond || edgeOf(dart) === 0) return [];
      return [
        { face: beyond, over: [...over, dart], cost: cost + (edges[edgeOf(dart)]?.part === -1 ? 0 : 1) },
      ];
    });
    waiting = [...waiting, ...further].sort((a, b) => a.cost - b.cost);
  }
  return [];
}
