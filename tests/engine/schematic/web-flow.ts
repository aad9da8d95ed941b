import { bridges, type Circuit } from '../../../src/engine/circuit/index.ts';

/**
 * Currents that obey the junction law in any circuit, made up without any physics: round every loop that a component closes over those
 * before it flows a current of its own. By id, counted as the engine counts; the way outside from terminal to terminal counts as one more.
 */
export function webFlow(circuit: Circuit): ReadonlyMap<string, number> {
  const { components } = bridges(circuit);
  const [from, to] = circuit.terminals ?? [];
  const outside =
    from !== undefined && to !== undefined ? [{ id: '', kind: 'wire', from: to, to: from }] : [];
  const edges = [...components, ...outside];
  const flow = new Map<string, number>(edges.map(({ id }) => [id, 0]));
  const tree: typeof edges = [];

  /** The way over the tree from one node to another: each edge with the direction in which it is passed. */
  const way = (start: string, end: string): { edge: (typeof edges)[number]; sign: 1 | -1 }[] | undefined => {
    const ways = [{ node: start, path: [] as { edge: (typeof edges)[number]; sign: 1 | -1 }[] }];
    const seen = new Set([start]);
    for (const { node, path } of ways) {
      if (node === end) return path;
      for (const edge of tree) {
        const sign = edge.from === node ? 1 : -1;
        const next = edge.from === node ? edge.to : edge.to === node ? edge.from : undefined;
        if (next === undefined || seen.has(next)) continue;
        seen.add(next);
        ways.push({ node: next, path: [...path, { edge, sign }] });
      }
    }
    return undefined;
  };

  edges.forEach((edge, i) => {
    const path = way(edge.to, edge.from);
    if (!path) {
      tree.push(edge);
      return;
    }
    const current = ((i * 7 + 3) % 11) - 4.75;
    for (const { edge: each, sign } of [...path, { edge, sign: 1 as const }]) {
      const counted = each.kind === 'supply' || each.kind === 'source' ? -sign : sign;
      flow.set(each.id, (flow.get(each.id) ?? 0) + counted * current);
    }
  });
  return flow;
}
