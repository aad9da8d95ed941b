import { Fraction } from '../quantity/index.ts';
import { solveWhole } from './bareiss.ts';
import type { Flow } from './flow.ts';
import { across } from './forest.ts';
import type { Graph } from './graph.ts';
import { wholeFlow } from './whole.ts';

const zero = new Fraction(0);

/** How many units are in one, so that all values are whole numbers of them, and the values in that unit. */
function inUnits(values: readonly (Fraction | undefined)[]): readonly [bigint, bigint[]] {
  const fractions = values.map((value) => value ?? zero);
  const unit = fractions.reduce((unit, { d }) => (unit % d ? new Fraction(unit).lcm(d).n : unit), 1n);
  return [unit, fractions.map(({ s, n, d }) => s * n * (unit / d))];
}

/** The loop equations: of each row what stands from its own column on, with the loop's e.m.f. at its end. */
function equations({ chords, loops }: Graph, ohms: readonly bigint[], volts: readonly bigint[]): bigint[][] {
  const n = chords.length;
  const rows = chords.map((_, k) => new Array<bigint>(n - k + 1).fill(0n));
  loops.forEach((own, branch) => {
    for (const loop of own) {
      const row = loop < 0 ? ~loop : loop;
      const entries = rows[row] ?? [];
      const add = (at: number, plus: boolean, value = 0n): void => {
        entries[at] = (entries[at] ?? 0n) + (plus ? value : -value);
      };
      add(n - row, loop >= 0, volts[branch]);
      for (const other of own) {
        const column = other < 0 ? ~other : other;
        if (column >= row) add(column - row, loop < 0 === other < 0, ohms[branch]);
      }
    }
  });
  return rows;
}

/** The potential of each node above its root's, times the determinant. */
function potentials(graph: Graph, rises: readonly bigint[]): bigint[] {
  const { order, up, heads } = graph;
  const found = order.map(() => 0n);
  for (const node of order) {
    const branch = up[node] ?? -1;
    if (branch < 0) continue;
    const [below = 0n, rise = 0n] = [found[across(graph, branch, node)], rises[branch]];
    found[node] = heads[branch] === node ? below + rise : below - rise;
  }
  return found;
}

function largeFlow<N>(graph: Graph, make: (numerator: bigint, denominator: bigint) => N): Flow<N> {
  const [ohm, ohms] = inUnits(graph.resistances);
  const [volt, volts] = inUnits(graph.emfs);
  const found = solveWhole(equations(graph, ohms, volts));
  const whole = found.pop() ?? 1n;
  const currents = graph.loops.map((own) =>
    own.reduce((sum, loop) => (loop < 0 ? sum - (found[~loop] ?? 0n) : sum + (found[loop] ?? 0n)), 0n),
  );
  let known: bigint[] | undefined;
  return {
    current: (branch) => make((currents[branch] ?? 0n) * ohm, whole * volt),
    between(p, q) {
      known ??= potentials(
        graph,
        currents.map((current, branch) => (volts[branch] ?? 0n) * whole - (ohms[branch] ?? 0n) * current),
      );
      return make((known[p] ?? 0n) - (known[q] ?? 0n), whole * volt);
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
  return wholeFlow(graph, make) ?? largeFlow(graph, make);
}
