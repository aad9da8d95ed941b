import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { Twofolds } from '../../../src/engine/solve/twofold.ts';

/**
 * The most that is left over at any node, as a share of the largest current; each branch’s current runs from its `from` to its `to`, a
 * supply’s the other way. The sums lose nothing to rounding.
 */
export function leftOver({ components }: Circuit, current: (branch: number) => number): number {
  const into = new Map<string, Twofolds>();
  const bring = (node: string, amperes: number): void => {
    const sum = into.get(node) ?? new Twofolds();
    sum.add(0, amperes);
    into.set(node, sum);
  };
  let largest = 0;
  components.forEach(({ from, to, kind }, branch) => {
    const own = current(branch) * (kind === 'supply' ? -1 : 1);
    largest = Math.max(largest, Math.abs(own));
    bring(from, -own);
    bring(to, own);
  });
  const most = Math.max(...[...into.values()].map((sum) => Math.abs(sum.rounded(0))));
  return largest > 0 ? most / largest : 0;
}
