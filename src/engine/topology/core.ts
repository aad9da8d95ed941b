import { blocks } from './blocks.ts';
import type { Edge } from './edge.ts';
import { leaves } from './leaves.ts';
import { orient } from './orient.ts';
import { reduce, type Part } from './reduce.ts';
import type { Tree } from './tree.ts';

const trees = (parts: readonly Part[]): readonly Tree[] => {
  const grown: Tree[] = [];
  for (const part of parts) orient(part, part.from, grown);
  return grown;
};

/** What is left where a block cannot be reduced to one part. */
export interface Core {
  /** Its series and parallel parts. */
  readonly parts: readonly Tree[];
  /** The components of those that form a bridge: all but what is in series or in parallel with `cut`. */
  readonly bridge: readonly string[];
}

/** The core of a block that is closed by the edge `cut`. */
export function core(cut: Edge, block: readonly Edge[]): Core {
  const rest = block.filter((edge) => edge !== cut);
  const [closed, ...others] = reduce([cut, ...rest], new Set());
  const bridge = new Set(
    blocks(others)
      .filter(({ edges }) => edges.length > 1)
      .flatMap(({ edges }) => trees(edges))
      .flatMap(leaves)
      .map(({ id }) => id),
  );
  return {
    parts: trees(
      cut.id === '' ? reduce(rest, new Set([cut.from, cut.to])) : closed ? [closed, ...others] : others,
    ),
    bridge: rest.filter(({ id }) => bridge.has(id)).map(({ id }) => id),
  };
}
