import type { Loops } from './forest.ts';
import type { Graph } from './graph.ts';
import { floats, ints } from './scratch.ts';

/** Scratch: of each branch the last step through it so far, and of each step its loop and the step before through the same branch. */
let lasts: Int32Array = new Int32Array(64);
let rows: Int32Array = new Int32Array(256);
let befores: Int32Array = new Int32Array(256);

/**
 * Says what the equations of the loops are made of, one equation for each chord: a branch stands in a row and a column not before it,
 * with its resistance, or in the last column, the right-hand side, with its e.m.f.; minus where not `plus`.
 */
export function equations(
  { chords, tails }: Graph,
  { starts, steps }: Loops,
  add: (row: number, column: number, branch: number, plus: boolean) => void,
): void {
  const n = chords.length;
  const last = (lasts = ints(lasts, tails.length)).fill(-1, 0, tails.length);
  const rowOf = (rows = ints(rows, steps.length));
  const before = (befores = ints(befores, steps.length));
  for (let row = 0; row < n; row++) {
    const end = starts[row + 1] ?? 0;
    for (let at = starts[row] ?? 0; at < end; at++) {
      const step = steps[at] ?? 0;
      const branch = step < 0 ? ~step : step;
      add(row, n, branch, step >= 0);
      add(row, row, branch, true);
      const met = last[branch] ?? -1;
      for (let other = met; other >= 0; other = before[other] ?? -1)
        add(rowOf[other] ?? 0, row, branch, (steps[other] ?? 0) < 0 === step < 0);
      rowOf[at] = row;
      before[at] = met;
      last[branch] = at;
    }
  }
}

/** Adds the current of each loop to its branches. */
export function inBranches(
  { starts, steps }: Loops,
  add: (branch: number, row: number, along: boolean) => void,
): void {
  for (let row = 0; row + 1 < starts.length; row++) {
    const end = starts[row + 1] ?? 0;
    for (let at = starts[row] ?? 0; at < end; at++) {
      const step = steps[at] ?? 0;
      add(step < 0 ? ~step : step, row, step >= 0);
    }
  }
}

/** Scratch. */
let matrix: Float64Array = new Float64Array(1024);

/** The equations in floating-point numbers: of each row of the symmetric matrix what stands from its own column on, with the e.m.f. round the loop at the end. */
export function numbers(graph: Graph, loops: Loops): Float64Array {
  const { ohms, volts } = graph;
  const n = graph.chords.length;
  const width = n + 1;
  const found = (matrix = floats(matrix, n * width)).fill(0, 0, n * width);
  equations(graph, loops, (row, column, branch, plus) => {
    const value = (column === n ? volts : ohms)[branch] ?? 0;
    const at = row * width + column;
    found[at] = (found[at] ?? 0) + (plus ? value : -value);
  });
  return found;
}
