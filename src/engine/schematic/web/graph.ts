/**
 * A stretch of one part of a circuit between two vertices, from the part's `from` towards its `to`. A part that crosses others is cut
 * there into several.
 */
export interface Edge {
  readonly from: number;
  readonly to: number;
  /** The place of its part; −1 where nothing is drawn and it only holds the graph together. */
  readonly part: number;
}

/** An edge run through one way: twice its number, and one more where that is from its `to` to its `from`. */
export type Dart = number;

/** The edge of a dart. */
export const edgeOf = (dart: Dart): number => dart >> 1;

/** The same edge the other way. */
export const back = (dart: Dart): Dart => dart ^ 1;

/** Where a dart begins. */
export function tail(edges: readonly Edge[], dart: Dart): number {
  const edge = edges[edgeOf(dart)];
  return (dart % 2 === 0 ? edge?.from : edge?.to) ?? -1;
}

/** Where a dart ends. */
export const head = (edges: readonly Edge[], dart: Dart): number => tail(edges, back(dart));

/** The darts that begin at each vertex, in the order of the edges. */
export function dartsFrom(edges: readonly Edge[]): ReadonlyMap<number, readonly Dart[]> {
  const from = new Map<number, Dart[]>();
  edges.forEach((edge, i) => {
    from.set(edge.from, [...(from.get(edge.from) ?? []), 2 * i]);
    from.set(edge.to, [...(from.get(edge.to) ?? []), 2 * i + 1]);
  });
  return from;
}
