import { solveWhole } from './bareiss.ts';
import type { Flow } from './flow.ts';
import type { Branch, Graph, Node } from './graph.ts';

/** The upper triangle of the loop equations, each row from its own column on, with the loop's e.m.f. at its end. */
function loopEquations({ branches, chords }: Graph): bigint[][] {
  const n = chords.length;
  const rows = chords.map((_, k) => new Array<bigint>(n - k + 1).fill(0n));
  for (const { loops, ohms, volts } of branches) {
    loops.forEach((loop, x) => {
      const k = loop < 0 ? ~loop : loop;
      const row = rows[k];
      if (!row) return;
      row[n - k] = (row[n - k] ?? 0n) + (loop < 0 ? -volts : volts);
      if (!ohms) return;
      for (let y = x; y < loops.length; y++) {
        const other = loops[y] ?? 0;
        const at = (other < 0 ? ~other : other) - k;
        row[at] = (row[at] ?? 0n) + (loop < 0 === other < 0 ? ohms : -ohms);
      }
    });
  }
  return rows;
}

/** Currents and potentials as whole numbers with one common denominator, made into what is wanted only when asked for. */
class ExactFlow<N> implements Flow<N> {
  readonly #make: (numerator: bigint, denominator: bigint) => N;
  readonly #graph: Graph;
  readonly #currents: readonly bigint[];
  readonly #denominator: bigint;
  #potentials: bigint[] | undefined;

  constructor(
    graph: Graph,
    currents: readonly bigint[],
    denominator: bigint,
    make: (numerator: bigint, denominator: bigint) => N,
  ) {
    this.#make = make;
    this.#graph = graph;
    this.#currents = currents;
    this.#denominator = denominator;
  }

  current({ place }: Branch): N {
    const { ohm, volt } = this.#graph;
    return this.#make((this.#currents[place] ?? 0n) * ohm, this.#denominator * volt);
  }

  between(p: Node, q: Node): N {
    const potentials = (this.#potentials ??= this.#climb());
    const difference = (potentials[p.place] ?? 0n) - (potentials[q.place] ?? 0n);
    return this.#make(difference, this.#denominator * this.#graph.volt);
  }

  #climb(): bigint[] {
    const potentials: bigint[] = [];
    for (const { up } of this.#graph.nodes) {
      if (!up) potentials.push(0n);
      else {
        const { branch, node } = up;
        const rise = branch.volts * this.#denominator - branch.ohms * (this.#currents[branch.place] ?? 0n);
        const below = potentials[node.place] ?? 0n;
        potentials.push(branch.tail === node ? below + rise : below - rise);
      }
    }
    return potentials;
  }
}

/** Solves the loop equations exactly; `make` says what becomes of a numerator and its denominator. */
export function exactFlow<N>(graph: Graph, make: (numerator: bigint, denominator: bigint) => N): Flow<N> {
  const unknowns = solveWhole(loopEquations(graph));
  const denominator = unknowns.pop() ?? 1n;
  const currents = graph.branches.map(({ loops }) => {
    let sum = 0n;
    for (const loop of loops) sum += loop < 0 ? -(unknowns[~loop] ?? 0n) : (unknowns[loop] ?? 0n);
    return sum;
  });
  return new ExactFlow(graph, currents, denominator, make);
}
