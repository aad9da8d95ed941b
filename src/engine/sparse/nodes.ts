import { across, type Graph } from '../solve/index.ts';

/**
 * A circuit in the potentials of its nodes: nodes that nothing with resistance lies between are one, each with what e.m.f.s lift
 * it by; one of each piece is at 0.
 */
export interface Nodes {
  /** How many potentials are unknown. */
  readonly size: number;
  /** Of each node of the graph its unknown; `size` where it is 0. */
  readonly unknowns: Int32Array;
  /** Of each node of the graph how far e.m.f.s lift it above that, in the graph’s unit, while nothing flows. */
  readonly lifts: Float64Array;
  /** The branches with a resistance, the unknowns at their tails and heads, and the e.m.f. that drives each. */
  readonly branches: Int32Array;
  readonly tails: Int32Array;
  readonly heads: Int32Array;
  readonly driving: Float64Array;
}

/** Contracts what has no resistance: the forest holds it all, since it was grown by the smallest resistances. */
export function nodesOf(graph: Graph): Nodes {
  const { order, up, heads, tails, ohms, volts } = graph;
  const lifts = new Float64Array(order.length);
  const groups = new Int32Array(order.length);
  /** Of each group its number among the unknowns; −1 of what stands at 0. */
  const numbers: number[] = [];
  let size = 0;
  for (const node of order) {
    const branch = up[node] ?? -1;
    const below = branch < 0 ? node : across(graph, branch, node);
    const rise = volts[branch] ?? 0;
    // As if nothing flowed: then only the chords are driven, and what little their currents change is all there is to find.
    lifts[node] = (lifts[below] ?? 0) + (heads[branch] === node ? rise : -rise);
    if (branch >= 0 && ohms[branch] === 0) groups[node] = groups[below] ?? 0;
    else {
      groups[node] = numbers.length;
      numbers.push(branch < 0 ? -1 : size++);
    }
  }
  const unknowns = groups.map((group) => {
    const number = numbers[group] ?? -1;
    return number < 0 ? size : number;
  });
  const branches = Int32Array.from(
    ohms.flatMap((ohm, branch) => (ohm > 0 && ohm < Infinity ? [branch] : [])),
  );
  return {
    size,
    unknowns,
    lifts,
    branches,
    tails: branches.map((branch) => unknowns[tails[branch] ?? 0] ?? 0),
    heads: branches.map((branch) => unknowns[heads[branch] ?? 0] ?? 0),
    driving: Float64Array.from(
      branches,
      (branch) => (volts[branch] ?? 0) + (lifts[tails[branch] ?? 0] ?? 0) - (lifts[heads[branch] ?? 0] ?? 0),
    ),
  };
}
