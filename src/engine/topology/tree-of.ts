import { isSupply, type Circuit } from '../circuit/index.ts';
import type { Edge } from './edge.ts';
import { orient } from './orient.ts';
import { reduce } from './reduce.ts';
import type { Tree } from './tree.ts';

/** What closes a circuit: its first supply, or else a way back (without a name) from its second terminal to its first. */
export function closing({ components, terminals }: Circuit): Edge | undefined {
  const supply = components.find(isSupply);
  return supply ?? (terminals && { id: '', from: terminals[0], to: terminals[1] });
}

/** The tree of a block, cut where it is closed; undefined where it is not series and parallel. */
export function treeOf(cut: Edge, block: readonly Edge[]): Tree | undefined {
  const rest = block.filter((edge) => edge !== cut);
  const [part, ...more] = reduce(rest, new Set([cut.from, cut.to]));
  if (!part || more.length > 0) return undefined;
  const parts: Tree[] = [];
  if (cut.id === '') {
    orient(part, cut.from, parts);
    return parts[0];
  }
  parts.push({ kind: 'component', id: cut.id, reversed: true, from: cut.to, to: cut.from });
  orient(part, cut.from, parts, 'series');
  return { kind: 'series', parts, from: cut.to, to: cut.to };
}
