import type { Flow } from './flow.ts';
import type { Branch, Graph, Node } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { Twofold } from './twofold.ts';

/** The matrix of the loop equations; what it holds matters within one call only. */
let matrix = new Float64Array(1024);

/** What is less than this share of the largest is a zero that rounding has hidden. */
const nothing = 2 ** -64;

/** Writes the loop equations: the matrix (upper triangle), and the e.m.f. round each loop, which it returns. */
function loopEquations({ branches, chords }: Graph): number[] {
  const n = chords.length;
  if (matrix.length < n * n) matrix = new Float64Array(n * n);
  else matrix.fill(0, 0, n * n);
  const emfs = new Array<number>(n).fill(0);
  for (const { loops, resistance, emf } of branches) {
    for (let x = 0; x < loops.length; x++) {
      const loop = loops[x] ?? 0;
      const row = loop < 0 ? ~loop : loop;
      emfs[row] = (emfs[row] ?? 0) + (loop < 0 ? -emf : emf);
      if (resistance === 0) continue;
      for (let y = x; y < loops.length; y++) {
        const other = loops[y] ?? 0;
        const at = row * n + (other < 0 ? ~other : other);
        matrix[at] = (matrix[at] ?? 0) + (loop < 0 === other < 0 ? resistance : -resistance);
      }
    }
  }
  return emfs;
}

/** Adds to the current of each branch what each loop brings. */
function addLoops(branches: readonly Branch[], loops: readonly number[], currents: readonly Twofold[]): void {
  branches.forEach((branch, place) => {
    for (const loop of branch.loops)
      currents[place]?.add(loop < 0 ? -(loops[~loop] ?? 0) : (loops[loop] ?? 0));
  });
}

/** What is left of the e.m.f. round each loop once the currents have taken their share. */
function residuals(
  branches: readonly Branch[],
  emfs: readonly number[],
  currents: readonly Twofold[],
): number[] {
  const left = emfs.map((emf) => new Twofold(emf));
  branches.forEach(({ loops, resistance }, place) => {
    const current = currents[place];
    if (resistance === 0 || !current) return;
    const drop = new Twofold(0);
    drop.addProduct(resistance, current);
    for (const loop of loops) {
      if (loop < 0) left[~loop]?.add(drop.high, drop.low);
      else left[loop]?.add(-drop.high, -drop.low);
    }
  });
  return left.map(({ value }) => value);
}

/** Currents and potentials in floating-point numbers, each right to one rounding of the largest or better. */
class LiveFlow implements Flow<number> {
  readonly #graph: Graph;
  readonly #currents: readonly Twofold[];
  readonly #ohm: number;
  readonly #volt: number;
  #largest = 0;
  #potentials: Twofold[] | undefined;

  constructor(graph: Graph, currents: readonly Twofold[]) {
    this.#graph = graph;
    this.#currents = currents;
    this.#ohm = Number(graph.ohm);
    this.#volt = Number(graph.volt);
    for (const { high } of currents) this.#largest = Math.max(this.#largest, Math.abs(high));
  }

  current({ place }: Branch): number {
    const value = this.#currents[place]?.value ?? 0;
    return Math.abs(value) > this.#largest * nothing ? (value * this.#ohm) / this.#volt : 0;
  }

  between(p: Node, q: Node): number {
    const potentials = (this.#potentials ??= this.#climb());
    const [a, b] = [potentials[p.place], potentials[q.place]];
    if (!a || !b) return 0;
    const value = a.high - b.high + (a.low - b.low);
    const largest = Math.max(Math.abs(a.high), Math.abs(b.high));
    return Math.abs(value) > largest * nothing ? value / this.#volt : 0;
  }

  #climb(): Twofold[] {
    const potentials: Twofold[] = [];
    for (const { up } of this.#graph.nodes) {
      const potential = new Twofold(0);
      potentials.push(potential);
      if (!up) continue;
      const { branch, node } = up;
      const below = potentials[node.place];
      const current = this.#currents[branch.place];
      if (!below || !current) continue;
      potential.add(below.high, below.low);
      const sign = branch.tail === node ? 1 : -1;
      potential.addProduct(-sign * branch.resistance, current);
      potential.add(sign * branch.emf);
    }
    return potentials;
  }
}

/**
 * Solves the loop equations in floating-point numbers: L·D·Lᵀ, then one step of refinement with residuals kept to twice the
 * precision (J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory).
 */
export function liveFlow(graph: Graph): Flow<number> {
  const { branches, chords } = graph;
  const currents = branches.map(() => new Twofold(0));
  const emfs = loopEquations(graph);
  const loops = [...emfs];
  factorise(matrix, chords.length);
  substitute(matrix, loops);
  addLoops(branches, loops, currents);
  const left = residuals(branches, emfs, currents);
  substitute(matrix, left);
  addLoops(branches, left, currents);
  return new LiveFlow(graph, currents);
}
