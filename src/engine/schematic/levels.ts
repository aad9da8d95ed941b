import type { Circuit } from '../circuit/index.ts';
import { leaves, seriesParallel } from '../topology/index.ts';

/** A node as a level line: it reaches from the first column of a component that it joins to the last. */
export interface LevelLine {
  readonly node: string;
  readonly first: number;
  readonly last: number;
}

/** Where everything of a level diagram stands from side to side; how high is the potentials' affair. */
export interface LevelPlan {
  /** The labels of the components, one in each column. */
  readonly columns: readonly string[];
  readonly lines: readonly LevelLine[];
}

/**
 * The columns of a level diagram: every component is an upright line in a column of its own, every node a level line across the
 * columns of all that it joins. A series–parallel circuit goes round along its current, branch after branch, so that no line
 * crosses another as long as the potential falls all the way; any other circuit keeps the order of its components. It follows
 * from what joins what, not from values: nothing moves sideways while something is turned.
 */
export function levelPlan(circuit: Circuit): LevelPlan {
  const tree = seriesParallel(circuit);
  const columns = (tree.kind === 'irreducible' ? circuit.components : leaves(tree)).map(({ id }) => id);
  const place = new Map(columns.map((id, column) => [id, column]));
  const lines = new Map<string, LevelLine>();
  for (const { id, from, to } of circuit.components) {
    const column = place.get(id) ?? 0;
    for (const node of [from, to]) {
      const { first, last } = lines.get(node) ?? { first: column, last: column };
      lines.set(node, { node, first: Math.min(first, column), last: Math.max(last, column) });
    }
  }
  return { columns, lines: [...lines.values()] };
}
