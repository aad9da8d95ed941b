export { leaves } from './leaves.ts';
export { seriesParallel } from './series-parallel.ts';
export type { Irreducible, Parallel, Series, Single, Tree } from './tree.ts';
