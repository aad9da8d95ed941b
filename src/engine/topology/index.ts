export { electrical, type Electrical } from './electrical.ts';
export { junctions, looksOn, type End, type Junction } from './junctions.ts';
export { leaves } from './leaves.ts';
export { loops, type Loop } from './loops.ts';
export { seriesParallel } from './series-parallel.ts';
export type { Irreducible, Parallel, Series, Single, Tree } from './tree.ts';
