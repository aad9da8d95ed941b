import { twinOf } from '../../circuit/index.ts';
import type { Parallel, Single, Tree } from '../../topology/index.ts';
import type { Measure } from '../block.ts';

/** The contacts of a changeover switch at one end of two branches: that of the first branch, and that of the second. */
export type Fork = readonly [Single, Single];

/** What is left of a branch without its contacts; the node that it is a wire of where that is nothing. */
export interface Prong {
  readonly parts: readonly Tree[];
  readonly node: string;
}

/** Two branches that a changeover switch leads into, or out of, or one of either. */
export interface Forked {
  readonly start?: Fork;
  readonly end?: Fork;
  readonly prongs: readonly [Prong, Prong];
  /** The branches as they were. */
  readonly branches: readonly [Tree, Tree];
}

type End = 'start' | 'end';

const partsOf = (branch: Tree): readonly Tree[] => (branch.kind === 'series' ? branch.parts : [branch]);

/** The contact that parts begin or end with; undefined where it is something else. */
function contactAt(parts: readonly Tree[], end: End, { part }: Measure): Single | undefined {
  const leaf = end === 'start' ? parts[0] : parts.at(-1);
  return leaf?.kind === 'component' && part(leaf.id).contact !== undefined ? leaf : undefined;
}

/** The contacts of one switch at an end of two branches. */
function forkAt(one: readonly Tree[], other: readonly Tree[], end: End, measure: Measure): Fork | undefined {
  const [a, b] = [contactAt(one, end, measure), contactAt(other, end, measure)];
  if (!a || !b) return undefined;
  return twinOf(a.id) === b.id ? [a, b] : undefined;
}

/** The first two branches of a group that a changeover switch leads into or out of; undefined where there are none. */
export function forkOf({ parts: all }: Parallel, measure: Measure): Forked | undefined {
  const branches = all.filter((each) =>
    (['start', 'end'] as const).some((end) => contactAt(partsOf(each), end, measure)),
  );
  for (const [i, one] of branches.entries())
    for (const other of branches.slice(i + 1)) {
      const both = [partsOf(one), partsOf(other)] as const;
      const start = forkAt(...both, 'start', measure);
      const inner = both.map((parts) => parts.slice(start ? 1 : 0));
      const [a = [], b = []] = inner;
      const end = forkAt(a, b, 'end', measure);
      if (!start && !end) continue;
      const prong = (parts: readonly Tree[], place: 0 | 1): Prong => ({
        parts: end ? parts.slice(0, -1) : parts,
        node: start?.[place].to ?? end?.[place].from ?? '',
      });
      return {
        ...(start && { start }),
        ...(end && { end }),
        prongs: [prong(a, 0), prong(b, 1)],
        branches: [one, other],
      };
    }
  return undefined;
}
