/** The pattern of a symmetric matrix: which numbers off its diagonal are not 0, in rows that hold both halves. */
export interface Pattern {
  readonly size: number;
  /** Row i has the columns from `starts[i]` up to `starts[i + 1]`. */
  readonly starts: Int32Array;
  readonly columns: Int32Array;
}

/** The pattern of a graph, its edges from `tails` to `heads`; several between the same two nodes count once, none at one node or to one from `size` on. */
export function patternOf(size: number, tails: Int32Array, heads: Int32Array): Pattern {
  const counts = new Int32Array(size + 1);
  const count = tails.length;
  for (let edge = 0; edge < count; edge++) {
    const [a, b] = [tails[edge] ?? 0, heads[edge] ?? 0];
    if (a === b || a >= size || b >= size) continue;
    counts[a + 1] = (counts[a + 1] ?? 0) + 1;
    counts[b + 1] = (counts[b + 1] ?? 0) + 1;
  }
  for (let row = 0; row < size; row++) counts[row + 1] = (counts[row + 1] ?? 0) + (counts[row] ?? 0);
  const all = new Int32Array(counts[size] ?? 0);
  const next = counts.slice();
  const put = (row: number, column: number): void => {
    const at = next[row] ?? 0;
    all[at] = column;
    next[row] = at + 1;
  };
  for (let edge = 0; edge < count; edge++) {
    const [a, b] = [tails[edge] ?? 0, heads[edge] ?? 0];
    if (a === b || a >= size || b >= size) continue;
    put(a, b);
    put(b, a);
  }
  const seen = new Int32Array(size).fill(-1);
  const starts = new Int32Array(size + 1);
  let at = 0;
  for (let row = 0; row < size; row++) {
    for (let from = counts[row] ?? 0; from < (counts[row + 1] ?? 0); from++) {
      const column = all[from] ?? 0;
      if (seen[column] === row) continue;
      seen[column] = row;
      all[at++] = column;
    }
    starts[row + 1] = at;
  }
  return { size, starts, columns: all.subarray(0, at) };
}
