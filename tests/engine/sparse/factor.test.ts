import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  factorise,
  factorPattern,
  substitute,
  type Factor,
  type Values,
} from '../../../src/engine/sparse/factor.ts';
import { minimumDegree } from '../../../src/engine/sparse/order.ts';
import { anyGraph, complete, neighbours, patternFor, ring, wheel, type Joined } from './graphs.ts';

/** The conductances at and between the first `size` nodes, each edge having 1 S, with `more` from each node to 0 V. */
function matrixOf({ edges }: Joined, size: number, more = 0): number[][] {
  const matrix = Array.from({ length: size }, (_, row) =>
    Array.from({ length: size }, (_, column) => (row === column ? more : 0)),
  );
  const add = (row: number, column: number, siemens: number): void => {
    const line = matrix[row];
    if (line && column < size) line[column] = (line[column] ?? 0) + siemens;
  };
  for (const [one, other] of edges) {
    if (one === other) continue;
    add(one, one, 1);
    add(other, other, 1);
    add(one, other, -1);
    add(other, one, -1);
  }
  return matrix;
}

/** Its factor, with the pattern that the graph has. */
function factorOf(graph: Joined, size: number, matrix: readonly (readonly number[])[]): [Factor, Values] {
  const order = minimumDegree(patternFor(graph, size));
  const factor = factorPattern(order);
  const { pivots } = order;
  const at = (row: number, column: number): number => matrix[pivots[row] ?? 0]?.[pivots[column] ?? 0] ?? 0;
  const below = new Float64Array(factor.rows.length);
  for (let column = 0; column < size; column++)
    for (let i = factor.starts[column] ?? 0; i < (factor.starts[column + 1] ?? 0); i++)
      below[i] = at(factor.rows[i] ?? 0, column);
  const values = { diagonal: Float64Array.from(pivots, (_, place) => at(place, place)), below };
  factorise(factor, values);
  return [factor, values];
}

/** How many trees join all nodes of a graph. */
function spanningTrees(graph: Joined): number {
  const size = graph.size - 1;
  const [, { diagonal }] = factorOf(graph, size, matrixOf(graph, size));
  return diagonal.reduce((product, one) => product * one, 1);
}

const near = (a: number, b: number): void => {
  assert.ok(Math.abs(a - b) <= 1e-12 * Math.max(1, Math.abs(b)), `${a} is not ${b}`);
};

describe('the pattern of a matrix', () => {
  it('has both halves of each edge once, and nothing of a node with itself', () => {
    fc.assert(
      fc.property(anyGraph, (graph) => {
        const { size, starts, columns } = patternFor(graph);
        const near = neighbours(graph);
        for (let row = 0; row < size; row++) {
          const found = [...columns.subarray(starts[row], starts[row + 1])];
          assert.equal(found.length, near[row]?.size);
          assert.deepEqual(new Set(found), near[row]);
        }
        assert.equal(starts[size], columns.length);
      }),
    );
  });

  it('leaves out the nodes beyond its size', () => {
    const { starts, columns } = patternFor(wheel(5), 5);
    assert.deepEqual([...starts], [0, 2, 4, 6, 8, 10]);
    assert.ok(!columns.includes(5));
  });
});

describe('the factor of a matrix', () => {
  it('has each place once, and in each column the rows below, rising', () => {
    fc.assert(
      fc.property(anyGraph, (graph) => {
        const order = minimumDegree(patternFor(graph));
        const { size, places, starts, rows } = factorPattern(order);
        order.pivots.forEach((pivot, place) => assert.equal(places[pivot], place));
        for (let column = 0; column < size; column++) {
          const own = [...rows.subarray(starts[column], starts[column + 1])];
          assert.deepEqual(
            own,
            [...own].sort((a, b) => a - b),
          );
          assert.ok(own.every((row) => row > column));
        }
      }),
    );
  });

  it('times its transpose is the matrix again, and it solves by it', () => {
    fc.assert(
      fc.property(anyGraph, fc.infiniteStream(fc.integer({ min: -99, max: 99 })), (graph, numbers) => {
        const { size } = graph;
        const matrix = matrixOf(graph, size, 1);
        const [factor, { diagonal, below }] = factorOf(graph, size, matrix);
        const { places, starts, rows } = factor;
        const lower = Array.from({ length: size }, (_, place) => new Map([[place, 1]]));
        for (let column = 0; column < size; column++)
          for (let i = starts[column] ?? 0; i < (starts[column + 1] ?? 0); i++)
            lower[rows[i] ?? 0]?.set(column, below[i] ?? 0);
        const truth = [...numbers.take(size)];
        const y = new Float64Array(size);
        matrix.forEach((line, one) => {
          const [row, place] = [lower[places[one] ?? 0], places[one] ?? 0];
          line.forEach((number, other) => {
            const column = lower[places[other] ?? 0];
            let product = 0;
            for (const [k, l] of row ?? []) product += l * (diagonal[k] ?? 0) * (column?.get(k) ?? 0);
            near(product, number);
            y[place] = (y[place] ?? 0) + number * (truth[other] ?? 0);
          });
        });
        substitute(factor, { diagonal, below }, y);
        truth.forEach((value, one) => near(y[places[one] ?? 0] ?? NaN, value));
      }),
    );
  });

  it('counts the spanning trees of a graph (G. Kirchhoff, 1847): n of a ring', () => {
    for (const size of [3, 4, 7, 30]) near(spanningTrees(ring(size)), size);
  });

  it('nⁿ⁻² where every node is joined to every other (A. Cayley, 1889)', () => {
    for (const size of [2, 3, 4, 5, 8, 10]) near(spanningTrees(complete(size)), size ** (size - 2));
  });

  it('16, 45, 121, 320, 841 of wheels: L₂ₙ − 2, with L the Lucas numbers (J. Sedláček, 1970, from memory)', () => {
    [16, 45, 121, 320, 841].forEach((trees, at) => near(spanningTrees(wheel(at + 3)), trees));
  });

  it('none of what does not hang together', () => {
    near(
      spanningTrees({
        size: 4,
        edges: [
          [0, 1],
          [2, 3],
          [2, 3],
        ],
      }),
      0,
    );
  });
});
