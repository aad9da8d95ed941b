import { numbers, type Loops } from './equations.ts';
import type { Flow } from './flow.ts';
import { loopsThrough } from './forest.ts';
import { flowOf } from './flow-of.ts';
import type { Graph } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { Twofold } from './twofold.ts';
import { wholeFlow } from './whole.ts';

/** Scratch: what it holds matters within one solution only. */
let factors = new Float64Array(1024);

/**
 * Solves the loop equations in floating-point numbers: L·D·Lᵀ, then once more for what is left of the e.m.f.s, which is kept to
 * twice the precision (iterative refinement: J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory). The unknowns,
 * and what is to be added to them.
 */
function refined(graph: Graph, loops: Loops): readonly [number[], number[]] {
  const n = graph.chords.length;
  const width = n + 1;
  const matrix = numbers(graph, loops);
  if (factors.length < n * n) factors = new Float64Array(n * n);
  const found: number[] = [];
  for (let row = 0; row < n; row++) {
    for (let column = row; column < n; column++)
      factors[row * n + column] = matrix[row * width + column] ?? 0;
    found.push(matrix[row * width + n] ?? 0);
  }
  factorise(factors, n);
  substitute(factors, found);
  const more = found.map((_, row) => {
    const left = new Twofold();
    left.add(matrix[row * width + n] ?? 0);
    for (let column = 0; column < n; column++) {
      const entry = matrix[row * width + column] ?? 0;
      if (entry) left.addProduct(-entry, found[column] ?? 0);
    }
    return left.high + left.low;
  });
  substitute(factors, more);
  return [found, more];
}

/** The currents of circuits of any size, in floating-point numbers. */
function floatFlow(graph: Graph, loops: Loops): Flow<number> {
  const [found, more] = refined(graph, loops);
  const currents = loops.map((own) => {
    const current = new Twofold();
    for (const loop of own) {
      if (loop < 0) current.add(-(found[~loop] ?? 0), -(more[~loop] ?? 0));
      else current.add(found[loop] ?? 0, more[loop] ?? 0);
    }
    return current;
  });
  return flowOf(
    graph,
    currents.map(({ high }) => high),
    currents.map(({ low }) => low),
  );
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
