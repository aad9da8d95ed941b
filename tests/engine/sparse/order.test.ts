import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { minimumDegree, type Order } from '../../../src/engine/sparse/order.ts';
import { anyGraph, anyTree, complete, lattice, neighbours, patternFor, ring, type Joined } from './graphs.ts';

const rising = (numbers: Iterable<number>): number[] => [...numbers].sort((a, b) => a - b);
const orderOf = (graph: Joined): Order => minimumDegree(patternFor(graph));

/** What is left joined to each pivot when it goes, by the definition: all that it was joined to are then joined to each other. */
function eliminate(graph: Joined, pivots: Iterable<number>): number[][] {
  const near = neighbours(graph);
  return [...pivots].map((pivot) => {
    const left = near[pivot] ?? new Set();
    for (const one of left) {
      near[one]?.delete(pivot);
      for (const other of left) if (other !== one) near[one]?.add(other);
    }
    return rising(left);
  });
}

/** The same, always with a pivot of the fewest neighbours, which are counted: how many numbers the factor has. */
function leastFill(graph: Joined): number {
  const pivots: number[] = [];
  const left = new Set(neighbours(graph).keys());
  const near = neighbours(graph);
  while (left.size > 0) {
    const [pivot = 0] = [...left].sort((a, b) => (near[a]?.size ?? 0) - (near[b]?.size ?? 0));
    const around = near[pivot] ?? new Set();
    for (const one of around) {
      near[one]?.delete(pivot);
      for (const other of around) if (other !== one) near[one]?.add(other);
    }
    left.delete(pivot);
    pivots.push(pivot);
  }
  return eliminate(graph, pivots).flat().length;
}

describe('the order of elimination', () => {
  it('takes every variable once, and tells what each pivot leaves joined', () => {
    fc.assert(
      fc.property(anyGraph, (graph) => {
        const { pivots, starts, rows } = orderOf(graph);
        assert.deepEqual(rising(pivots), [...neighbours(graph).keys()]);
        const said = [...pivots].map((_, step) => rising(rows.subarray(starts[step], starts[step + 1])));
        assert.deepEqual(said, eliminate(graph, pivots));
      }),
      { numRuns: 500 },
    );
  });

  it('begins with one of the fewest neighbours', () => {
    fc.assert(
      fc.property(anyGraph, (graph) => {
        const degrees = neighbours(graph).map(({ size }) => size);
        assert.equal(degrees[orderOf(graph).pivots[0] ?? 0], Math.min(...degrees));
      }),
    );
  });

  it('fills nothing in where there are no loops (S. Parter, SIAM Review 3, 1961, from memory)', () => {
    fc.assert(
      fc.property(anyTree, (tree) => {
        assert.equal(orderOf(tree).rows.length, tree.edges.length);
      }),
    );
  });

  it('fills a ring of n with n − 3 numbers, as any order does, and what is full with none', () => {
    for (const size of [3, 4, 5, 12, 40]) {
      assert.equal(orderOf(ring(size)).rows.length, 2 * size - 3);
      assert.equal(orderOf(complete(size)).rows.length, (size * (size - 1)) / 2);
    }
  });

  it('makes room where far more is filled in than there was', () => {
    const size = 320;
    const edges = Array.from(
      { length: 4 * size },
      (_, k) => [k % size, (k * k * 37 + 11 * k + (k >> 3)) % size] as const,
    );
    const graph = { size, edges };
    const { pivots, rows } = orderOf(graph);
    const begun = patternFor(graph).columns.length;
    assert.ok(rows.length > 4 * begun + size, `${rows.length} of ${begun}`);
    assert.equal(rows.length, eliminate(graph, pivots).flat().length);
  });

  it('fills lattices hardly more than when all neighbours are counted exactly', (t) => {
    for (const side of [4, 8, 12, 16]) {
      const [filled, least] = [orderOf(lattice(side)).rows.length, leastFill(lattice(side))];
      t.diagnostic(`${side}: ${filled} to ${least}`);
      assert.ok(filled <= 1.05 * least, `${side} × ${side}: ${filled} numbers to ${least}`);
    }
  });
});
