/** Something that joins two nodes. */
export interface Edge {
  readonly id: string;
  readonly from: string;
  readonly to: string;
}

/** The edges at each node, in their order; edges from a node to itself left out. */
export function incidence<E extends Edge>(edges: readonly E[]): ReadonlyMap<string, readonly E[]> {
  const at = new Map<string, E[]>();
  for (const edge of edges) {
    if (edge.from === edge.to) continue;
    for (const node of [edge.from, edge.to]) {
      const here = at.get(node);
      if (here) here.push(edge);
      else at.set(node, [edge]);
    }
  }
  return at;
}
