import { numbers } from './equations.ts';
import type { Flow } from './flow.ts';
import { loopsThrough, type Loops } from './forest.ts';
import { flowOf } from './flow-of.ts';
import type { Graph } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { floats } from './scratch.ts';
import { kept, Twofolds } from './twofold.ts';
import { wholeFlow } from './whole.ts';

/** Scratch. */
let unknowns: Float64Array = new Float64Array(64);
const currents = new Twofolds();
const drops = new Twofolds();
const rests = new Twofolds();

/**
 * Circuits of any size, in floating-point numbers: L·D·Lᵀ, then once more for what is left of the e.m.f.s round the loops, which is
 * kept to twice the precision (iterative refinement: J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory).
 */
function floatFlow(graph: Graph, loops: Loops): Flow<number> {
  const { chords, ohms, volts } = graph;
  const { lasts, befores, rows, ways } = loops;
  const [n, count] = [chords.length, ohms.length];
  const matrix = numbers(graph, loops);
  const found = (unknowns = floats(unknowns, n));
  for (let row = 0; row < n; row++) found[row] = matrix[row * (n + 1) + n] ?? 0;
  factorise(matrix, n);
  substitute(matrix, found, n);
  currents.clear(count);
  drops.clear(count);
  rests.clear(n);
  for (let branch = 0; branch < count; branch++) {
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0)
      currents.add(branch, (ways[at] ?? 0) * (found[rows[at] ?? 0] ?? 0));
    drops.add(branch, volts[branch] ?? 0);
    drops.addProduct(branch, -(ohms[branch] ?? 0), currents.high[branch] ?? 0, currents.low[branch]);
    const [high, low] = [drops.high[branch] ?? 0, drops.low[branch] ?? 0];
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0)
      rests.add(rows[at] ?? 0, (ways[at] ?? 0) * high, (ways[at] ?? 0) * low);
  }
  for (let row = 0; row < n; row++) found[row] = rests.rounded(row);
  substitute(matrix, found, n);
  for (let branch = 0; branch < count; branch++)
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0)
      currents.add(branch, 0, (ways[at] ?? 0) * (found[rows[at] ?? 0] ?? 0));
  return flowOf(graph, kept(currents.high, count), kept(currents.low, count));
}

/** So many loops are solved with all their equations written out. */
export const mostDense = 40;

/** Solves circuits with more loops than that; in a file of its own, loaded where one is needed. */
let large: ((graph: Graph) => Flow<number>) | undefined;

/** Makes `solve` hand the graphs of large circuits over. */
export function equipLarge(flow: (graph: Graph) => Flow<number>): void {
  large = flow;
}

/** Whether there is a solver for large circuits. */
export const isEquippedLarge = (): boolean => large !== undefined;

/** Solves in floating-point numbers: exactly while the circuit is small, each reading then rounded. */
export function liveFlow(graph: Graph): Flow<number> {
  if (large && graph.chords.length > mostDense) return large(graph);
  const loops = loopsThrough(graph);
  return (
    wholeFlow(graph, loops, (numerator, denominator) => numerator / denominator) ?? floatFlow(graph, loops)
  );
}
