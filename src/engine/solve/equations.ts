import type { Graph } from './graph.ts';

/** Scratch: what it holds matters within one solution only. */
let matrix = new Float64Array(1024);

/** The equations of the loops, one for each chord: rows of the symmetric matrix with the e.m.f. round the loop at the end. */
export function equations({ ohms, volts, chords, loops }: Graph): Float64Array {
  const width = chords.length + 1;
  if (matrix.length < width ** 2) matrix = new Float64Array(width ** 2);
  else matrix.fill(0, 0, width ** 2);
  for (let branch = 0; branch < ohms.length; branch++) {
    const own = loops[branch] ?? [];
    const [resistance, emf] = [ohms[branch] ?? 0, volts[branch] ?? 0];
    for (const loop of own) {
      const row = width * (loop < 0 ? ~loop : loop);
      const end = row + width - 1;
      matrix[end] = (matrix[end] ?? 0) + (loop < 0 ? -emf : emf);
      for (const other of own) {
        const at = row + (other < 0 ? ~other : other);
        matrix[at] = (matrix[at] ?? 0) + (loop < 0 === other < 0 ? resistance : -resistance);
      }
    }
  }
  return matrix;
}
