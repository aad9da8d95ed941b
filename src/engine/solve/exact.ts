import { Fraction } from '../quantity/index.ts';
import { solveWhole } from './bareiss.ts';
import { equations } from './equations.ts';
import type { Flow } from './flow.ts';
import { climb, loopsThrough, type Loops } from './forest.ts';
import type { Graph } from './graph.ts';
import { wholeFlow } from './whole.ts';

const zero = new Fraction(0);

/** More loops than these take longer to solve exactly than a page can wait. */
export const mostExact = 200;

/** How many units are in one, so that all values are whole numbers of them, and the values in that unit. */
function inUnits(values: readonly (Fraction | undefined)[]): readonly [bigint, bigint[]] {
  const fractions = values.map((value) => value ?? zero);
  const unit = fractions.reduce((unit, { d }) => (unit % d ? new Fraction(unit).lcm(d).n : unit), 1n);
  return [unit, fractions.map(({ s, n, d }) => s * n * (unit / d))];
}

/** The same for circuits of any size. */
function largeFlow<N>(
  graph: Graph,
  loops: Loops,
  make: (numerator: bigint, denominator: bigint) => N,
): Flow<N> {
  const [ohm, ohms] = inUnits(graph.resistances);
  const [volt, volts] = inUnits(graph.rises);
  const n = graph.chords.length;
  // Of each row what stands from its own column on.
  const { lasts, befores, rows, ways } = loops;
  const matrix = graph.chords.map((_, row) => new Array<bigint>(n - row + 1).fill(0n));
  equations(loops, ohms, volts, n, (row, column, value = 0n, sign) => {
    const entries = matrix[row] ?? [];
    entries[column - row] = (entries[column - row] ?? 0n) + (sign > 0 ? value : -value);
  });
  const found = solveWhole(matrix);
  const whole = found[n] ?? 1n;
  const currents = graph.tails.map((_, branch) => {
    let current = 0n;
    for (let at = lasts[branch] ?? 0; at; at = befores[at] ?? 0)
      current += BigInt(ways[at] ?? 0) * (found[rows[at] ?? 0] ?? 0n);
    return current;
  });
  let potentials: bigint[] | undefined;
  return {
    current(branch) {
      const [top, bottom] = [(currents[branch] ?? 0n) * ohm, whole * volt];
      const { s, n, d } = graph.sent?.[branch] ?? zero;
      return n ? make(top * d + s * n * bottom, bottom * d) : make(top, bottom);
    },
    between(p, q) {
      if (!potentials) {
        const found = (potentials = graph.order.map(() => 0n));
        climb(graph, (node, below, branch, isUp) => {
          const rise = (volts[branch] ?? 0n) * whole - (ohms[branch] ?? 0n) * (currents[branch] ?? 0n);
          found[node] = (found[below] ?? 0n) + (isUp ? rise : -rise);
        });
      }
      return make((potentials[p] ?? 0n) - (potentials[q] ?? 0n), whole * volt);
    },
  };
}

/**
 * Solves the loop equations exactly: currents and potentials are whole numbers with one common denominator. `make` says what becomes
 * of a numerator and its denominator, once it is asked for.
 */
export function exactFlow<N>(
  graph: Graph,
  make: (numerator: bigint | number, denominator: bigint | number) => N,
): Flow<N> {
  const loops = loopsThrough(graph);
  return wholeFlow(graph, loops, make) ?? largeFlow(graph, loops, make);
}
