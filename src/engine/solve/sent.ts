import { faultIn, type Component } from '../circuit/index.ts';
import type { Ends, Forest } from './forest.ts';
import { across, ringed } from './forest.ts';
import type { Graph } from './graph.ts';
import { Twofolds } from './twofold.ts';

/** How currents are added. */
interface Sums<N> {
  readonly zero: N;
  readonly sum: (a: N, b: N) => N;
  readonly negative: (a: N) => N;
}

/**
 * The constant currents that some branches are given, sent from their heads back to their tails through the forest: the current of each
 * branch, from its tail to its head. What the loops then add to it has no part of them. Where a branch joins two pieces nothing comes back.
 */
export function sentThrough<N>(
  graph: Pick<Ends & Forest, 'order' | 'up' | 'tails' | 'heads'>,
  given: readonly (N | undefined)[],
  { zero, sum, negative }: Sums<N>,
): N[] {
  const { order, up, tails, heads } = graph;
  const currents = given.map((current) => current ?? zero);
  const brought = order.map(() => zero);
  const bring = (node: number, current: N): void => {
    brought[node] = sum(brought[node] ?? zero, current);
  };
  given.forEach((current, branch) => {
    if (current === undefined) return;
    bring(heads[branch] ?? 0, current);
    bring(tails[branch] ?? 0, negative(current));
  });
  for (const node of order.toReversed()) {
    const branch = up[node] ?? -1;
    const current = brought[node] ?? zero;
    if (branch < 0) continue;
    currents[branch] = tails[branch] === node ? current : negative(current);
    bring(across(graph, branch, node), current);
  }
  return currents;
}

/** Whether a supply of constant current sends none: it is taken out, or something is wrong with it. */
export const isOut = (component: Component | undefined): boolean =>
  component === undefined || component.condition === 'broken' || faultIn(component) !== undefined;

/** Whether a constant current of a branch comes back through what joins its ends. */
export function isClosed({ amperes, components, roots, tails, heads }: Graph, branch: number): boolean {
  if (!amperes[branch] || isOut(components[branch])) return false;
  return roots[tails[branch] ?? 0] === roots[heads[branch] ?? 0];
}

/** Of each branch 1 if it lies on a loop, of conductors or through a supply of constant current. */
export const onLoops = (graph: Graph): Uint8Array =>
  ringed(graph, [...graph.chords, ...graph.supplies.filter((supply) => isClosed(graph, supply))]);

/** Scratch. */
const rest = new Twofolds();

/** Adds a quotient of whole numbers to the first of these sums. */
export function addQuotient(sums: Twofolds, numerator: number, denominator: number): void {
  const high = numerator / denominator;
  rest.clear(1);
  rest.add(0, numerator);
  rest.addProduct(0, -high, denominator);
  sums.add(0, high, rest.rounded(0) / denominator);
}
