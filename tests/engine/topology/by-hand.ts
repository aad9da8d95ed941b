import type { Component } from '../../../src/engine/circuit/index.ts';

/** What is left of a network, as sets of labels between two nodes. */
export interface Left {
  from: string;
  to: string;
  ids: readonly string[];
}

/**
 * Series–parallel reduction as one does it on paper: look through everything for a pair to join, join it, start again. Slow
 * and plain, to judge the quick one by. What hangs on one node is crossed out.
 */
export function byHand(components: readonly Component[], ends: readonly string[]): readonly Left[] {
  let left: Left[] = components.map(({ id, from, to }) => ({ from, to, ids: [id] }));
  const degree = (node: string): number => left.filter(({ from, to }) => from === node || to === node).length;
  for (;;) {
    const hanging = left.find(
      ({ from, to }) => from === to || [from, to].some((node) => !ends.includes(node) && degree(node) === 1),
    );
    if (hanging) {
      left = left.filter((one) => one !== hanging);
      continue;
    }
    const pair = left
      .flatMap((one, index) => left.slice(index + 1).map((other) => [one, other] as const))
      .find(([one, other]) => {
        const shared = [one.from, one.to].filter((node) => node === other.from || node === other.to);
        return shared.length === 2 || shared.some((node) => !ends.includes(node) && degree(node) === 2);
      });
    if (!pair) return left;
    const [one, other] = pair;
    const nodes = [one.from, one.to, other.from, other.to];
    const once = nodes.filter((node) => nodes.indexOf(node) === nodes.lastIndexOf(node));
    const [from = one.from, to = one.to] = once;
    left = [
      ...left.filter((part) => part !== one && part !== other),
      { from, to, ids: [...one.ids, ...other.ids] },
    ];
  }
}
