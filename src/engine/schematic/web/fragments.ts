import { back, dartsFrom, edgeOf, head, tail, type Dart, type Edge } from './graph.ts';

/** What hangs together of the edges that are not placed yet, without passing through vertices that are. */
export interface Fragment {
  /** Its vertices that are placed already, two at least. */
  readonly contacts: readonly number[];
  /** The darts that lead from a contact into it. */
  readonly entries: readonly Dart[];
}

/** The fragments of a graph of which some vertices and edges are placed. */
export function fragmentsOf(
  edges: readonly Edge[],
  isPlaced: (edge: number) => boolean,
  vertices: ReadonlySet<number>,
): Fragment[] {
  const at = dartsFrom(edges);
  const done = new Set<number>();
  return edges.flatMap((_, edge) => {
    if (isPlaced(edge) || done.has(edge)) return [];
    done.add(edge);
    const pending: Dart[] = [2 * edge, 2 * edge + 1];
    const contacts = new Set<number>();
    const entries: Dart[] = [];
    for (let dart = pending.pop(); dart !== undefined; dart = pending.pop()) {
      const vertex = head(edges, dart);
      if (vertices.has(vertex)) {
        contacts.add(vertex);
        entries.push(back(dart));
        continue;
      }
      for (const next of at.get(vertex) ?? []) {
        if (done.has(edgeOf(next))) continue;
        done.add(edgeOf(next));
        pending.push(next);
      }
    }
    return [{ contacts: [...contacts].sort((a, b) => a - b), entries: entries.sort((a, b) => a - b) }];
  });
}

/** The shortest way through unplaced vertices that begins with one of the darts, all from one vertex, and ends at one of `ends`. */
export function wayThrough(
  edges: readonly Edge[],
  entries: readonly Dart[],
  ends: ReadonlySet<number>,
  vertices: ReadonlySet<number>,
): readonly Dart[] {
  const at = dartsFrom(edges);
  const ways = entries.map((dart) => [dart]);
  const seen = new Set<number>();
  for (const way of ways) {
    const last = way.at(-1) ?? -1;
    const vertex = head(edges, last);
    if (ends.has(vertex) && vertex !== tail(edges, way[0] ?? -1)) return way;
    if (vertices.has(vertex) || seen.has(vertex)) continue;
    seen.add(vertex);
    for (const next of at.get(vertex) ?? []) if (next !== back(last)) ways.push([...way, next]);
  }
  return [];
}
