declare module 'numeric' {
  const numeric: { solve(matrix: number[][], right: number[]): number[] };
  export default numeric;
}
