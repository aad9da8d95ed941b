import type { Circuit } from '../circuit/index.ts';
import { blocks } from './blocks.ts';
import type { Edge } from './edge.ts';
import { core } from './core.ts';
import { closing, treeOf } from './tree-of.ts';
import type { Irreducible, Tree } from './tree.ts';

/**
 * How the circuit is put together from series and parallel parts, or why it is not. Every component counts, open switches,
 * voltmeters and wires too, and none counts more or less for being taken out or bridged. Time grows almost linearly with their number.
 */
export function seriesParallel(circuit: Circuit): Tree | Irreducible {
  const stuck = (reason: Irreducible['reason'], ids: readonly string[] = []): Irreducible => ({
    kind: 'irreducible',
    reason,
    ids,
  });
  const ids = (edges: readonly Edge[]): readonly string[] => edges.map(({ id }) => id);

  const cut = closing(circuit);
  if (!cut) return stuck('empty');
  const found = blocks<Edge>([cut, ...circuit.components.filter((edge) => edge !== cut)]);
  const apart = new Set(found.flatMap(({ edges, piece }) => (piece > 0 ? edges : [])));
  if (apart.size > 0) return stuck('apart', ids(circuit.components.filter((edge) => apart.has(edge))));
  const live = new Set(found.find(({ edges }) => edges.length > 1 && edges.includes(cut))?.edges);
  const dead = circuit.components.filter((edge) => !live.has(edge));
  if (dead.length > 0) return stuck('dead end', ids(dead));
  return treeOf(cut, circuit.components) ?? stuck('bridge', core(cut, circuit.components).bridge);
}
