import { lusolve, matrix as dense, slu, sparse, type Matrix } from 'mathjs';
import numeric from 'numeric';
import type { Workload } from './workloads.ts';

/** Node equations of a workload, for the nodes between the supply's two: entries of the matrix, each once, and the right-hand side. */
function nodeEntries({ nodes, volts, edges }: Workload): {
  readonly entries: ReadonlyMap<number, number>;
  readonly right: readonly number[];
  readonly size: number;
} {
  const size = nodes - 2;
  const entries = new Map<number, number>();
  const right = new Array<number>(size).fill(0);
  const add = (row: number, column: number, value: number): void => {
    const key = row * size + column;
    entries.set(key, (entries.get(key) ?? 0) + value);
  };
  for (const { from, to, ohms } of edges)
    for (const [node, other] of [
      [from, to],
      [to, from],
    ] as const) {
      if (node === 0 || node === nodes - 1) continue;
      add(node - 1, node - 1, 1 / ohms);
      if (other === nodes - 1) right[node - 1]! += volts / ohms;
      else if (other !== 0) add(node - 1, other - 1, -1 / ohms);
    }
  return { entries, right, size };
}

/** What the libraries are given: made once, since it is no part of solving. */
export interface Prepared {
  readonly ccs: unknown;
  readonly sparse: Matrix;
  readonly right: readonly number[];
}

/** The equations in the form of each library. */
export function prepared(workload: Workload): Prepared {
  const { entries, right, size } = nodeEntries(workload);
  const [rows, columns, values]: [number[], number[], number[]] = [[], [], []];
  const whole = sparse();
  whole.resize([size, size]);
  for (const [key, value] of entries) {
    const [row, column] = [Math.floor(key / size), key % size];
    rows.push(row);
    columns.push(column);
    values.push(value);
    whole.set([row, column], value);
  }
  return { ccs: numeric.ccsScatter([rows, columns, values]), sparse: whole, right };
}

/** Libraries with sparse solvers; each gives the potentials of the inner nodes. */
export const sparseRivals = {
  'numeric ccsLUP': ({ ccs, right }: Prepared): readonly number[] =>
    numeric.ccsLUPSolve(numeric.ccsLUP(ccs), right),
  'mathjs slu': ({ sparse: whole, right }: Prepared): readonly number[] =>
    lusolve(slu(whole, 1, 1), dense([...right]))
      .toArray()
      .map(Number),
};
