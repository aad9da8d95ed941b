import type { Single, Tree } from './tree.ts';

/** The components of a tree, in its order. */
export function leaves(tree: Tree): readonly Single[] {
  const found: Single[] = [];
  const pending = [tree];
  for (let next = pending.pop(); next; next = pending.pop()) {
    if (next.kind === 'component') found.push(next);
    else for (const part of next.parts.toReversed()) pending.push(part);
  }
  return found;
}
