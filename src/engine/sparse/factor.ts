import type { Order } from './order.ts';

/** Where the numbers of a factor L stand: column by column below the diagonal, places in the order of elimination. */
export interface Factor {
  readonly size: number;
  /** The place of each variable. */
  readonly places: Int32Array;
  /** Column k holds the rows from `starts[k]` up to `starts[k + 1]`, rising. */
  readonly starts: Int32Array;
  readonly rows: Int32Array;
}

/** The pattern of L from an order of elimination; it stays while only values change. */
export function factorPattern({ pivots, starts, rows: variables }: Order): Factor {
  const size = pivots.length;
  const places = new Int32Array(size);
  for (let place = 0; place < size; place++) places[pivots[place] ?? 0] = place;
  // Sorted by counting: what stands in each row, column after column, then what stands in each column, row after row.
  const ends = new Int32Array(size + 1);
  for (const variable of variables) {
    const next = (places[variable] ?? 0) + 1;
    ends[next] = (ends[next] ?? 0) + 1;
  }
  for (let row = 0; row < size; row++) ends[row + 1] = (ends[row + 1] ?? 0) + (ends[row] ?? 0);
  const columns = new Int32Array(variables.length);
  const next = ends.slice();
  for (let column = 0; column < size; column++)
    for (let at = starts[column] ?? 0; at < (starts[column + 1] ?? 0); at++) {
      const row = places[variables[at] ?? 0] ?? 0;
      const to = next[row] ?? 0;
      columns[to] = column;
      next[row] = to + 1;
    }
  const rows = new Int32Array(variables.length);
  next.set(starts);
  for (let row = 0; row < size; row++)
    for (let at = ends[row] ?? 0; at < (ends[row + 1] ?? 0); at++) {
      const column = columns[at] ?? 0;
      const to = next[column] ?? 0;
      rows[to] = row;
      next[column] = to + 1;
    }
  return { size, places, starts, rows };
}

/** Numbers of a symmetric matrix by place: its diagonal, and column by column what stands below. */
export interface Values {
  readonly diagonal: Float64Array;
  readonly below: Float64Array;
}

/**
 * Factorises a symmetric positive definite matrix as L·D·Lᵀ, in place: each column less what those before it take from it. `below` has
 * the pattern of the factor, 0 where the matrix has nothing; it becomes L, the diagonal D.
 */
export function factorise({ size, starts, rows }: Factor, { diagonal, below }: Values): void {
  const work = new Float64Array(size);
  /** Columns that next have a number in the row of each place, as a list. */
  const first = new Int32Array(size).fill(-1);
  const next = new Int32Array(size);
  const at = new Int32Array(size);
  for (let column = 0; column < size; column++) {
    const [start, end] = [starts[column] ?? 0, starts[column + 1] ?? 0];
    for (let i = start; i < end; i++) work[rows[i] ?? 0] = below[i] ?? 0;
    let pivot = diagonal[column] ?? 0;
    for (let other = first[column] ?? -1; other >= 0;) {
      const following = next[other] ?? -1;
      let i = at[other] ?? 0;
      const last = starts[other + 1] ?? 0;
      const own = below[i] ?? 0;
      const times = own * (diagonal[other] ?? 0);
      pivot -= own * times;
      at[other] = ++i;
      if (i < last) {
        const row = rows[i] ?? 0;
        next[other] = first[row] ?? -1;
        first[row] = other;
      }
      for (; i < last; i++) {
        const row = rows[i] ?? 0;
        work[row] = (work[row] ?? 0) - times * (below[i] ?? 0);
      }
      other = following;
    }
    diagonal[column] = pivot;
    for (let i = start; i < end; i++) below[i] = (work[rows[i] ?? 0] ?? 0) / pivot;
    if (start < end) {
      at[column] = start;
      const row = rows[start] ?? 0;
      next[column] = first[row] ?? -1;
      first[row] = column;
    }
  }
}

/** Solves L·D·Lᵀ x = y with what `factorise` left; x replaces y, both by place. */
export function substitute(
  { size, starts, rows }: Factor,
  { diagonal, below }: Values,
  y: Float64Array,
): void {
  for (let column = 0; column < size; column++) {
    const known = y[column] ?? 0;
    if (known === 0) continue;
    for (let i = starts[column] ?? 0; i < (starts[column + 1] ?? 0); i++) {
      const row = rows[i] ?? 0;
      y[row] = (y[row] ?? 0) - (below[i] ?? 0) * known;
    }
  }
  for (let column = size - 1; column >= 0; column--) {
    let sum = (y[column] ?? 0) / (diagonal[column] ?? 1);
    for (let i = starts[column] ?? 0; i < (starts[column + 1] ?? 0); i++)
      sum -= (below[i] ?? 0) * (y[rows[i] ?? 0] ?? 0);
    y[column] = sum;
  }
}
