export { electrical, type Electrical } from './electrical.ts';
export { junctions, looksOn, type End, type Junction } from './junctions.ts';
export { leaves } from './leaves.ts';
export { loops, type Loop } from './loops.ts';
export { pieces, type Piece } from './pieces.ts';
export { seriesParallel } from './series-parallel.ts';
export type { Irreducible, Parallel, Series, Single, Tree } from './tree.ts';
export { turnedRound } from './turned-round.ts';
