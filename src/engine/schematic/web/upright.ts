import { back, edgeOf, head, tail, type Dart, type Edge } from './graph.ts';
import type { Web } from './web.ts';

/** A graph in the plane that stands upright: the first one at the left, from its lowest to its highest vertex. */
export interface Upright {
  readonly edges: readonly Edge[];
  readonly heights: readonly number[];
  /** Vertices of this number and above are crossings. */
  readonly crossings: number;
  /** The edges that come down to each vertex, and those that go down from it, from left to right. */
  readonly above: readonly (readonly number[])[];
  readonly below: readonly (readonly number[])[];
  /** The upper and the lower end of each edge. */
  readonly top: readonly number[];
  readonly bottom: readonly number[];
  /** The numbers of the faces at each edge's left and right; the face outside is 0, and −1 at the right. */
  readonly left: readonly number[];
  readonly right: readonly number[];
  /** How many faces there are, the one outside included. */
  readonly faces: number;
}

/** The darts from each vertex, clockwise: what leads up from left to right, then what leads down from right to left. */
function clockwise(
  faces: readonly (readonly Dart[])[],
  edges: readonly Edge[],
  isDown: (dart: Dart) => boolean,
  count: number,
): Dart[][] {
  const next = new Map<Dart, Dart>();
  for (const face of faces) {
    face.forEach((dart, i) => next.set(back(face.at(i - 1) ?? dart), dart));
  }
  return Array.from({ length: count }, (_, vertex) => {
    const own = [...next.keys()].filter((dart) => tail(edges, dart) === vertex);
    const isFirst = (dart: Dart): boolean =>
      !isDown(dart) && own.some((each) => isDown(each) && next.get(each) === dart);
    const first = own.find(isFirst) ?? own[0] ?? -1;
    const turn: Dart[] = [];
    for (let dart = first; turn.length < own.length; dart = next.get(dart) ?? -1) turn.push(dart);
    return turn;
  });
}

/** Stands a graph upright, or its mirror image. */
export function upright({ embedding, heights }: Web, mirrored: boolean): Upright {
  const { edges, crossings } = embedding;
  const count = heights.length;
  const walks = mirrored ? embedding.faces.map((face) => face.map(back).reverse()) : embedding.faces;
  const isDown = (dart: Dart): boolean =>
    (heights[tail(edges, dart)] ?? 0) > (heights[head(edges, dart)] ?? 0);
  const outside = walks.find((face) => face.includes(0)) ?? [];
  const faces = [outside, ...walks.filter((face) => face !== outside)];
  const faceOf = new Map(faces.flatMap((face, number) => face.map((dart) => [dart, number] as const)));
  const down = edges.map((_, edge) => (isDown(2 * edge) ? 2 * edge : 2 * edge + 1));
  const right = down.map((dart) => {
    const face = faceOf.get(dart) ?? 0;
    return face === 0 ? -1 : face;
  });
  const left = down.map((dart) => faceOf.get(back(dart)) ?? 0);
  const turns = clockwise(faces, edges, isDown, count);
  const fromCut = (turn: readonly Dart[]): readonly Dart[] => {
    const cut = turn.findIndex((dart) => edgeOf(dart) === 0);
    return [...turn.slice(cut), ...turn.slice(0, cut)];
  };
  const [t, s] = [tail(edges, 0), head(edges, 0)];
  const above = turns.map((turn, vertex) =>
    (vertex === t ? fromCut(turn) : turn).filter((dart) => !isDown(dart)).map(edgeOf),
  );
  const below = turns.map((turn, vertex) => {
    const darts = (vertex === s ? fromCut(turn) : turn).filter(isDown).map(edgeOf);
    // Clockwise from the cut, which is leftmost, the next one is the rightmost.
    return vertex === s ? [...darts.slice(0, 1), ...darts.slice(1).reverse()] : darts.reverse();
  });
  return {
    edges,
    heights,
    crossings,
    above,
    below,
    top: down.map((dart) => tail(edges, dart)),
    bottom: down.map((dart) => head(edges, dart)),
    left,
    right,
    faces: faces.length,
  };
}
