import type { Circuit } from '../circuit/index.ts';
import { pieceOf } from './forest.ts';
import type { Branch, Graph, Node } from './graph.ts';
import { idsOf } from './loop.ts';
import type { Remark } from './solution.ts';

const isSupply = ({ component }: Branch): boolean => component.kind === 'supply';

/** The open switches between parts that nothing but supplies join: with one of them on every path, closing it may close one. */
function breaks({ components }: Circuit, { nodes, byName }: Graph): string[] {
  const parts = new Map<Node | undefined, Node | undefined>();
  for (const node of nodes) {
    const { up } = node;
    parts.set(node, up && !isSupply(up.branch) ? parts.get(up.node) : node);
  }
  return components
    .filter(
      ({ kind, from, to, ...rest }) =>
        kind === 'switch' &&
        'closed' in rest &&
        !rest.closed &&
        parts.get(byName.get(from)) !== parts.get(byName.get(to)),
    )
    .map(({ id }) => id);
}

/** What is worth knowing of a circuit that has an answer. */
export function remarksOf(circuit: Circuit, graph: Graph): Remark[] {
  const supplies = graph.branches.filter(isSupply);
  const remarks: Remark[] = [];
  if (supplies.length > 0 && !circuit.terminals && supplies.every(({ loops }) => loops.length === 0)) {
    const switches = breaks(circuit, graph);
    remarks.push({ code: 'open loop', data: { switches }, ids: switches });
  }
  const driven = new Set(supplies.map(({ tail }) => pieceOf(tail)));
  const ids = idsOf(graph.branches.filter(({ tail }) => !driven.has(pieceOf(tail))));
  if (supplies.length > 0 && ids.length > 0) remarks.push({ code: 'cut off', data: { ids }, ids });
  return remarks;
}
