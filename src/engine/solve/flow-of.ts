import type { Flow } from './flow.ts';
import { climb } from './forest.ts';
import type { Graph } from './graph.ts';
import { addQuotient } from './sent.ts';
import { kept, Twofolds } from './twofold.ts';

/** What is less than this share of the largest current or e.m.f. is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/** Numbers, one for each branch. */
type Numbers = Float64Array | readonly number[];

/** Scratch. */
const sums = new Twofolds();

/** Of each node, in two parts. */
interface Potentials {
  readonly high: Numbers;
  readonly low: Numbers;
}

/** The potential of each node above that of the root of its piece, and what rounding took from it. */
function potentialsOf(graph: Graph, added: Numbers, lows: Numbers): Potentials {
  const { ohms, volts } = graph;
  const count = graph.order.length;
  sums.clear(count);
  climb(graph, (node, below, branch, isUp) => {
    const sign = isUp ? 1 : -1;
    sums.add(node, sums.high[below] ?? 0, sums.low[below]);
    sums.addProduct(node, -sign * (ohms[branch] ?? 0), added[branch] ?? 0, lows[branch]);
    sums.add(node, sign * (volts[branch] ?? 0));
  });
  return { high: kept(sums.high, count), low: kept(sums.low, count) };
}

/**
 * Readings from the currents that the equations give all branches, in the graph’s units, each perhaps with a low part that rounding took
 * from it; what supplies of constant current send comes on top.
 */
export function flowOf(graph: Graph, added: Numbers, lows: Numbers = []): Flow<number> {
  const { sent, volts } = graph;
  const [ohm, volt] = [graph.ohm || 1, graph.volt || 1];
  const totals = new Array<number>(added.length);
  let largest = 0;
  for (let branch = 0; branch < added.length; branch++) {
    const [own, low] = [added[branch] ?? 0, lows[branch] ?? 0];
    let total = own + low;
    largest = Math.max(largest, Math.abs(own));
    const given = sent?.[branch];
    if (given) {
      sums.clear(1);
      addQuotient(sums, Number(given.s * given.n) * volt, Number(given.d) * ohm);
      largest = Math.max(largest, Math.abs(sums.rounded(0)));
      sums.add(0, own, low);
      total = sums.rounded(0);
    }
    totals[branch] = total;
  }
  let emf = 0;
  let potentials: Potentials | undefined;
  return {
    current(branch) {
      const current = totals[branch] ?? 0;
      return Math.abs(current) > nothing * largest ? (current * ohm) / volt : 0;
    },
    between(p, q) {
      if (!potentials) {
        for (const rise of volts) emf = Math.max(emf, Math.abs(rise));
        potentials = potentialsOf(graph, added, lows);
      }
      const { high, low } = potentials;
      const difference = (high[p] ?? 0) - (high[q] ?? 0) + ((low[p] ?? 0) - (low[q] ?? 0));
      return Math.abs(difference) > nothing * emf ? difference / volt : 0;
    },
  };
}
