import { lusolve } from 'mathjs';
import { CholeskyDecomposition, Matrix } from 'ml-matrix';
import numeric from 'numeric';
import { Fraction } from '../../src/engine/index.ts';
import type { Workload } from './workloads.ts';

/** Node equations of a workload: conductances and the currents driven in, for the nodes between the supply's two. */
function nodeEquations({ nodes, volts, edges }: Workload): { matrix: number[][]; right: number[] } {
  const unknowns = nodes - 2;
  const matrix = Array.from({ length: unknowns }, () => new Array<number>(unknowns).fill(0));
  const right = new Array<number>(unknowns).fill(0);
  for (const { from, to, ohms } of edges) {
    const siemens = 1 / ohms;
    for (const [node, other] of [
      [from, to],
      [to, from],
    ] as const) {
      if (node === 0 || node === nodes - 1) continue;
      const row = matrix[node - 1]!;
      row[node - 1]! += siemens;
      if (other === nodes - 1) right[node - 1]! += volts * siemens;
      else if (other !== 0) row[other - 1]! -= siemens;
    }
  }
  return { matrix, right };
}

/** All currents from the inner potentials. */
function currents({ nodes, volts, edges }: Workload, inner: ArrayLike<number>): Float64Array {
  const potential = (node: number): number =>
    node === 0 ? 0 : node === nodes - 1 ? volts : inner[node - 1]!;
  return Float64Array.from(edges, ({ from, to, ohms }) => (potential(from) - potential(to)) / ohms);
}

/** A way to all currents of a workload, from the list of its resistors. */
export type Rival = (workload: Workload) => Float64Array;

/** General-purpose libraries, each solving the node equations. */
export const rivals: Readonly<Record<'numeric' | 'ml-matrix' | 'mathjs', Rival>> = {
  numeric(workload) {
    const { matrix, right } = nodeEquations(workload);
    return currents(workload, numeric.solve(matrix, right));
  },
  'ml-matrix'(workload) {
    const { matrix, right } = nodeEquations(workload);
    const solved = new CholeskyDecomposition(new Matrix(matrix)).solve(Matrix.columnVector(right));
    return currents(workload, solved.to1DArray());
  },
  mathjs(workload) {
    const { matrix, right } = nodeEquations(workload);
    const solved = lusolve(matrix, right) as number[][];
    return currents(
      workload,
      solved.map(([value]) => value!),
    );
  },
};

/** The same equations in exact fractions, by Gaussian elimination: every current. */
export function exactNodal({ nodes, volts, edges }: Workload): Fraction[] {
  const unknowns = nodes - 2;
  const zero = new Fraction(0);
  const rows = Array.from({ length: unknowns }, () => new Array<Fraction>(unknowns + 1).fill(zero));
  for (const { from, to, ohms } of edges) {
    const siemens = new Fraction(1, ohms);
    for (const [node, other] of [
      [from, to],
      [to, from],
    ] as const) {
      if (node === 0 || node === nodes - 1) continue;
      const row = rows[node - 1]!;
      row[node - 1] = row[node - 1]!.add(siemens);
      if (other === nodes - 1) row[unknowns] = row[unknowns]!.add(siemens.mul(volts));
      else if (other !== 0) row[other - 1] = row[other - 1]!.sub(siemens);
    }
  }
  for (let pivot = 0; pivot < unknowns; pivot++) {
    const top = rows[pivot]!;
    for (let below = pivot + 1; below < unknowns; below++) {
      const row = rows[below]!;
      if (row[pivot]!.equals(zero)) continue;
      const factor = row[pivot]!.div(top[pivot]!);
      for (let at = pivot; at <= unknowns; at++) row[at] = row[at]!.sub(factor.mul(top[at]!));
    }
  }
  const inner = new Array<Fraction>(unknowns).fill(zero);
  for (let at = unknowns - 1; at >= 0; at--) {
    const row = rows[at]!;
    let sum = row[unknowns]!;
    for (let after = at + 1; after < unknowns; after++) sum = sum.sub(row[after]!.mul(inner[after]!));
    inner[at] = sum.div(row[at]!);
  }
  const supply = new Fraction(volts);
  const potential = (node: number): Fraction =>
    node === 0 ? zero : node === nodes - 1 ? supply : inner[node - 1]!;
  return edges.map(({ from, to, ohms }) => potential(from).sub(potential(to)).div(ohms));
}
