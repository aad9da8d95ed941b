export type { Irreducible, Parallel, Series, Single, Tree } from './tree.ts';
