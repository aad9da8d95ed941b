import { incidence, type Edge } from './edge.ts';

/** Edges of which any two lie on a common loop, or a single edge that lies on none. */
export interface Block<E extends Edge> {
  /** In the order in which they were given. */
  readonly edges: readonly E[];
  /** Number of the connected piece it belongs to; the first edge's is 0. */
  readonly piece: number;
}

interface Visit<E> {
  readonly node: string;
  readonly came: E | undefined;
  readonly edges: readonly E[];
  /** The place in `edges` of the one to look at next. */
  next: number;
  /** Depth of the highest node reached from here by one edge up. */
  low: number;
}

/**
 * The blocks (biconnected components) of a graph in the order of their first edges, in linear time but for sorting, without recursion. Edges from a node to
 * itself are in none. Method: J. Hopcroft and R. Tarjan, Communications of the ACM 16 (1973) 372–378 (from memory).
 */
export function blocks<E extends Edge>(edges: readonly E[]): readonly Block<E>[] {
  const at = incidence(edges);
  const places = new Map(edges.map((edge, place) => [edge, place]));
  const place = (edge: E): number => places.get(edge) ?? 0;
  const first = ({ edges: [edge] }: Block<E>): number => (edge ? place(edge) : 0);
  const found: Block<E>[] = [];
  const depths = new Map<string, number>();
  let piece = 0;
  for (const root of at.keys()) {
    if (depths.has(root)) continue;
    const pending: E[] = [];
    const path: Visit<E>[] = [];
    const enter = (node: string, came?: E): void => {
      depths.set(node, path.length);
      path.push({ node, came, edges: at.get(node) ?? [], next: 0, low: path.length });
    };
    enter(root);
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const edge = top.edges[top.next];
      top.next += 1;
      if (edge === undefined) {
        path.pop();
        const parent = path.at(-1);
        if (!parent || !top.came) continue;
        parent.low = Math.min(parent.low, top.low);
        if (top.low < path.length - 1) continue;
        const block = pending.splice(pending.lastIndexOf(top.came));
        found.push({ edges: block.sort((a, b) => place(a) - place(b)), piece });
      } else if (edge !== top.came) {
        const next = edge.from === top.node ? edge.to : edge.from;
        const depth = depths.get(next);
        if (depth === undefined) {
          pending.push(edge);
          enter(next, edge);
        } else if (depth < path.length - 1) {
          // Up the path: a loop closes. (Seen from its upper end, the same edge leads further down.)
          pending.push(edge);
          top.low = Math.min(top.low, depth);
        }
      }
    }
    piece += 1;
  }
  return found.sort((a, b) => first(a) - first(b));
}
