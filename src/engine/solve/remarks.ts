import type { Circuit } from '../circuit/index.ts';
import { idsOf } from './faults.ts';
import { pieceOf } from './forest.ts';
import type { Graph, Node } from './graph.ts';
import type { Remark } from './solution.ts';

/** The (open) switches between parts that nothing but supplies join: with one of them on every path, closing it may close one. */
function breaks({ components }: Circuit, { nodes, byName }: Graph): string[] {
  const parts = new Map<Node | undefined, Node | undefined>();
  for (const node of nodes) {
    const { up } = node;
    parts.set(node, up && up.branch.component.kind !== 'supply' ? parts.get(up.node) : node);
  }
  const partOf = (node: string): Node | undefined => parts.get(byName.get(node));
  return components.flatMap((part) =>
    part.kind === 'switch' && partOf(part.from) !== partOf(part.to) ? [part.id] : [],
  );
}

/** What is worth knowing of a circuit that has an answer. */
export function remarksOf(circuit: Circuit, graph: Graph): Remark[] {
  const { branches, supplies } = graph;
  if (supplies.every(({ loops }) => loops.length === 0)) {
    const switches = breaks(circuit, graph);
    return [{ code: 'open loop', data: { switches }, ids: switches }];
  }
  const driven = supplies.map(({ tail }) => pieceOf(tail));
  const ids = idsOf(branches.filter(({ tail }) => !driven.includes(pieceOf(tail))));
  return ids.length > 0 ? [{ code: 'cut off', data: { ids }, ids }] : [];
}
