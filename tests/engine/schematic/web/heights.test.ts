import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { embed } from '../../../../src/engine/schematic/web/embed.ts';
import { heights } from '../../../../src/engine/schematic/web/heights.ts';
import { complete, edgesOf, twoConnected } from './graphs.ts';

const at = (ends: readonly (readonly [number, number])[], count: number): readonly number[] =>
  heights(embed(edgesOf(ends), count));

test('the first edge begins at the top and ends at the bottom, all others stand between', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges }) => {
      const found = heights(embed(edges, count));
      assert.equal(found[edges[0]?.from ?? -1], 1);
      assert.equal(found[edges[0]?.to ?? -1], 0);
      for (const [vertex, height] of found.entries()) {
        if (vertex !== edges[0]?.from && vertex !== edges[0]?.to) assert.ok(height > 0 && height < 1);
      }
    }),
  );
});

test('equal parts one after another are as good as equally high', () => {
  const ring = [0, 1, 2, 3, 4].map((i) => [i, (i + 1) % 5] as const);
  const found = at(ring, 5);
  // From 0 round to 1 over 4, 3 and 2.
  [0, 4, 3, 2, 1].forEach((vertex, i) => {
    assert.ok(Math.abs((found[vertex] ?? NaN) - (1 - i / 4)) < 0.02);
  });
});

test('the middles of a bridge are as good as level, but not quite', () => {
  const [, , one = NaN, other = NaN] = at(
    [
      [0, 1],
      [0, 2],
      [2, 1],
      [0, 3],
      [3, 1],
      [2, 3],
    ],
    4,
  );
  assert.ok(Math.abs(one - 0.5) < 0.02 && Math.abs(other - 0.5) < 0.02);
  assert.notEqual(one, other);
});

test('no two neighbours are at one height, in as many as nine vertices all joined', () => {
  for (const count of [4, 5, 6, 7, 8, 9]) {
    const embedding = embed(edgesOf(complete(count)), count);
    const found = heights(embedding);
    for (const { from, to } of embedding.edges) assert.notEqual(found[from], found[to]);
  }
});
