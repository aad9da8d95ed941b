import { solveWhole } from './bareiss.ts';
import type { Flow } from './flow.ts';
import type { Graph } from './graph.ts';

/** The loop equations: of each row what stands from its own column on, with the loop's e.m.f. at its end. */
function equations({ branches, chords }: Graph): bigint[][] {
  const n = chords.length;
  const rows = chords.map((_, k) => new Array<bigint>(n - k + 1).fill(0n));
  for (const { loops, ohms, volts } of branches) {
    for (const { row, along } of loops) {
      const entries = rows[row] ?? [];
      const add = (at: number, plus: boolean, value: bigint): void => {
        entries[at] = (entries[at] ?? 0n) + (plus ? value : -value);
      };
      add(n - row, along, volts);
      for (const other of loops) if (other.row >= row) add(other.row - row, along === other.along, ohms);
    }
  }
  return rows;
}

/** The potential of each node, times the determinant. */
function potentials({ nodes }: Graph, currents: readonly bigint[], whole: bigint): bigint[] {
  const found: bigint[] = [];
  for (const { up } of nodes) {
    const below = (up && found[up.node.place]) ?? 0n;
    const rise = up ? up.branch.volts * whole - up.branch.ohms * (currents[up.branch.place] ?? 0n) : 0n;
    found.push(up?.branch.tail === up?.node ? below + rise : below - rise);
  }
  return found;
}

/**
 * Solves the loop equations exactly: currents and potentials are whole numbers with one common denominator. `make` says what becomes
 * of a numerator and its denominator, once it is asked for.
 */
export function exactFlow<N>(graph: Graph, make: (numerator: bigint, denominator: bigint) => N): Flow<N> {
  const { ohm, volt } = graph;
  const found = solveWhole(equations(graph));
  const whole = found.pop() ?? 1n;
  const currents = graph.branches.map(({ loops }) =>
    loops.reduce((sum, { row, along }) => (along ? sum + (found[row] ?? 0n) : sum - (found[row] ?? 0n)), 0n),
  );
  let known: bigint[] | undefined;
  return {
    current: ({ place }) => make((currents[place] ?? 0n) * ohm, whole * volt),
    between(p, q) {
      known ??= potentials(graph, currents, whole);
      return make((known[p.place] ?? 0n) - (known[q.place] ?? 0n), whole * volt);
    },
  };
}
