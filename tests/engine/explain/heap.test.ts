import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Heap } from '../../../src/engine/explain/heap.ts';

interface Waiting {
  readonly item: number;
  readonly cost: number;
}

/** Costs of what comes; none where the next one is taken. Few costs, so that many are equal. */
const happenings = fc.array(fc.option(fc.integer({ min: -3, max: 3 }), { nil: undefined }), {
  maxLength: 80,
});

describe('what waits for its turn', () => {
  it('comes by its cost, and of equals as it came, whatever comes in between', () => {
    fc.assert(
      fc.property(happenings, (costs) => {
        const heap = new Heap<number>();
        let queue: readonly Waiting[] = [];
        costs.forEach((cost, item) => {
          if (cost !== undefined) {
            heap.push(item, cost);
            queue = [...queue, { item, cost }].sort((a, b) => a.cost - b.cost || a.item - b.item);
            return;
          }
          const [next, ...rest] = queue;
          assert.equal(heap.pop(), next?.item);
          queue = rest;
        });
        for (const { item } of queue) assert.equal(heap.pop(), item);
        assert.equal(heap.pop(), undefined);
      }),
      { numRuns: 500 },
    );
  });

  it('is empty again after it has been, and takes more', () => {
    const heap = new Heap<string>();
    assert.equal(heap.pop(), undefined);
    assert.equal(heap.pop(), undefined);
    heap.push('lamp', 2);
    heap.push('pump', 1);
    assert.deepEqual([heap.pop(), heap.pop(), heap.pop()], ['pump', 'lamp', undefined]);
    heap.push('fog sensor', Infinity);
    assert.equal(heap.pop(), 'fog sensor');
  });
});
