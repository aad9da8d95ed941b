import { across, type Ends } from './forest.ts';
import type { Graph } from './graph.ts';

/** Whether a branch only joins its ends. */
export const joins = ({ components, ohms }: Pick<Graph, 'components' | 'ohms'>, branch: number): boolean =>
  ohms[branch] === 0 && components[branch]?.kind !== 'supply';

/** Ammeters in one path, with closed switches and wires between them, as one branch: at the place of the first of them. */
export interface Runs {
  /** The ammeters of each by its place. */
  readonly meters: ReadonlyMap<number, readonly number[]>;
  /** Between which nodes the branches run when each is one; what is part of another has both ends at one node. */
  readonly ends: Ends;
  /** Whether both of its ends are where branches meet, so that it is in series with nothing. */
  readonly isBeside: (run: number) => boolean;
}

/** Finds them. */
export function runsOf(graph: Graph): Runs {
  const { components, ohms, nodes } = graph;
  const isMeter = (branch: number): boolean =>
    components[branch]?.kind === 'ammeter' && ohms[branch] !== Infinity;
  const [tails, heads] = [[...graph.tails], [...graph.heads]];
  const at: number[][] = Array.from({ length: nodes.size }, () => []);
  components.forEach(({ kind }, branch) => {
    if (kind === 'voltmeter') return;
    for (const ends of [tails, heads]) at[ends[branch] ?? 0]?.push(branch);
  });
  const meters = new Map<number, readonly number[]>();
  const taken = new Set<number>();
  for (const first of components.keys()) {
    if (!isMeter(first) || taken.has(first)) continue;
    const run = new Set([first]);
    const endOf = (start: number): number => {
      let node = start;
      for (;;) {
        const [next, ...more] = (at[node] ?? []).filter((branch) => !run.has(branch));
        const isOnly = more.length === 0 && at[node]?.length === 2;
        if (next === undefined || !isOnly || !(isMeter(next) || joins(graph, next))) return node;
        run.add(next);
        node = across(graph, next, node);
      }
    };
    const ends = [tails[first] ?? 0, heads[first] ?? 0].map(endOf);
    for (const branch of run) {
      taken.add(branch);
      heads[branch] = tails[branch] ?? 0;
    }
    [tails[first] = 0, heads[first] = 0] = ends;
    meters.set(first, [...run].filter(isMeter));
  }
  const isBeside = (run: number): boolean =>
    [tails, heads].every((ends) => (at[ends[run] ?? 0]?.length ?? 0) > 2);
  return { meters, ends: { nodes, tails, heads }, isBeside };
}
