import { factorise, factorPattern, substitute, type Factor, type Values } from './factor.ts';
import { minimumDegree } from './order.ts';
import { patternOf } from './pattern.ts';
import type { Network } from './reduce.ts';

/** What stays while only values change: the nodes' places in the factor, and where each branch stands in it. */
interface Symbolic {
  readonly tails: Int32Array;
  readonly heads: Int32Array;
  readonly factor: Factor;
  /** Of each branch the places of its ends; that of the node at 0 V is after all others. */
  readonly from: Int32Array;
  readonly to: Int32Array;
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

/** Numbers the nodes that have branches; that with the most is 0 V and comes last, since it takes the most out of the equations. */
function numbered({ nodes, tails, heads }: Network): readonly [size: number, numbers: Int32Array] {
  const degrees = new Int32Array(nodes);
  for (const ends of [tails, heads]) for (const node of ends) degrees[node] = (degrees[node] ?? 0) + 1;
  let ground = 0;
  for (let node = 0; node < nodes; node++) if ((degrees[node] ?? 0) > (degrees[ground] ?? 0)) ground = node;
  let size = 0;
  const numbers = degrees.map((degree, node) => (degree > 0 && node !== ground ? size++ : 0));
  numbers[ground] = size;
  return [size, numbers];
}

function analyse(network: Network): Symbolic {
  const { tails, heads } = network;
  const [size, numbers] = numbered(network);
  const factor = factorPattern(
    minimumDegree(
      patternOf(
        size,
        tails.map((node) => numbers[node] ?? 0),
        heads.map((node) => numbers[node] ?? 0),
      ),
    ),
  );
  const placeOf = (node: number): number => factor.places[numbers[node] ?? 0] ?? size;
  const [from, to] = [tails.map(placeOf), heads.map(placeOf)];
  const entries = from.map((tail, at) => {
    const head = to[at] ?? 0;
    return Math.max(tail, head) === size ? -1 : entryAt(factor, Math.min(tail, head), Math.max(tail, head));
  });
  return { tails, heads, factor, from, to, entries };
}

/** The analysis of the last network, for the next of the same form. */
let last: Symbolic | undefined;

function symbolicOf(network: Network): Symbolic {
  if (!last || !equal(last.tails, network.tails) || !equal(last.heads, network.heads))
    last = analyse(network);
  return last;
}

/** The conductances at each unknown and between every two, factorised. */
function factorised({ factor, from, to, entries }: Symbolic, siemens: Float64Array): Values {
  const diagonal = new Float64Array(factor.size + 1);
  const below = new Float64Array(factor.rows.length);
  for (let at = 0; at < siemens.length; at++) {
    const conductance = siemens[at] ?? 0;
    const [tail, head, entry] = [from[at] ?? 0, to[at] ?? 0, entries[at] ?? -1];
    diagonal[tail] = (diagonal[tail] ?? 0) + conductance;
    diagonal[head] = (diagonal[head] ?? 0) + conductance;
    if (entry >= 0) below[entry] = (below[entry] ?? 0) - conductance;
  }
  factorise(factor, { diagonal, below });
  return { diagonal, below };
}

/** At most so often what the currents leave over at the nodes is driven away; and no longer once it is so small a share of the largest. */
const refinements = 8;
const little = 2 ** -54;

/**
 * The currents of a network that hangs together and has no node with fewer than three neighbours, by the potentials of its nodes: with a
 * sparse factor of the conductances, and then as often again as what is left over at the nodes becomes less.
 */
export function currentsOf(network: Network): Float64Array {
  const { ohms, driving } = network;
  if (ohms.length === 0) return new Float64Array(0);
  const symbolic = symbolicOf(network);
  const { factor, from, to } = symbolic;
  const siemens = ohms.map((ohm) => 1 / ohm);
  const values = factorised(symbolic, siemens);
  const currents = driving.map((emf, at) => emf * (siemens[at] ?? 0));
  const y = new Float64Array(factor.size + 1);
  let before = Infinity;
  for (let pass = 0; pass <= refinements; pass++) {
    let [largest, most] = [0, 0];
    y.fill(0);
    for (let at = 0; at < currents.length; at++) {
      const current = currents[at] ?? 0;
      const [tail, head] = [from[at] ?? 0, to[at] ?? 0];
      largest = Math.max(largest, Math.abs(current));
      y[tail] = (y[tail] ?? 0) - current;
      y[head] = (y[head] ?? 0) + current;
    }
    y[factor.size] = 0;
    for (let place = 0; place < factor.size; place++) most = Math.max(most, Math.abs(y[place] ?? 0));
    if (pass > 1 && (most <= little * largest || most > before / 2)) break;
    before = most;
    substitute(factor, values, y);
    for (let at = 0; at < currents.length; at++) {
      const fall = (y[from[at] ?? 0] ?? 0) - (y[to[at] ?? 0] ?? 0);
      currents[at] = (currents[at] ?? 0) + (siemens[at] ?? 0) * fall;
    }
  }
  return currents;
}
