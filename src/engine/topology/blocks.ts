/** Something that joins two nodes. */
export interface Edge {
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

/** Edges of which any two lie on a common loop, or a single edge that lies on none. */
export interface Block<E extends Edge> {
  readonly edges: readonly E[];
  /** Number of the connected piece it belongs to; the first edge's is 0. */
  readonly piece: number;
}

interface Visit<E> {
  readonly node: string;
  readonly came: E | undefined;
  readonly edges: Iterator<E>;
  /** Depth of the highest node reached from here by one edge up. */
  low: number;
}

/**
 * The blocks (biconnected components) of a graph, in linear time and without recursion. Edges from a node to itself are in
 * none. Method: J. Hopcroft and R. Tarjan, Communications of the ACM 16 (1973) 372–378 (from memory).
 */
export function blocks<E extends Edge>(edges: readonly E[]): readonly Block<E>[] {
  const at = new Map<string, E[]>();
  const incident = (node: string): E[] => at.get(node) ?? at.set(node, []).get(node) ?? [];
  for (const edge of edges) {
    if (edge.from === edge.to) continue;
    incident(edge.from).push(edge);
    incident(edge.to).push(edge);
  }
  const found: Block<E>[] = [];
  const depths = new Map<string, number>();
  let piece = 0;
  for (const root of at.keys()) {
    if (depths.has(root)) continue;
    const pending: E[] = [];
    const path: Visit<E>[] = [];
    const enter = (node: string, came?: E): void => {
      depths.set(node, path.length);
      path.push({ node, came, edges: incident(node).values(), low: path.length });
    };
    enter(root);
    for (let top = path.at(-1); top; top = path.at(-1)) {
      const { value: edge } = top.edges.next();
      if (edge === undefined) {
        path.pop();
        const parent = path.at(-1);
        if (!parent || !top.came) continue;
        parent.low = Math.min(parent.low, top.low);
        if (top.low >= path.length - 1)
          found.push({ edges: pending.splice(pending.lastIndexOf(top.came)), piece });
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
  return found;
}
