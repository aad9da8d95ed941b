import { dartsFrom, edgeOf, head, tail } from './graph.ts';
import type { Embedding } from './embed.ts';

/** Edges differ a little, so that no two vertices are at one height by chance of their places alone. */
const conductance = (edge: number): number => 1 + (((edge * 37) % 101) / 101) * 0.02;

/** Solves a symmetric, positive definite system of linear equations by elimination. */
function eliminate(rows: number[][], right: number[]): number[] {
  const count = right.length;
  for (let pivot = 0; pivot < count; pivot++) {
    const top = rows[pivot] ?? [];
    for (let below = pivot + 1; below < count; below++) {
      const row = rows[below] ?? [];
      const factor = (row[pivot] ?? 0) / (top[pivot] ?? 1);
      if (factor === 0) continue;
      for (let k = pivot; k < count; k++) row[k] = (row[k] ?? 0) - factor * (top[k] ?? 0);
      right[below] = (right[below] ?? 0) - factor * (right[pivot] ?? 0);
    }
  }
  for (let pivot = count - 1; pivot >= 0; pivot--) {
    const row = rows[pivot] ?? [];
    let sum = right[pivot] ?? 0;
    for (let k = pivot + 1; k < count; k++) sum -= (row[k] ?? 0) * (right[k] ?? 0);
    right[pivot] = sum / (row[pivot] ?? 1);
  }
  return right;
}

/**
 * How high each vertex stands, from 1 at the beginning of the first edge to 0 at its end: the potentials if all other edges conducted
 * alike. So a drawing is as symmetrical as its circuit, and no value moves anything.
 */
function potentials({ edges }: Embedding, count: number): number[] {
  const [s, t] = [tail(edges, 0), head(edges, 0)];
  const rows = Array.from({ length: count }, () => new Array<number>(count).fill(0));
  const right = new Array<number>(count).fill(0);
  for (const [vertex, darts] of dartsFrom(edges)) {
    const row = rows[vertex];
    if (!row) continue;
    if (vertex === s || vertex === t) {
      row[vertex] = 1;
      right[vertex] = vertex === s ? 1 : 0;
      continue;
    }
    for (const dart of darts) {
      const by = conductance(edgeOf(dart)) * (edges[edgeOf(dart)]?.part === -1 ? 0.1 : 1);
      row[vertex] = (row[vertex] ?? 0) + by;
      const other = head(edges, dart);
      if (other === s) right[vertex] = (right[vertex] ?? 0) + by;
      else if (other !== t) row[other] = (row[other] ?? 0) - by;
    }
  }
  return eliminate(rows, right);
}

/** The heights of the vertices, every one but the two ends of the first edge between neighbours above it and below it. */
export function heights(embedding: Embedding): readonly number[] {
  const { edges, order } = embedding;
  const found = potentials(embedding, order.length);
  const at = (vertex: number): number => found[vertex] ?? NaN;
  const between = [...dartsFrom(edges)].every(([vertex, darts]) => {
    const others = darts.map((dart) => at(head(edges, dart)));
    const ends = vertex === tail(edges, 0) || vertex === head(edges, 0);
    return (
      others.every((each) => each !== at(vertex)) &&
      (ends || (others.some((each) => each > at(vertex)) && others.some((each) => each < at(vertex))))
    );
  });
  if (between) return found;
  const byOrder = new Array<number>(order.length).fill(0);
  order.forEach((vertex, place) => (byOrder[vertex] = 1 - place / (order.length - 1)));
  return byOrder;
}
