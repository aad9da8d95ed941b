declare module 'numeric' {
  /** A sparse matrix by columns, and its factors: only handed from one call to the next. */
  type Sparse = unknown;
  const numeric: {
    solve(matrix: number[][], right: number[]): number[];
    ccsScatter(entries: [rows: number[], columns: number[], values: number[]]): Sparse;
    ccsLUP(matrix: Sparse): Sparse;
    ccsLUPSolve(factors: Sparse, right: readonly number[]): number[];
  };
  export default numeric;
}
