import type { Graph } from './graph.ts';

/** Of each branch the loops through it (see `loopsThrough`). */
export type Loops = readonly (readonly number[])[];

/**
 * Says what the equations of the loops are made of, one equation for each chord: a branch stands in a row and a column, with its
 * resistance, or in the last column, the right-hand side, with its e.m.f.; minus where not `plus`.
 */
export function equations(
  { chords }: Graph,
  loops: Loops,
  add: (row: number, column: number, branch: number, plus: boolean) => void,
): void {
  for (let branch = 0; branch < loops.length; branch++) {
    const own = loops[branch] ?? [];
    for (const loop of own) {
      const row = loop < 0 ? ~loop : loop;
      add(row, chords.length, branch, loop >= 0);
      for (const other of own) add(row, other < 0 ? ~other : other, branch, loop < 0 === other < 0);
    }
  }
}

/** The sum of the loop currents in each branch. */
export function inBranches<N>(loops: Loops, none: N, add: (sum: N, row: number, along: boolean) => N): N[] {
  return loops.map((own) => own.reduce<N>((sum, loop) => add(sum, loop < 0 ? ~loop : loop, loop >= 0), none));
}

/** Scratch: what it holds matters within one solution only. */
let matrix = new Float64Array(1024);

/** The equations in floating-point numbers: rows of the symmetric matrix with the e.m.f. round the loop at the end. */
export function numbers({ ohms, volts, chords }: Graph, loops: Loops): Float64Array {
  const n = chords.length;
  const size = n * (n + 1);
  if (matrix.length < size) matrix = new Float64Array(size);
  else matrix.fill(0, 0, size);
  // As `equations` says it, but in loops of its own: this is the way of every live reading.
  for (let branch = 0; branch < loops.length; branch++) {
    const own = loops[branch] ?? [];
    const [resistance, emf] = [ohms[branch] ?? 0, volts[branch] ?? 0];
    for (const loop of own) {
      const row = (n + 1) * (loop < 0 ? ~loop : loop);
      matrix[row + n] = (matrix[row + n] ?? 0) + (loop < 0 ? -emf : emf);
      for (const other of own) {
        const at = row + (other < 0 ? ~other : other);
        matrix[at] = (matrix[at] ?? 0) + (loop < 0 === other < 0 ? resistance : -resistance);
      }
    }
  }
  return matrix;
}
