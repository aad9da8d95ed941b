import { inBranches, numbers } from './equations.ts';
import type { Flow } from './flow.ts';
import { loopsThrough, type Loops } from './forest.ts';
import { flowOf } from './flow-of.ts';
import type { Graph } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { floats } from './scratch.ts';
import { kept, Twofolds } from './twofold.ts';
import { wholeFlow } from './whole.ts';

/** Scratch. */
let factors: Float64Array = new Float64Array(1024);
let found: Float64Array = new Float64Array(32);
let more: Float64Array = new Float64Array(32);
const sums = new Twofolds();

/**
 * Solves the loop equations in floating-point numbers: L·D·Lᵀ, then once more for what is left of the e.m.f.s, which is kept to
 * twice the precision (iterative refinement: J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory). The unknowns
 * come to stand in `found`, and what is to be added to them in `more`.
 */
function refine(graph: Graph, loops: Loops): void {
  const n = graph.chords.length;
  const width = n + 1;
  const matrix = numbers(graph, loops);
  factors = floats(factors, n * n);
  [found, more] = [floats(found, n), floats(more, n)];
  sums.clear(n);
  for (let row = 0; row < n; row++) {
    for (let column = row; column < n; column++)
      factors[row * n + column] = matrix[row * width + column] ?? 0;
    found[row] = matrix[row * width + n] ?? 0;
    sums.add(row, found[row] ?? 0);
  }
  factorise(factors, n);
  substitute(factors, found, n);
  for (let row = 0; row < n; row++) {
    for (let column = row; column < n; column++) {
      const entry = -(matrix[row * width + column] ?? 0);
      if (entry === 0) continue;
      sums.addProduct(row, entry, found[column] ?? 0);
      if (column > row) sums.addProduct(column, entry, found[row] ?? 0);
    }
  }
  for (let row = 0; row < n; row++) more[row] = sums.rounded(row);
  substitute(factors, more, n);
}

/** Circuits of any size, in floating-point numbers. */
function floatFlow(graph: Graph, loops: Loops): Flow<number> {
  refine(graph, loops);
  const count = graph.tails.length;
  sums.clear(count);
  inBranches(loops, (branch, row, along) => {
    const [current, low] = [found[row] ?? 0, more[row] ?? 0];
    sums.add(branch, along ? current : -current, along ? low : -low);
  });
  return flowOf(graph, kept(sums.high, count), kept(sums.low, count));
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
