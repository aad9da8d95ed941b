import { across, flowOf, type Flow, type Graph } from '../solve/index.ts';
import { factorise, factorPattern, substitute, type Factor, type Values } from './factor.ts';
import { nodesOf, type Nodes } from './nodes.ts';
import { minimumDegree } from './order.ts';
import { patternOf } from './pattern.ts';

/** What stays while only values change: the pattern of the factor, and where each branch stands in it. */
interface Symbolic {
  readonly tails: Int32Array;
  readonly heads: Int32Array;
  readonly factor: Factor;
  /** Of each branch between two unknowns the place of its number in the factor; −1 of the others. */
  readonly entries: Int32Array;
}

const equal = (a: Int32Array, b: Int32Array): boolean =>
  a.length === b.length && a.every((one, at) => one === b[at]);

/** Where a row stands in a column of the factor. */
function entryAt({ starts, rows }: Factor, column: number, row: number): number {
  let [low, high] = [starts[column] ?? 0, (starts[column + 1] ?? 0) - 1];
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((rows[middle] ?? 0) < row) low = middle + 1;
    else high = middle;
  }
  return low;
}

function analyse({ size, tails, heads }: Nodes): Symbolic {
  // What stands at 0 is no unknown: a branch to it counts at its other end alone.
  const isInside = tails.map((tail, at) => (tail < size && (heads[at] ?? 0) < size ? 1 : 0));
  const inside = (ends: Int32Array): Int32Array => ends.filter((_, at) => isInside[at] === 1);
  const factor = factorPattern(minimumDegree(patternOf(size, inside(tails), inside(heads))));
  const entries = tails.map((tail, at) => {
    const head = heads[at] ?? 0;
    if (isInside[at] !== 1 || tail === head) return -1;
    const [a, b] = [factor.places[tail] ?? 0, factor.places[head] ?? 0];
    return entryAt(factor, Math.min(a, b), Math.max(a, b));
  });
  return { tails, heads, factor, entries };
}

/** The analysis of the last circuit, for the next of the same form. */
let last: Symbolic | undefined;

function symbolicOf(nodes: Nodes): Symbolic {
  const isSame = (one: Symbolic): boolean =>
    one.factor.size === nodes.size && equal(one.tails, nodes.tails) && equal(one.heads, nodes.heads);
  if (!last || !isSame(last)) last = analyse(nodes);
  return last;
}

/** The conductances at each unknown and between every two, factorised. */
function factorised(
  { factor, entries }: Symbolic,
  { size, tails, heads }: Nodes,
  siemens: Float64Array,
): Values {
  const diagonal = new Float64Array(size);
  const below = new Float64Array(factor.rows.length);
  siemens.forEach((conductance, at) => {
    const [tail, head] = [tails[at] ?? 0, heads[at] ?? 0];
    if (tail === head) return;
    for (const end of [tail, head]) {
      const place = factor.places[end];
      if (place !== undefined) diagonal[place] = (diagonal[place] ?? 0) + conductance;
    }
    const entry = entries[at] ?? -1;
    if (entry >= 0) below[entry] = (below[entry] ?? 0) - conductance;
  });
  factorise(factor, { diagonal, below });
  return { diagonal, below };
}

/** At most so often what the currents leave over at the nodes is driven away; and no longer once it is so small a share of the largest. */
const refinements = 8;
const little = 2 ** -54;
/** What is less than this share of what the e.m.f.s alone would drive is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/** The currents of the branches that have a resistance. */
function currentsOf(nodes: Nodes, symbolic: Symbolic, siemens: Float64Array): Float64Array {
  const { size, tails, heads, driving } = nodes;
  const { factor } = symbolic;
  const values = factorised(symbolic, nodes, siemens);
  const currents = driving.map((emf, at) => emf * (siemens[at] ?? 0));
  const potentials = new Float64Array(size + 1);
  const y = new Float64Array(size);
  let before = Infinity;
  for (let pass = 0; pass <= refinements; pass++) {
    let largest = 0;
    y.fill(0);
    currents.forEach((current, at) => {
      largest = Math.max(largest, Math.abs(current));
      const [from, to] = [factor.places[tails[at] ?? 0], factor.places[heads[at] ?? 0]];
      if (from !== undefined) y[from] = (y[from] ?? 0) - current;
      if (to !== undefined) y[to] = (y[to] ?? 0) + current;
    });
    const most = y.reduce((sofar, one) => Math.max(sofar, Math.abs(one)), 0);
    if (pass > 1 && (most <= little * largest || most > before / 2)) break;
    before = most;
    substitute(factor, values, y);
    factor.places.forEach((place, unknown) => {
      potentials[unknown] = y[place] ?? 0;
    });
    currents.forEach((current, at) => {
      const fall = (potentials[tails[at] ?? 0] ?? 0) - (potentials[heads[at] ?? 0] ?? 0);
      currents[at] = current + (siemens[at] ?? 0) * fall;
    });
  }
  const alone = driving.reduce((most, emf, at) => Math.max(most, Math.abs(emf * (siemens[at] ?? 0))), 0);
  return currents.map((current) => (Math.abs(current) > nothing * alone ? current : 0));
}

/**
 * Adds the currents of what has no resistance: in the forest, from its ends down, each carries what comes together above it. What lies on
 * no loop carries none.
 */
function withJoins(graph: Graph, { branches }: Nodes, found: Float64Array): Float64Array {
  const { order, up, tails, heads, ohms, ringed } = graph;
  const currents = new Float64Array(tails.length);
  const into = new Float64Array(order.length);
  branches.forEach((branch, at) => {
    const current = ringed[branch] ? (found[at] ?? 0) : 0;
    const [tail, head] = [tails[branch] ?? 0, heads[branch] ?? 0];
    currents[branch] = current;
    into[tail] = (into[tail] ?? 0) - current;
    into[head] = (into[head] ?? 0) + current;
  });
  for (let at = order.length - 1; at >= 0; at--) {
    const node = order[at] ?? 0;
    const branch = up[node] ?? -1;
    if (branch < 0 || ohms[branch] !== 0 || !ringed[branch]) continue;
    const sum = into[node] ?? 0;
    const below = across(graph, branch, node);
    currents[branch] = heads[branch] === node ? -sum : sum;
    into[below] = (into[below] ?? 0) + sum;
  }
  return currents;
}

/** Solves large circuits by the potentials of their nodes, with a sparse factor of the conductances. */
export function sparseFlow(graph: Graph): Flow<number> {
  const nodes = nodesOf(graph);
  const siemens = Float64Array.from(nodes.branches, (branch) => 1 / (graph.ohms[branch] ?? 1));
  const found = currentsOf(nodes, symbolicOf(nodes), siemens);
  return flowOf(graph, withJoins(graph, nodes, found));
}
