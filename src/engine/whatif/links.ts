import { leaves, type Tree } from '../topology/index.ts';

/** What a link of a chain of reasons speaks of: the current, the p.d. or the resistance of a block. */
export type Link = readonly ['I' | 'V' | 'R', Tree];

/** Whether a component is part of a block. */
export const holds = (tree: Tree, id: string): boolean => leaves(tree).some((leaf) => leaf.id === id);

/** The blocks that hold a component, from the whole down to itself. */
export function pathTo(tree: Tree, id: string): Tree[] {
  if (tree.kind === 'component') return [tree];
  const part = tree.parts.find((each) => holds(each, id));
  return part ? [tree, ...pathTo(part, id)] : [tree];
}

/** What to speak of on the way down from a block to a quantity of a component: the current of what is in series, the p.d. of what is parallel. */
const downTo = (letter: 'I' | 'V', id: string, block: Tree): Link[] =>
  pathTo(block, id).map((next) => [
    next.kind === 'component' ? letter : next.kind === 'parallel' ? 'V' : 'I',
    next,
  ]);

/**
 * The blocks to speak of, from the current through the supply down to a quantity of a component: along the blocks that hold all that
 * is turned, to the one beside them that holds the component, and down that one, where all does the same. Where it is in one of two in which
 * something is turned, of the other one first.
 */
export function linksTo(
  letter: 'I' | 'V',
  id: string,
  paths: readonly (readonly Tree[])[],
  supply: Tree,
): Link[] {
  const links: Link[] = [['I', supply]];
  const [first = [], ...others] = paths;
  const shared = first.filter((block, depth) => others.every((path) => path[depth] === block));
  for (const [depth, block] of shared.entries()) {
    const turned = shared[depth + 1];
    if (!turned || block.kind === 'component') break;
    const beside = block.parts.find((part) => part !== turned && holds(part, id));
    if (beside === supply) break;
    if (beside) return [...links, ...downTo(letter, id, beside)];
    links.push([block.kind === 'series' ? 'V' : 'I', turned]);
  }
  const last = shared.at(-1);
  const [told, about] = links.at(-1) ?? [];
  if (!last || holds(supply, id) || last.kind === 'component') {
    const own = holds(supply, id) ? supply : last;
    return own && (told !== letter || about !== own) ? [...links, [letter, own]] : links;
  }
  const parts = paths.flatMap((path) => path[shared.length] ?? []);
  const apart = parts.some((part) => holds(part, id)) ? parts.filter((part) => !holds(part, id)) : [];
  return [
    ...links,
    ...apart.map((part): Link => [last.kind === 'series' ? 'V' : 'I', part]),
    ...downTo(letter, id, last).slice(1),
  ];
}
