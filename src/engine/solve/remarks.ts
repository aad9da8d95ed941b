import { idsOf } from './faults.ts';
import { across } from './forest.ts';
import type { Graph } from './graph.ts';
import type { Remark } from './solution.ts';

/** The (open) switches between parts that nothing but supplies join: with one of them on every path, closing it may close one. */
function breaks(graph: Graph): string[] {
  const { components, order, up, tails, heads } = graph;
  const parts: number[] = [];
  for (const node of order) {
    const branch = up[node] ?? -1;
    const isJoined = branch >= 0 && components[branch]?.kind !== 'supply';
    parts[node] = isJoined ? (parts[across(graph, branch, node)] ?? 0) : node;
  }
  return components.flatMap(({ id, kind }, place) =>
    kind === 'switch' && parts[tails[place] ?? 0] !== parts[heads[place] ?? 0] ? [id] : [],
  );
}

/** What is worth knowing of a circuit that has an answer. */
export function remarksOf(graph: Graph): Remark[] {
  const { components, ohms, tails, roots, loops, supplies } = graph;
  if (supplies.every((supply) => loops[supply]?.length === 0)) {
    const switches = breaks(graph);
    return [{ code: 'open loop', data: { switches }, ids: switches }];
  }
  const pieceOf = (branch: number): number | undefined => roots[tails[branch] ?? 0];
  const driven = supplies.map(pieceOf);
  const isCut = (branch: number): boolean => ohms[branch] !== Infinity && !driven.includes(pieceOf(branch));
  const ids = idsOf(graph, [...components.keys()].filter(isCut));
  return ids.length > 0 ? [{ code: 'cut off', data: { ids }, ids }] : [];
}
