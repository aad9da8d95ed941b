import { numbers } from './equations.ts';
import type { Flow } from './flow.ts';
import { climb, type Loops } from './forest.ts';
import type { Graph } from './graph.ts';
import { inUnits } from './units.ts';

/** Sums of as many as `most` whole numbers below the limit are exact in floating-point numbers. */
const limit = 2 ** 50;
const most = 8;

/**
 * Solves symmetric equations in whole numbers by Bareiss's method (see `solveWhole`) with floating-point numbers. The matrix has n rows
 * with the right-hand side at the end of each, where the unknowns times the determinant come to stand. Returns the determinant, or
 * NaN if a number on the way was too large to be exact.
 */
export function solveSmall(matrix: Float64Array, n: number): number {
  const width = n + 1;
  let scale = 1;
  let largest = 0;
  for (let k = 0; k < n; k++) {
    const top = k * width;
    const pivot = matrix[top + k] ?? 1;
    for (let i = k + 1; i < n; i++) {
      const factor = matrix[top + i] ?? 0;
      for (let j = i; j <= n; j++) {
        const one = (matrix[i * width + j] ?? 0) * pivot;
        const other = factor * (matrix[top + j] ?? 0);
        largest = Math.max(largest, Math.abs(one), Math.abs(other));
        matrix[i * width + j] = (one - other) / scale;
      }
    }
    scale = pivot;
  }
  for (let k = n - 1; k >= 0; k--) {
    const top = k * width;
    let sum = (matrix[top + n] ?? 0) * scale;
    largest = Math.max(largest, Math.abs(sum));
    for (let i = k + 1; i < n; i++) {
      const product = (matrix[top + i] ?? 0) * (matrix[i * width + n] ?? 0);
      largest = Math.max(largest, Math.abs(product));
      sum -= product;
    }
    matrix[top + n] = sum / (matrix[top + k] ?? 1);
  }
  return largest < limit ? scale : NaN;
}

/**
 * Solves small loop equations exactly: currents and potentials are whole numbers with one common denominator. `make` says what becomes
 * of a numerator and its denominator, once it is asked for. Undefined where a number on the way is too large to be exact.
 */
export function wholeFlow<N>(
  graph: Graph,
  loops: Loops,
  make: (numerator: number, denominator: number) => N,
): Flow<N> | undefined {
  const { chords, sent, ohms, volts, ohm, volt } = graph;
  const { lasts, befores, rows, ways } = loops;
  const n = chords.length;
  // No determinant on the way is less than its chords' resistances together, and the last two are multiplied.
  let least = 1;
  for (let row = 1; row < n; row++) least *= (ohms[chords[row - 1] ?? 0] ?? 0) ** 2;
  if (n > most || !(least < limit)) return undefined;
  const matrix = numbers(graph, loops);
  const whole = solveSmall(matrix, n);
  let emf = volt;
  for (const rise of volts) emf += Math.abs(rise);
  if (!(emf * whole * ohm < limit)) return undefined;
  const [ampere, amperes] = sent ? inUnits(sent, 0) : [1, undefined];
  if (amperes) {
    let largest = ampere;
    for (const count of amperes) largest = Math.max(largest, Math.abs(count));
    if (!(emf * whole * ohm * ampere < limit && largest * whole * volt < limit)) return undefined;
  }
  const currents = new Array<number>(ohms.length);
  for (let branch = 0; branch < ohms.length; branch++) {
    let current = 0;
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0)
      current += (ways[at] ?? 0) * (matrix[(rows[at] ?? 0) * (n + 1) + n] ?? 0);
    currents[branch] = current;
  }
  let potentials: number[] | undefined;
  return {
    current: (branch) =>
      make(
        (currents[branch] ?? 0) * ohm * ampere + (amperes?.[branch] ?? 0) * whole * volt,
        whole * volt * ampere,
      ),
    between(p, q) {
      if (!potentials) {
        const found = (potentials = new Array<number>(graph.order.length));
        climb(graph, (node, below, branch, isUp) => {
          const rise = (volts[branch] ?? 0) * whole - (ohms[branch] ?? 0) * (currents[branch] ?? 0);
          found[node] = (found[below] ?? 0) + (isUp ? rise : -rise);
        });
      }
      return make((potentials[p] ?? 0) - (potentials[q] ?? 0), whole * volt);
    },
  };
}
