/** Branches between numbered nodes; an e.m.f. drives from tail to head. No loop is without resistance. */
export interface Network {
  /** How many nodes there are. */
  readonly nodes: number;
  readonly tails: Int32Array;
  readonly heads: Int32Array;
  readonly ohms: Float64Array;
  readonly driving: Float64Array;
}

/** What series and parallel reduction leaves of a network. */
export interface Reduced extends Network {
  /** The branches that are left, by their numbers in the network: no node of theirs has fewer than three neighbours. */
  readonly left: Int32Array;
  /** Completes the currents, by their numbers in the network, from those of what is left. To be called once. */
  readonly expand: (currents: Float64Array) => void;
}

/** Nodes to look at, each once. */
class Pending {
  readonly #nodes: Int32Array;
  readonly #isIn: Uint8Array;
  #count = 0;

  constructor(size: number) {
    this.#nodes = new Int32Array(size);
    this.#isIn = new Uint8Array(size);
  }

  push(node: number): void {
    if (this.#isIn[node]) return;
    this.#isIn[node] = 1;
    this.#nodes[this.#count++] = node;
  }

  /** The last one, −1 if there is none. */
  pop(): number {
    if (this.#count === 0) return -1;
    const node = this.#nodes[--this.#count] ?? -1;
    this.#isIn[node] = 0;
    return node;
  }
}

/**
 * Joins what is side by side and what meets where nothing else does, and drops dead ends, until no node has fewer than three neighbours.
 * A node is looked at anew when something has changed at it, and no further than to its third neighbour, so that the time is linear
 * (J. Valdes, R. E. Tarjan and E. L. Lawler, SIAM Journal on Computing 11, 1982, 298–313; from memory). What an e.m.f. drives comes last:
 * while nothing drives, currents only divide, and each keeps all its figures. It can be left alone: what circulates between many driven
 * branches may be far more than what flows in them.
 */
export function reduce({ nodes, tails, heads, ohms, driving }: Network, mayJoinDriven: boolean): Reduced {
  const count = tails.length;
  const r = ohms.slice();
  const e = driving.slice();
  /** Half 2b of branch b is at its tail, 2b + 1 at its head; those at node n are list n, and list nodes + n if their branch is driven. */
  const ends = new Int32Array(2 * count);
  const lists = new Int32Array(2 * count);
  const next = new Int32Array(2 * count);
  const before = new Int32Array(2 * count);
  const first = new Int32Array(2 * nodes).fill(-1);
  /** What became of each branch: −1 it is left, −2 its current is known, else 4 × the branch it went into, + 2 side by side, + 1 against it. */
  const fates = new Int32Array(count).fill(-1);
  /** The branches that went into others, in order; the ohms of those before that, and what then circulates between the two. */
  const gone = new Int32Array(count);
  const was = new Float64Array(count);
  const round = new Float64Array(count);
  let steps = 0;
  const [soon, late] = [new Pending(nodes), new Pending(nodes)];

  const put = (half: number, node: number): void => {
    const list = e[half >> 1] === 0 ? node : nodes + node;
    const other = first[list] ?? -1;
    ends[half] = node;
    lists[half] = list;
    next[half] = other;
    before[half] = -1;
    if (other >= 0) before[other] = half;
    first[list] = half;
  };
  const remove = (half: number): void => {
    const [earlier, later] = [before[half] ?? -1, next[half] ?? -1];
    if (earlier >= 0) next[earlier] = later;
    else first[lists[half] ?? 0] = later;
    if (later >= 0) before[later] = earlier;
    soon.push(ends[half] ?? 0);
  };
  /** Where a branch has come to be driven, or no longer is, its half goes into the other list. */
  const settle = (half: number): void => {
    if ((lists[half] ?? 0) >= nodes === (e[half >> 1] !== 0)) return;
    remove(half);
    put(half, ends[half] ?? 0);
  };
  const goInto = (branch: number, whole: number, fate: number): void => {
    fates[branch] = 4 * whole + fate;
    was[branch] = r[whole] ?? 0;
    gone[steps++] = branch;
  };

  for (let branch = count - 1; branch >= 0; branch--) {
    const [tail, head] = [tails[branch] ?? 0, heads[branch] ?? 0];
    if (tail === head) {
      fates[branch] = -2;
      continue;
    }
    put(2 * branch, tail);
    put(2 * branch + 1, head);
  }

  /** The halves at a node towards two neighbours, those, and the conductance of what has been joined there, in two parts. */
  const [halves, far] = [new Int32Array(2), new Int32Array(2)];
  const [high, low] = [new Float64Array(2), new Float64Array(2)];

  const joinParallel = (slot: number, second: number): void => {
    const isFree = r[second >> 1] === 0;
    const kept = isFree ? second : (halves[slot] ?? 0);
    const half = isFree ? (halves[slot] ?? 0) : second;
    const [whole, branch] = [kept >> 1, half >> 1];
    const against = (kept ^ half) & 1;
    const [a, b] = [r[whole] ?? 0, r[branch] ?? 0];
    goInto(branch, whole, 2 + against);
    const [one, other] = [e[whole] ?? 0, (against ? -1 : 1) * (e[branch] ?? 0)];
    if (one !== 0 || other !== 0) {
      round[branch] = (other - one) / (a + b);
      e[whole] = (one * b + other * a) / (a + b);
    }
    if (a > 0) {
      // The sum of many conductances is to be as good as that of two (see `Twofolds`).
      const [sum, more] = [(high[slot] ||= 1 / a), 1 / b];
      const total = sum + more;
      low[slot] = (low[slot] ?? 0) + (Math.max(sum, more) - total + Math.min(sum, more));
      high[slot] = total;
      r[whole] = 1 / (total + (low[slot] ?? 0));
    }
    halves[slot] = kept;
    remove(half);
    remove(half ^ 1);
    settle(kept);
    settle(kept ^ 1);
  };

  const joinSeries = (one: number, other: number): void => {
    const [whole, branch] = [one >> 1, other >> 1];
    const against = (one ^ other ^ 1) & 1;
    goInto(branch, whole, against);
    r[whole] = (r[whole] ?? 0) + (r[branch] ?? 0);
    e[whole] = (e[whole] ?? 0) + (against ? -1 : 1) * (e[branch] ?? 0);
    remove(other ^ 1);
    put(one, ends[other ^ 1] ?? 0);
    settle(one ^ 1);
    soon.push(ends[one ^ 1] ?? 0);
  };

  const visit = (node: number, isLast: boolean): void => {
    let slots = 0;
    const driven = first[nodes + node] ?? -1;
    let ahead = isLast ? driven : -1;
    for (let half = first[node] ?? -1; half >= 0 || ahead >= 0;) {
      if (half < 0) {
        half = ahead;
        ahead = -1;
      }
      const following = next[half] ?? -1;
      const other = ends[half ^ 1] ?? 0;
      const slot = slots > 0 && other === far[0] ? 0 : slots > 1 && other === far[1] ? 1 : slots;
      if (slot > 1) return;
      if (slot < slots) joinParallel(slot, half);
      else {
        halves[slot] = half;
        far[slot] = other;
        high[slot] = 0;
        low[slot] = 0;
        slots += 1;
      }
      half = following;
    }
    const [one, other] = [halves[0] ?? 0, halves[1] ?? 0];
    if (driven >= 0 && !isLast) late.push(node);
    else if (slots > 0) {
      first[node] = -1;
      first[nodes + node] = -1;
      if (slots > 1) joinSeries(one, other);
      else {
        fates[one >> 1] = -2;
        remove(one ^ 1);
      }
    }
  };

  for (let node = 0; node < nodes; node++) soon.push(node);
  for (;;) {
    const node = soon.pop();
    const driven = node < 0 && mayJoinDriven ? late.pop() : node;
    if (driven < 0) break;
    visit(driven, node < 0);
  }

  let kept = 0;
  const left = new Int32Array(count - steps);
  for (let branch = 0; branch < count; branch++) if (fates[branch] === -1) left[kept++] = branch;
  return {
    nodes,
    left: left.subarray(0, kept),
    tails: left.subarray(0, kept).map((branch) => ends[2 * branch] ?? 0),
    heads: left.subarray(0, kept).map((branch) => ends[2 * branch + 1] ?? 0),
    ohms: r.filter((_, branch) => fates[branch] === -1),
    driving: e.filter((_, branch) => fates[branch] === -1),
    expand(currents) {
      for (let branch = 0; branch < count; branch++)
        if (fates[branch] === -2 && tails[branch] === heads[branch])
          currents[branch] = (driving[branch] ?? 0) / (ohms[branch] ?? 1);
      /** The p.d. that drives the last currents divided, and the branch they came from: it is the same for the next ones there. */
      let [volts, from] = [0, -1];
      for (let step = steps - 1; step >= 0; step--) {
        const branch = gone[step] ?? 0;
        const fate = fates[branch] ?? 0;
        const whole = fate >> 2;
        const sign = fate & 1 ? -1 : 1;
        const current = currents[whole] ?? 0;
        if (fate & 2) {
          const extra = round[branch] ?? 0;
          if (from !== whole) volts = current * (r[whole] ?? 0);
          currents[branch] = sign * (volts / (r[branch] ?? 1) + extra);
          currents[whole] = (was[branch] === 0 ? current : volts / (was[branch] ?? 1)) - extra;
          from = extra === 0 ? whole : -1;
        } else {
          currents[branch] = sign * current;
          from = -1;
        }
        r[whole] = was[branch] ?? 0;
      }
    },
  };
}
