import type { Flow } from './flow.ts';
import { climb } from './forest.ts';
import type { Graph } from './graph.ts';
import { quotient } from './sent.ts';
import { Twofold } from './twofold.ts';

/** What is less than this share of the largest current or e.m.f. is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/**
 * Readings from the currents that the equations give all branches, in the graph’s units, each perhaps with a low part that rounding took
 * from it; what supplies of constant current send comes on top.
 */
export function flowOf(
  graph: Graph,
  added: Float64Array | readonly number[],
  lows: readonly number[] = [],
): Flow<number> {
  const { sent, ohms, volts } = graph;
  const [ohm, volt] = [graph.ohm || 1, graph.volt || 1];
  let [largest, emf] = [0, 0];
  for (const current of added) largest = Math.max(largest, Math.abs(current));
  for (const rise of volts) emf = Math.max(emf, Math.abs(rise));
  const totals = sent?.map(({ s, n, d }, branch) => {
    const current = quotient(Number(s * n) * volt, Number(d) * ohm);
    largest = Math.max(largest, Math.abs(current.high));
    current.add(added[branch] ?? 0, lows[branch] ?? 0);
    return current.high + current.low;
  });
  let potentials: Twofold[] | undefined;
  return {
    current(branch) {
      const current = totals?.[branch] ?? (added[branch] ?? 0) + (lows[branch] ?? 0);
      return Math.abs(current) > nothing * largest ? (current * ohm) / volt : 0;
    },
    between(p, q) {
      potentials ??= climb(graph, new Twofold(), (below, branch, isUp) => {
        const potential = new Twofold();
        const sign = isUp ? 1 : -1;
        potential.add(below.high, below.low);
        potential.addProduct(-sign * (ohms[branch] ?? 0), added[branch] ?? 0, lows[branch] ?? 0);
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
