import { leaves, pieces, seriesParallel, type Circuit, type Parallel, type Tree } from '../../engine/core.ts';

/** A circuit as something to walk through: its tree, or the parts of its web as if they stood side by side. */
export function walkable(circuit: Circuit): Tree {
  const tree = seriesParallel(circuit);
  if (tree.kind !== 'irreducible') return tree;
  const parts = pieces(circuit).flatMap((piece) => piece.tree ?? piece.parts);
  const drawn = parts.filter((part) => part.kind !== 'component' || part.id !== '');
  return { kind: 'parallel', parts: drawn, from: '', to: '' };
}

const holds = (tree: Tree, id: string): boolean => leaves(tree).some((leaf) => leaf.id === id);

/** The innermost parallel group that a component stands in. */
function groupOf(tree: Tree, id: string): Parallel | undefined {
  if (tree.kind === 'component') return undefined;
  const part = tree.parts.find((each) => holds(each, id));
  return (part && groupOf(part, id)) ?? (part && tree.kind === 'parallel' ? tree : undefined);
}

/** The component so many places further along the current, branch after branch, and from the last to the first. */
export function along(tree: Tree, id: string, by: number): string {
  const order = leaves(tree).map((leaf) => leaf.id);
  return order.at((order.indexOf(id) + by) % order.length) ?? id;
}

/** The component beside it, so many branches further; itself where there is only one path. */
export function beside(tree: Tree, id: string, by: number): string {
  const parts = groupOf(tree, id)?.parts.map((part) => leaves(part).map((leaf) => leaf.id)) ?? [];
  const branch = parts.findIndex((ids) => ids.includes(id));
  const other = parts.at((branch + by) % parts.length);
  return other?.at(Math.min(parts[branch]?.indexOf(id) ?? 0, other.length - 1)) ?? id;
}

const steps: Readonly<Record<string, (tree: Tree, id: string) => string>> = {
  ArrowRight: (tree, id) => along(tree, id, 1),
  ArrowLeft: (tree, id) => along(tree, id, -1),
  ArrowDown: (tree, id) => beside(tree, id, 1),
  ArrowUp: (tree, id) => beside(tree, id, -1),
  Home: (tree) => leaves(tree)[0]?.id ?? '',
  End: (tree) => leaves(tree).at(-1)?.id ?? '',
};

/** Where a key leads from a component; undefined for a key that leads nowhere. */
export function walk(tree: Tree, id: string, key: string): string | undefined {
  return Object.hasOwn(steps, key) ? steps[key]?.(tree, id) : undefined;
}
