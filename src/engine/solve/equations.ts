import type { Loops } from './forest.ts';
import type { Graph } from './graph.ts';
import { floats } from './scratch.ts';

/**
 * Says what the equations of the loops are made of, one equation for each chord: the resistance of a branch stands in a row and a column not
 * before it, its e.m.f. in the last column, the right-hand side; each with a sign.
 */
export function equations<N>(
  { lasts, befores, rows, ways }: Loops,
  ohms: readonly N[],
  volts: readonly N[],
  last: number,
  add: (row: number, column: number, value: N | undefined, sign: number) => void,
): void {
  for (let branch = 0; branch < ohms.length; branch++) {
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0) {
      const [column, way] = [rows[at] ?? 0, ways[at] ?? 0];
      add(column, last, volts[branch], way);
      for (let other = at; other; other = befores[other] ?? 0)
        add(rows[other] ?? 0, column, ohms[branch], way * (ways[other] ?? 0));
    }
  }
}

/** Scratch. */
let matrix: Float64Array = new Float64Array(1024);

/** The equations in floating-point numbers: of each row of the symmetric matrix what stands from its own column on, with the e.m.f. round the loop at the end. */
export function numbers({ chords, ohms, volts }: Graph, loops: Loops): Float64Array {
  const n = chords.length;
  const width = n + 1;
  const found = (matrix = floats(matrix, n * width)).fill(0, 0, n * width);
  equations(loops, ohms, volts, n, (row, column, value = 0, sign) => {
    const at = row * width + column;
    found[at] = (found[at] ?? 0) + sign * value;
  });
  return found;
}
