import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { fragmentsOf, wayThrough } from '../../../../src/engine/schematic/web/fragments.ts';
import { dartsFrom, edgeOf, head, tail } from '../../../../src/engine/schematic/web/graph.ts';
import { edgesOf, square, twoConnected } from './graphs.ts';

test('the darts from a vertex are those of its edges, each run away from it', () => {
  assert.deepEqual(dartsFrom(square).get(0), [0, 7, 8]);
  assert.deepEqual(dartsFrom(square).get(2), [3, 4, 9]);
  fc.assert(
    fc.property(twoConnected, ({ edges }) => {
      const from = dartsFrom(edges);
      assert.equal([...from.values()].flat().length, 2 * edges.length);
      for (const [vertex, darts] of from) {
        for (const dart of darts) {
          assert.equal(tail(edges, dart), vertex);
          assert.ok([edges[edgeOf(dart)]?.from, edges[edgeOf(dart)]?.to].includes(head(edges, dart)));
        }
      }
    }),
  );
});

test('an edge between two placed vertices is a fragment of its own', () => {
  const placed = new Set([0, 1, 2, 3]);
  const fragments = fragmentsOf(square, (edge) => placed.has(edge), new Set([0, 1, 2, 3]));
  assert.deepEqual(fragments, [{ contacts: [0, 2], entries: [8, 9] }]);
});

test('what hangs together beyond placed vertices is one fragment, entered by each edge that leads there', () => {
  // A star with its middle at 4, of which three ends are placed, and another edge beside it.
  const edges = edgesOf([
    [0, 1],
    [1, 2],
    [2, 0],
    [0, 4],
    [4, 1],
    [4, 2],
    [1, 0],
  ]);
  const fragments = fragmentsOf(edges, (edge) => edge < 3, new Set([0, 1, 2]));
  assert.deepEqual(fragments, [
    { contacts: [0, 1, 2], entries: [6, 9, 11] },
    { contacts: [0, 1], entries: [12, 13] },
  ]);
});

test('every edge that is not placed is reached from exactly one fragment', () => {
  fc.assert(
    fc.property(twoConnected, fc.nat(9), ({ count, edges }, by) => {
      const vertices = new Set([0, 1, by % count]);
      const fragments = fragmentsOf(edges, (edge) => edge === 0, vertices);
      const seen: number[] = [];
      for (const { contacts, entries } of fragments) {
        assert.ok(contacts.length >= 2, 'no vertex holds it alone');
        assert.deepEqual([...new Set(entries.map((dart) => tail(edges, dart)))].sort(), [...contacts].sort());
        const reached = new Set(entries.map(edgeOf));
        for (const edge of reached) {
          for (const end of [edges[edge]?.from ?? -1, edges[edge]?.to ?? -1]) {
            if (vertices.has(end)) continue;
            for (const dart of dartsFrom(edges).get(end) ?? []) reached.add(edgeOf(dart));
          }
        }
        seen.push(...reached);
      }
      assert.deepEqual(
        seen.sort((a, b) => a - b),
        edges.map((_, edge) => edge).slice(1),
      );
    }),
  );
});

test('a way through a fragment is the shortest, and passes no placed vertex', () => {
  const edges = edgesOf([
    [0, 1],
    [0, 2],
    [2, 3],
    [3, 1],
    [2, 4],
    [4, 5],
    [5, 1],
  ]);
  assert.deepEqual(wayThrough(edges, [2], new Set([1]), new Set([0, 1])), [2, 4, 6]);
  assert.deepEqual(wayThrough(edges, [2], new Set([1]), new Set([0, 1, 3])), [2, 8, 10, 12]);
  assert.deepEqual(wayThrough(edges, [2], new Set([1]), new Set([0, 1, 2])), [], 'there is none');
  fc.assert(
    fc.property(twoConnected, ({ edges: all }) => {
      const [first, ...darts] = dartsFrom(all).get(1) ?? [];
      assert.ok(first !== undefined);
      const way = wayThrough(all, darts, new Set([0]), new Set([0, 1]));
      assert.equal(tail(all, way[0] ?? -1), 1);
      assert.equal(head(all, way.at(-1) ?? -1), 0);
      way.slice(1).forEach((dart, i) => assert.equal(tail(all, dart), head(all, way[i] ?? -1)));
      const inner = way.slice(1).map((dart) => tail(all, dart));
      assert.equal(new Set(inner).size, inner.length);
      assert.ok(!inner.includes(0) && !inner.includes(1));
    }),
  );
});
