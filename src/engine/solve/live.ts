import { numbers } from './equations.ts';
import type { Flow } from './flow.ts';
import { climb } from './forest.ts';
import type { Graph } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { quotient } from './sent.ts';
import { Twofold } from './twofold.ts';
import { wholeFlow } from './whole.ts';

/** Scratch: what it holds matters within one solution only. */
let factors = new Float64Array(1024);

/** What is less than this share of the largest current or e.m.f. is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/**
 * Solves the loop equations in floating-point numbers: L·D·Lᵀ, then once more for what is left of the e.m.f.s, which is kept to
 * twice the precision (iterative refinement: J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory). The unknowns,
 * and what is to be added to them.
 */
function refined(graph: Graph): readonly [number[], number[]] {
  const n = graph.chords.length;
  const width = n + 1;
  const matrix = numbers(graph);
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
function floatFlow(graph: Graph): Flow<number> {
  const { sent, ohms, volts } = graph;
  const [ohm, volt] = [graph.ohm || 1, graph.volt || 1];
  const [found, more] = refined(graph);
  let [largest, emf] = [0, 0];
  for (const current of found) largest = Math.max(largest, Math.abs(current));
  for (const rise of volts) emf = Math.max(emf, Math.abs(rise));
  const added = graph.loops.map((own) => {
    const current = new Twofold();
    for (const loop of own) {
      if (loop < 0) current.add(-(found[~loop] ?? 0), -(more[~loop] ?? 0));
      else current.add(found[loop] ?? 0, more[loop] ?? 0);
    }
    return current;
  });
  const currents = sent
    ? added.map(({ high, low }, branch) => {
        const { s, n, d } = sent[branch] ?? { s: 0n, n: 0n, d: 1n };
        const current = quotient(Number(s * n) * volt, Number(d) * ohm);
        largest = Math.max(largest, Math.abs(current.high));
        current.add(high, low);
        return current;
      })
    : added;
  let potentials: Twofold[] | undefined;
  return {
    current(branch) {
      const { high = 0, low = 0 } = currents[branch] ?? {};
      return Math.abs(high + low) > nothing * largest ? ((high + low) * ohm) / volt : 0;
    },
    between(p, q) {
      potentials ??= climb(graph, new Twofold(), (below, branch, isUp) => {
        const potential = new Twofold();
        const { high = 0, low = 0 } = added[branch] ?? {};
        const sign = isUp ? 1 : -1;
        potential.add(below.high, below.low);
        potential.addProduct(-sign * (ohms[branch] ?? 0), high, low);
        potential.add(sign * (volts[branch] ?? 0));
        return potential;
      });
      const [a, b] = [potentials[p], potentials[q]];
      if (!a || !b) return 0;
      const difference = a.high - b.high + (a.low - b.low);
      return Math.abs(difference) > nothing * emf ? difference / volt : 0;
    },
  };
}

/** Solves in floating-point numbers: exactly while the circuit is small, each reading then rounded. */
export function liveFlow(graph: Graph): Flow<number> {
  return wholeFlow(graph, (numerator, denominator) => numerator / denominator) ?? floatFlow(graph);
}
