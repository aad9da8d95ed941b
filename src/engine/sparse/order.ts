import type { Pattern } from './pattern.ts';

/** An order of elimination, and what it fills in. */
export interface Order {
  /** The variables, the one eliminated first in front. */
  readonly pivots: Int32Array;
  /** Of each pivot, in the same order, the variables that its row of the factor holds after it: eliminated later, not sorted. */
  readonly rows: readonly Int32Array[];
}

/** Lists of variables by their degrees, in which one is moved and the least is found without a search. */
class Degrees {
  readonly #first: Int32Array;
  readonly #next: Int32Array;
  readonly #before: Int32Array;
  readonly #of: Int32Array;
  #least = 0;

  constructor(size: number) {
    this.#first = new Int32Array(size + 1).fill(-1);
    this.#next = new Int32Array(size).fill(-1);
    this.#before = new Int32Array(size).fill(-1);
    this.#of = new Int32Array(size).fill(-1);
  }

  remove(variable: number): void {
    const [before, next] = [this.#before[variable] ?? -1, this.#next[variable] ?? -1];
    if (before >= 0) this.#next[before] = next;
    else this.#first[this.#of[variable] ?? 0] = next;
    if (next >= 0) this.#before[next] = before;
  }

  put(variable: number, degree: number): void {
    const first = this.#first[degree] ?? -1;
    this.#of[variable] = degree;
    this.#next[variable] = first;
    this.#before[variable] = -1;
    if (first >= 0) this.#before[first] = variable;
    this.#first[degree] = variable;
    if (degree < this.#least) this.#least = degree;
  }

  least(): number {
    while ((this.#first[this.#least] ?? -1) < 0) this.#least += 1;
    return this.#first[this.#least] ?? 0;
  }
}

/**
 * Orders the elimination of a symmetric matrix so that little fills in: always the variable with the fewest neighbours, which are counted
 * from above as P. R. Amestoy, T. A. Davis and I. S. Duff do ("An approximate minimum degree ordering algorithm", SIAM J. Matrix Anal.
 * Appl. 17, 1996; from memory). A pivot that has gone stands for all its neighbours at once.
 */
export function minimumDegree({ size, starts, columns }: Pattern): Order {
  /** Of each variable its neighbours that stand in no pivot's row with it, and the pivots gone in whose rows it stands. */
  const beside: number[][] = [];
  const gone: number[][] = [];
  const degrees = new Degrees(size);
  for (let row = 0; row < size; row++) {
    beside.push([...columns.subarray(starts[row], starts[row + 1])]);
    gone.push([]);
    degrees.put(row, beside[row]?.length ?? 0);
  }
  const rows: (Int32Array | undefined)[] = new Array<Int32Array | undefined>(size).fill(undefined);
  const lengths = new Int32Array(size);
  const isGone = new Uint8Array(size);
  const mark = new Int32Array(size).fill(-1);
  const shared = new Int32Array(size);
  const sharedAt = new Int32Array(size).fill(-1);
  const pivots = new Int32Array(size);
  for (let step = 0; step < size; step++) {
    const pivot = degrees.least();
    degrees.remove(pivot);
    pivots[step] = pivot;
    isGone[pivot] = 1;
    mark[pivot] = step;
    const row: number[] = [];
    const take = (variable: number): void => {
      if (isGone[variable] || mark[variable] === step) return;
      mark[variable] = step;
      row.push(variable);
    };
    for (const variable of beside[pivot] ?? []) take(variable);
    for (const element of gone[pivot] ?? []) {
      for (const variable of rows[element] ?? []) take(variable);
      lengths[element] = 0; // its row is part of this one
    }
    rows[pivot] = Int32Array.from(row);
    lengths[pivot] = row.length;
    beside[pivot] = [];
    gone[pivot] = [];
    // How much of an earlier pivot's row is in none of this one's.
    for (const variable of row)
      for (const element of gone[variable] ?? []) {
        if (lengths[element] === 0) continue;
        if (sharedAt[element] !== step) {
          sharedAt[element] = step;
          shared[element] = lengths[element] ?? 0;
        }
        shared[element] = (shared[element] ?? 0) - 1;
      }
    for (const variable of row) {
      const left = (gone[variable] ?? []).filter(
        (element) => lengths[element] !== 0 && shared[element] !== 0,
      );
      const near = (beside[variable] ?? []).filter((other) => !isGone[other] && mark[other] !== step);
      let degree = row.length - 1 + near.length;
      for (const element of left) degree += shared[element] ?? 0;
      left.push(pivot);
      gone[variable] = left;
      beside[variable] = near;
      degrees.remove(variable);
      degrees.put(variable, Math.min(degree, size - step - 2));
    }
  }
  return { pivots, rows: Array.from(pivots, (pivot) => rows[pivot] ?? new Int32Array(0)) };
}
