import { ints } from './scratch.ts';

/**
 * A spanning forest of the smallest resistances. A branch outside the forest, a chord, closes one loop through the forest; the
 * currents of the chords that have resistance are the unknowns.
 */
export interface Forest {
  /** Every node, each after the node above it; the node of 0 V is the first. */
  readonly order: readonly number[];
  /** Of each node the branch of the forest towards its root; −1 at a root. */
  readonly up: readonly number[];
  /** Of each node the branches of the forest between it and its root. */
  readonly depths: readonly number[];
  /** Of each node the root of its piece, of all that conductors join to it. */
  readonly roots: readonly number[];
  /** Chord k closes the loop of row k. */
  readonly chords: readonly number[];
  /** Chords that close a loop without any resistance. */
  readonly slack: readonly number[];
}

/** Branches between numbered nodes. */
export interface Ends {
  /** The number of each node. */
  readonly nodes: ReadonlyMap<string, number>;
  /** A current is positive from tail to head: inside a supply that is from the negative to the positive terminal. */
  readonly tails: readonly number[];
  readonly heads: readonly number[];
}

/** The node at the other end of a branch. */
export function across(
  { tails, heads }: Pick<Ends, 'tails' | 'heads'>,
  branch: number,
  node: number,
): number {
  return (tails[branch] ?? 0) + (heads[branch] ?? 0) - node;
}

/**
 * Goes round the loop that a chord closes: along itself, then through the forest from its head back to its tail, on two arms that
 * meet: one onwards from its head, one back from its tail. `along` says whether the loop runs from a branch's tail to its head.
 */
export function goRound(
  graph: Pick<Ends & Forest, 'tails' | 'heads' | 'up' | 'depths'>,
  chord: number,
  visit: (branch: number, along: boolean, isOnwards: boolean) => void,
): void {
  const { tails, heads, up, depths } = graph;
  visit(chord, true, true);
  let [head, tail] = [heads[chord] ?? 0, tails[chord] ?? 0];
  while (head !== tail) {
    const isOnwards = (depths[head] ?? 0) > (depths[tail] ?? 0);
    const branch = up[isOnwards ? head : tail] ?? 0;
    visit(branch, isOnwards ? tails[branch] === head : heads[branch] === tail, isOnwards);
    if (isOnwards) head = across(graph, branch, head);
    else tail = across(graph, branch, tail);
  }
}

/** Goes up the forest, to each node from the one below it, through a branch; `isUp` where the branch's head is the upper one. */
export function climb(
  graph: Ends & Forest,
  visit: (node: number, below: number, branch: number, isUp: boolean) => void,
): void {
  const { order, up, heads } = graph;
  for (const node of order) {
    const branch = up[node] ?? -1;
    if (branch >= 0) visit(node, across(graph, branch, node), branch, heads[branch] === node);
  }
}

/** Sorts the numbers of ranks into `list`, the least first (D. L. Shell 1959); those of infinite rank are left out. Returns how many there are. */
function sort(ranks: readonly number[], list: Int32Array): number {
  let count = 0;
  for (let at = 0; at < ranks.length; at++) if (ranks[at] !== Infinity) list[count++] = at;
  let gap = 1;
  while (gap < count / 9) gap = 3 * gap + 1;
  for (; gap >= 1; gap = (gap - 1) / 3) {
    for (let next = gap; next < count; next++) {
      const own = list[next] ?? 0;
      const rank = ranks[own] ?? 0;
      let at = next;
      for (; at >= gap; at -= gap) {
        const before = list[at - gap] ?? 0;
        if ((ranks[before] ?? 0) <= rank) break;
        list[at] = before;
      }
      list[at] = own;
    }
  }
  return count;
}

/** The last of a chain of numbers, each of which tells the next, the last one itself; on the way the chain becomes shorter. */
export function top(nexts: number[] | Int32Array, from: number): number {
  let at = from;
  for (let next = nexts[at] ?? at; next !== at; next = nexts[at] ?? at) {
    nexts[at] = nexts[next] ?? next;
    at = next;
  }
  return at;
}

/** Scratch: the branches by rank, of each node its piece and the last branch of the forest that came to it, and of each end of a branch the one before. */
let branches: Int32Array = new Int32Array(128);
let pieces: Int32Array = new Int32Array(64);
let lasts: Int32Array = new Int32Array(64);
let befores: Int32Array = new Int32Array(256);

/**
 * Grows the spanning forest of the least ranks (Kruskal 1956), the piece of `ground` first. With the smallest
 * resistances in the forest no loop's own resistance is lost beside what it shares with others, whatever the spread.
 */
export function grow({ nodes, tails, heads }: Ends, ranks: readonly number[], ground: number): Forest {
  const count = nodes.size;
  const piece = (pieces = ints(pieces, count));
  const last = (lasts = ints(lasts, count));
  const before = (befores = ints(befores, 2 * tails.length));
  const up = new Array<number>(count);
  const depths = new Array<number>(count);
  const roots = new Array<number>(count);
  const order = new Array<number>(count);
  for (let node = 0; node < count; node++) {
    up[node] = -1;
    depths[node] = -1;
    piece[node] = node;
    last[node] = -1;
  }
  const chords: number[] = [];
  const slack: number[] = [];
  const list = (branches = ints(branches, ranks.length));
  const conducting = sort(ranks, list);
  for (let at = 0; at < conducting; at++) {
    const branch = list[at] ?? 0;
    const tail = tails[branch] ?? 0;
    const head = heads[branch] ?? 0;
    const one = top(piece, tail);
    const other = top(piece, head);
    if (one !== other) {
      piece[one] = other;
      before[2 * branch] = last[tail] ?? -1;
      last[tail] = 2 * branch;
      before[2 * branch + 1] = last[head] ?? -1;
      last[head] = 2 * branch + 1;
    } else ((ranks[branch] ?? 0) > 0 ? chords : slack).push(branch);
  }
  let found = 0;
  for (let start = -1; found < count; start++) {
    const root = start < 0 ? ground : start;
    if ((depths[root] ?? 0) >= 0) continue;
    depths[root] = 0;
    let next = found;
    for (order[found++] = root; next < found; next++) {
      const node = order[next] ?? 0;
      roots[node] = root;
      for (let end = last[node] ?? -1; end >= 0; end = before[end] ?? -1) {
        const branch = end >> 1;
        if (branch === up[node]) continue;
        const child = (end & 1 ? tails : heads)[branch] ?? 0;
        up[child] = branch;
        depths[child] = (depths[node] ?? 0) + 1;
        order[found++] = child;
      }
    }
  }
  return { order, up, depths, roots, chords, slack };
}

/** The loops that the chords close, branch by branch, until the next ones are asked for. */
export interface Loops {
  /** Of each branch the last step that a loop takes through it, and of each step the one before through the same branch; 0 where there is none. */
  readonly lasts: readonly number[];
  readonly befores: readonly number[];
  /** Of each step the row of its loop, and whether that runs through the branch from its tail to its head: 1, else −1. */
  readonly rows: readonly number[];
  readonly ways: readonly number[];
}

/** Scratch. */
const steps: Record<keyof Loops, number[]> = { lasts: [], befores: [0], rows: [0], ways: [0] };

/** Finds the loops that the chords close. */
export function loopsThrough(graph: Ends & Forest): Loops {
  const { lasts, befores, rows, ways } = steps;
  const { chords, tails } = graph;
  for (let branch = 0; branch < tails.length; branch++) lasts[branch] = 0;
  let [row, at] = [0, 0];
  const step = (branch: number, along: boolean): void => {
    rows[++at] = row;
    ways[at] = along ? 1 : -1;
    befores[at] = lasts[branch] ?? 0;
    lasts[branch] = at;
  };
  for (; row < chords.length; row++) goRound(graph, chords[row] ?? 0, step);
  return steps;
}

/** Of each branch 1 if it lies on a loop that one of these closes: on its way round a loop, each search jumps over what others have marked. */
export function ringed(graph: Ends & Forest, closing: readonly number[]): Uint8Array {
  const { tails, heads, up, depths } = graph;
  const found = new Uint8Array(tails.length);
  const jumps = [...up.keys()];
  for (const chord of closing) {
    found[chord] = 1;
    let [a, b] = [top(jumps, tails[chord] ?? 0), top(jumps, heads[chord] ?? 0)];
    while (a !== b) {
      if ((depths[a] ?? 0) < (depths[b] ?? 0)) [a, b] = [b, a];
      const branch = up[a] ?? 0;
      found[branch] = 1;
      jumps[a] = across(graph, branch, a);
      a = top(jumps, a);
    }
  }
  return found;
}
