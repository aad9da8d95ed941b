import type { Pattern } from './pattern.ts';

/** An order of elimination, and what it fills in. */
export interface Order {
  /** The variables, the one eliminated first in front. */
  readonly pivots: Int32Array;
  /** Pivot k's row of the factor holds the variables from `starts[k]` up to `starts[k + 1]`: eliminated later, not sorted. */
  readonly starts: Int32Array;
  readonly rows: Int32Array;
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
  /**
   * Of each variable, in place of the neighbours it began with: first the steps of the pivots gone in whose rows it stands, `gone` of them,
   * then up to `ends` its neighbours that stand in no such row with it. It never becomes longer: a pivot comes for a neighbour or a pivot.
   */
  const lists = columns.slice();
  const gone = new Int32Array(size);
  const ends = starts.slice(1);
  const degrees = new Degrees(size);
  for (let variable = 0; variable < size; variable++)
    degrees.put(variable, (ends[variable] ?? 0) - (starts[variable] ?? 0));
  const pivots = new Int32Array(size);
  const rowStarts = new Int32Array(size + 1);
  let rows = new Int32Array(4 * columns.length + size);
  let filled = 0;
  /** Of each step how many variables its row held, 0 once that is part of a later one; and how many of them the present row has not. */
  const lengths = new Int32Array(size);
  const apart = new Int32Array(size);
  const apartAt = new Int32Array(size).fill(-1);
  /** When a variable was last taken into a row; `size` once it is gone. */
  const taken = new Int32Array(size).fill(-1);
  for (let step = 0; step < size; step++) {
    const pivot = degrees.least();
    degrees.remove(pivot);
    pivots[step] = pivot;
    taken[pivot] = size;
    const begin = filled;
    if (rows.length < begin + size - step) {
      const more = new Int32Array(2 * rows.length + size);
      more.set(rows);
      rows = more;
    }
    const start = starts[pivot] ?? 0;
    const near = start + (gone[pivot] ?? 0);
    for (let at = near; at < (ends[pivot] ?? 0); at++) {
      const variable = lists[at] ?? 0;
      taken[variable] = step;
      rows[filled++] = variable;
    }
    for (let at = start; at < near; at++) {
      const earlier = lists[at] ?? 0;
      const end = rowStarts[earlier + 1] ?? 0;
      for (let from = rowStarts[earlier] ?? 0; from < end; from++) {
        const variable = rows[from] ?? 0;
        if ((taken[variable] ?? 0) >= step) continue;
        taken[variable] = step;
        rows[filled++] = variable;
      }
      lengths[earlier] = 0;
    }
    rowStarts[step + 1] = filled;
    lengths[step] = filled - begin;
    for (let own = begin; own < filled; own++) {
      const variable = rows[own] ?? 0;
      const first = starts[variable] ?? 0;
      for (let at = first; at < first + (gone[variable] ?? 0); at++) {
        const earlier = lists[at] ?? 0;
        if (apartAt[earlier] !== step) {
          apartAt[earlier] = step;
          apart[earlier] = lengths[earlier] ?? 0;
        }
        apart[earlier] = (apart[earlier] ?? 0) - 1;
      }
    }
    for (let own = begin; own < filled; own++) {
      const variable = rows[own] ?? 0;
      const first = starts[variable] ?? 0;
      const middle = first + (gone[variable] ?? 0);
      let degree = filled - begin - 1;
      let put = first;
      for (let at = first; at < middle; at++) {
        const earlier = lists[at] ?? 0;
        if (lengths[earlier] === 0 || apart[earlier] === 0) continue;
        degree += apart[earlier] ?? 0;
        lists[put++] = earlier;
      }
      // Where no pivot left the list, this one takes the place of the first neighbour, which waits; one of them is the pivot.
      const waiting = put === middle ? middle : -1;
      const waits = lists[put] ?? 0;
      lists[put++] = step;
      gone[variable] = put - first;
      const end = ends[variable] ?? 0;
      const last = waiting < 0 ? end : end + 1;
      for (let at = waiting < 0 ? middle : middle + 1; at < last; at++) {
        const other = at === end ? waits : (lists[at] ?? 0);
        if ((taken[other] ?? 0) >= step) continue;
        lists[put++] = other;
        degree += 1;
      }
      ends[variable] = put;
      degrees.remove(variable);
      degrees.put(variable, Math.min(degree, size - step - 2));
    }
  }
  return { pivots, starts: rowStarts, rows: rows.subarray(0, filled) };
}
