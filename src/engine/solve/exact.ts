import { Fraction } from '../quantity/index.ts';
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

/**
 * Solves symmetric equations in whole numbers without a single fraction: every division comes out even (E. H. Bareiss,
 * "Sylvester's identity and multistep integer-preserving Gaussian elimination", Math. Comp. 22, 1968; from memory). A row that an
 * elimination leaves alone keeps its old scale until it is needed. Returns the unknowns times the determinant, then the determinant.
 */
function solveWhole(rows: bigint[][]): bigint[] {
  const n = rows.length;
  const scales = new Array<bigint>(n).fill(1n);
  let scale = 1n;
  const upToDate = (i: number): bigint[] => {
    const row = rows[i] ?? [];
    const old = scales[i] ?? 1n;
    if (old !== scale) {
      for (let j = 0; j < row.length; j++) if (row[j]) row[j] = ((row[j] ?? 0n) * scale) / old;
      scales[i] = scale;
    }
    return row;
  };
  for (let k = 0; k < n; k++) {
    const pivotRow = upToDate(k);
    const pivot = pivotRow[0] ?? 1n;
    for (let i = 1; i < n - k; i++) {
      const factor = pivotRow[i];
      if (!factor) continue;
      const row = upToDate(k + i);
      for (let j = 0; j < row.length; j++) {
        const [entry = 0n, above = 0n] = [row[j], pivotRow[i + j]];
        if (entry || above) row[j] = (entry * pivot - factor * above) / scale;
      }
      scales[k + i] = pivot;
    }
    scale = pivot;
  }
  const unknowns = new Array<bigint>(n).fill(0n);
  for (let k = n - 1; k >= 0; k--) {
    const row = rows[k] ?? [];
    let sum = (row[n - k] ?? 0n) * scale;
    for (let i = 1; i < n - k; i++) if (row[i]) sum -= (row[i] ?? 0n) * (unknowns[k + i] ?? 0n);
    unknowns[k] = sum / (row[0] ?? 1n);
  }
  return [...unknowns, scale];
}

/** Currents and potentials as whole numbers with one common denominator, reduced only when asked for. */
class ExactFlow implements Flow<Fraction> {
  readonly #graph: Graph;
  readonly #currents: readonly bigint[];
  readonly #denominator: bigint;
  #potentials: bigint[] | undefined;

  constructor(graph: Graph, currents: readonly bigint[], denominator: bigint) {
    this.#graph = graph;
    this.#currents = currents;
    this.#denominator = denominator;
  }

  current({ place }: Branch): Fraction {
    const { ohm, volt } = this.#graph;
    return new Fraction((this.#currents[place] ?? 0n) * ohm, this.#denominator * volt);
  }

  between(p: Node, q: Node): Fraction {
    const potentials = (this.#potentials ??= this.#climb());
    const difference = (potentials[p.place] ?? 0n) - (potentials[q.place] ?? 0n);
    return new Fraction(difference, this.#denominator * this.#graph.volt);
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

/** Solves the loop equations exactly. */
export function exactFlow(graph: Graph): Flow<Fraction> {
  const unknowns = solveWhole(loopEquations(graph));
  const denominator = unknowns.pop() ?? 1n;
  const currents = graph.branches.map(({ loops }) => {
    let sum = 0n;
    for (const loop of loops) sum += loop < 0 ? -(unknowns[~loop] ?? 0n) : (unknowns[loop] ?? 0n);
    return sum;
  });
  return new ExactFlow(graph, currents, denominator);
}
