import { isSupply, type Circuit } from '../../../src/engine/circuit/index.ts';
import { seriesParallel, type Tree } from '../../../src/engine/topology/index.ts';

/**
 * Currents that obey the junction law, made up without any physics: each parallel group shares its current out by weights that
 * follow from the ids, some of them negative; a wire across a component takes five eighths. By id, counted as the engine counts: from `from` to `to`, a supply's out of its `from`.
 */
export function madeUpFlow({ components }: Circuit, tree: Tree, total: number): ReadonlyMap<string, number> {
  const flow = new Map<string, number>();
  const bridged = new Set(components.filter(({ condition }) => condition === 'bridged').map(({ id }) => id));
  const supplies = new Set(components.filter(isSupply).map(({ id }) => id));
  const share = (part: Tree, current: number): void => {
    if (part.kind === 'component') {
      const own = bridged.has(part.id) ? 0.375 * current : current;
      flow.set(part.id, part.reversed === supplies.has(part.id) ? own : -own);
      const aside = current - own;
      if (aside !== 0) flow.set(`${part.id} bridge`, part.reversed ? -aside : aside);
    } else if (part.kind === 'series') for (const each of part.parts) share(each, current);
    else {
      const weights = part.parts.map((_, i) => ((i * 7 + 3) % 5) - 0.75);
      const sum = weights.reduce((a, b) => a + b, 0);
      part.parts.forEach((each, i) => {
        share(each, (current * (weights[i] ?? 0)) / sum);
      });
    }
  };
  share(tree, total);
  return flow;
}

/** The tree of a circuit that is known to have one. */
export function treeOf(circuit: Circuit): Tree {
  const tree = seriesParallel(circuit);
  if (tree.kind === 'irreducible') throw new Error(tree.reason);
  return tree;
}
