import { across, type Graph } from '../solve/index.ts';
import type { Network } from './reduce.ts';

/** Conducting branches of a graph as a network. */
export interface Conductors extends Network {
  /** Of each branch of the network its number in the graph. */
  readonly branches: Int32Array;
}

/** Those branches of a graph that have a resistance, and the `joins`, between the nodes that stand for its own and are lifted above them. */
function conductors(
  { tails, heads, ohms, volts }: Graph,
  nodes: number,
  groups: Int32Array,
  lifts: Float64Array,
  joins?: Uint8Array,
): Conductors {
  const most = tails.length;
  const [branches, from, to] = [new Int32Array(most), new Int32Array(most), new Int32Array(most)];
  const [resistances, driving] = [new Float64Array(most), new Float64Array(most)];
  let count = 0;
  for (let branch = 0; branch < most; branch++) {
    const ohm = ohms[branch] ?? 0;
    if (ohm === Infinity || (ohm === 0 && !joins?.[branch])) continue;
    const tail = tails[branch] ?? 0;
    const head = heads[branch] ?? 0;
    branches[count] = branch;
    from[count] = groups[tail] ?? 0;
    to[count] = groups[head] ?? 0;
    resistances[count] = ohm;
    driving[count] = (volts[branch] ?? 0) + (lifts[tail] ?? 0) - (lifts[head] ?? 0);
    count += 1;
  }
  return {
    nodes,
    branches: branches.subarray(0, count),
    tails: from.subarray(0, count),
    heads: to.subarray(0, count),
    ohms: resistances.subarray(0, count),
    driving: driving.subarray(0, count),
  };
}

/** All conducting branches between the nodes of a graph, but for one of each loop without resistance. */
export function networkOf(graph: Graph): Conductors {
  const { up, tails } = graph;
  const nodes = up.length;
  const groups = new Int32Array(nodes);
  const joins = new Uint8Array(tails.length);
  for (let node = 0; node < nodes; node++) {
    groups[node] = node;
    const branch = up[node] ?? -1;
    if (branch >= 0) joins[branch] = 1;
  }
  return conductors(graph, nodes, groups, new Float64Array(nodes), joins);
}

/**
 * The branches that have a resistance: nodes that nothing with resistance lies between are one, and so is one of each piece that nothing
 * joins. Where e.m.f.s lift such a node above the others, they drive what is joined to it. The forest holds all that has no resistance,
 * since it was grown by the smallest resistances.
 */
export function contracted(graph: Graph): Conductors {
  const { order, up, heads, ohms, volts } = graph;
  const lifts = new Float64Array(order.length);
  const groups = new Int32Array(order.length);
  let nodes = 1;
  for (const node of order) {
    const branch = up[node] ?? -1;
    if (branch < 0) continue;
    const below = across(graph, branch, node);
    const rise = volts[branch] ?? 0;
    // As if nothing flowed: then only the chords are driven, and what little their currents change is all there is to find.
    lifts[node] = (lifts[below] ?? 0) + (heads[branch] === node ? rise : -rise);
    groups[node] = ohms[branch] === 0 ? (groups[below] ?? 0) : nodes++;
  }
  return conductors(graph, nodes, groups, lifts);
}
