import type { Tree } from './tree.ts';

/** The same part run through from its other end. Without recursion, so that any depth will do. */
export function turnedRound(whole: Tree): Tree {
  const found: Tree[] = [];
  const pending: { readonly tree: Tree; readonly into: Tree[] }[] = [{ tree: whole, into: found }];
  for (let next = pending.pop(); next; next = pending.pop()) {
    const { tree, into } = next;
    const { from, to } = tree;
    if (tree.kind === 'component') {
      into.push({ ...tree, from: to, to: from, reversed: !tree.reversed });
      continue;
    }
    const parts: Tree[] = [];
    into.push({ ...tree, from: to, to: from, parts });
    // What is pushed last is turned first: of a series what was its end.
    for (const part of tree.kind === 'series' ? tree.parts : tree.parts.toReversed())
      pending.push({ tree: part, into: parts });
  }
  return found[0] ?? whole;
}
