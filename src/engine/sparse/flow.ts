import { across, flowOf, ringed, type Flow, type Graph } from '../solve/index.ts';
import { contracted, networkOf, type Conductors } from './conductors.ts';
import { currentsOf } from './potentials.ts';
import { reduce } from './reduce.ts';

/** What is less than this share of what the e.m.f.s alone would drive is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/** The currents of the branches that have a resistance. */
function resisted(looped: Uint8Array, { branches, ...network }: Conductors): Float64Array {
  const { driving, ohms } = network;
  const currents = new Float64Array(branches.length);
  const { left, expand, ...core } = reduce(network, false);
  const found = currentsOf(core);
  for (let at = 0; at < left.length; at++) {
    const branch = left[at] ?? 0;
    // What lies on no loop carries nothing.
    if (looped[branches[branch] ?? 0]) currents[branch] = found[at] ?? 0;
  }
  expand(currents);
  let alone = 0;
  for (let at = 0; at < ohms.length; at++)
    alone = Math.max(alone, Math.abs((driving[at] ?? 0) / (ohms[at] ?? 1)));
  return currents.map((current) => (Math.abs(current) > nothing * alone ? current : 0));
}

/** Adds the currents of what has no resistance: in the forest, from its ends down, each carries what comes together above it. */
function withJoins(graph: Graph, conductors: Conductors): Float64Array {
  const { order, up, tails, heads, ohms, chords } = graph;
  const looped = ringed(graph, chords);
  const found = resisted(looped, conductors);
  const { branches } = conductors;
  const currents = new Float64Array(tails.length);
  const into = new Float64Array(order.length);
  for (let at = 0; at < branches.length; at++) {
    const branch = branches[at] ?? 0;
    const current = found[at] ?? 0;
    const [tail, head] = [tails[branch] ?? 0, heads[branch] ?? 0];
    currents[branch] = current;
    into[tail] = (into[tail] ?? 0) - current;
    into[head] = (into[head] ?? 0) + current;
  }
  for (let at = order.length - 1; at >= 0; at--) {
    const node = order[at] ?? 0;
    const branch = up[node] ?? -1;
    if (branch < 0 || ohms[branch] !== 0 || !looped[branch]) continue;
    const sum = into[node] ?? 0;
    const below = across(graph, branch, node);
    currents[branch] = heads[branch] === node ? -sum : sum;
    into[below] = (into[below] ?? 0) + sum;
  }
  return currents;
}

/** The currents of all branches, where all that conducts is series and parallel. */
function reducible(graph: Graph): Float64Array | undefined {
  const { branches, ...network } = networkOf(graph);
  const { left, expand } = reduce(network, true);
  if (left.length > 0) return undefined;
  const found = new Float64Array(branches.length);
  expand(found);
  const currents = new Float64Array(graph.tails.length);
  for (let at = 0; at < branches.length; at++) currents[branches[at] ?? 0] = found[at] ?? 0;
  return currents;
}

/**
 * Solves large circuits: what is series and parallel all the way down is reduced, in linear time, and the currents are handed back. Others
 * are solved by the potentials of those nodes where more than two branches meet.
 */
export function sparseFlow(graph: Graph): Flow<number> {
  return flowOf(graph, reducible(graph) ?? withJoins(graph, contracted(graph)));
}
