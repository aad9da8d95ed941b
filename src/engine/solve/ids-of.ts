import type { Graph } from './graph.ts';

/** The labels of branches, in the circuit's order, each once: of a wire that bridges a component, the component's. */
export function idsOf({ components }: Graph, branches: readonly number[]): string[] {
  const inOrder = [...branches].sort((a, b) => a - b);
  return [...new Set(inOrder.map((branch) => (components[branch]?.id ?? '').replace(' bridge', '')))];
}
