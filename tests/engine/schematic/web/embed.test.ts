// Laying a graph in the plane: faces, Euler's formula, and as few crossings as may be.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { embed } from '../../../../src/engine/schematic/web/embed.ts';
import { back, head, tail } from '../../../../src/engine/schematic/web/graph.ts';
import { heights } from '../../../../src/engine/schematic/web/heights.ts';
import { spaced } from '../../../../src/engine/schematic/web/spacing.ts';
import { edgesOf, twoConnected } from './graphs.ts';

test('every dart has one face on its left, each face is a closed walk that meets no vertex twice, and Euler\u2019s formula holds', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges: given }) => {
      const { edges, faces, order } = embed(given, count);
      const darts = faces.flat();
      assert.equal(new Set(darts).size, darts.length);
      assert.equal(darts.length, 2 * edges.length);
      for (const face of faces) {
        face.forEach((dart, i) => assert.equal(tail(edges, dart), head(edges, face.at(i - 1) ?? -1)));
        assert.equal(new Set(face.map((dart) => tail(edges, dart))).size, face.length);
      }
      // L. Euler, Novi Commentarii 4 (1758) 109 (from memory): vertices − edges + faces = 2.
      assert.equal(order.length - edges.length + faces.length, 2);
    }),
  );
});

test('the edges of a part that crosses others follow each other from its beginning to its end', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges: given }) => {
      const { edges, crossings } = embed(given, count);
      assert.equal(crossings, count);
      given.forEach(({ from, to }, part) => {
        const own = edges.filter((edge) => edge.part === part);
        let at = from;
        own.forEach(() => (at = own.find((edge) => edge.from === at)?.to ?? -1));
        assert.equal(at, to);
      });
    }),
  );
});

test('at a crossing four edges meet, two of each of two parts, by turns', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges: given }) => {
      const { edges, faces, order, crossings } = embed(given, count);
      for (const vertex of order.filter((each) => each >= crossings)) {
        const around = edges.filter(({ from, to }) => from === vertex || to === vertex);
        assert.equal(around.length, 4);
        assert.equal(new Set(around.map(({ part }) => part)).size, 2);
        for (const face of faces) {
          face.forEach((dart, i) => {
            if (tail(edges, dart) !== vertex) return;
            const before = face.at(i - 1) ?? -1;
            assert.notEqual(edges[dart >> 1]?.part, edges[before >> 1]?.part);
          });
        }
      }
    }),
  );
});

test('each vertex between the ends of the first edge has a neighbour above it and one below it', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges: given }) => {
      const embedding = embed(given, count);
      const { edges, order } = embedding;
      const at = heights(embedding);
      const [s, t] = [edges[0]?.from, edges[0]?.to];
      for (const vertex of order) {
        const others = edges.flatMap(({ from, to }) =>
          from === vertex ? [to] : to === vertex ? [from] : [],
        );
        const differences = others.map((each) => (at[each] ?? NaN) - (at[vertex] ?? NaN));
        if (vertex !== s) assert.ok(differences.some((each) => each > 0));
        if (vertex !== t) assert.ok(differences.some((each) => each < 0));
      }
    }),
  );
});

test('the order in which the vertices were placed is one of that kind as well', () => {
  fc.assert(
    fc.property(twoConnected, ({ count, edges: given }) => {
      const { edges, order } = embed(given, count);
      assert.deepEqual([order[0], order.at(-1)], [edges[0]?.from, edges[0]?.to]);
      order.slice(1, -1).forEach((vertex, i) => {
        const places = edges
          .flatMap(({ from, to }) => (from === vertex ? [to] : to === vertex ? [from] : []))
          .map((each) => order.indexOf(each));
        assert.ok(Math.min(...places) < i + 1 && Math.max(...places) > i + 1);
      });
    }),
  );
});

test('a dart turned round twice is itself, and its ends change places', () => {
  const edges = edgesOf([
    [0, 1],
    [1, 2],
  ]);
  for (const dart of [0, 1, 2, 3]) {
    assert.equal(back(back(dart)), dart);
    assert.equal(tail(edges, back(dart)), head(edges, dart));
  }
});

test('places keep their distances, on a grid, in the middle of their room; what contradicts itself has none', () => {
  assert.deepEqual(
    spaced(4, [
      [0, 1, 20],
      [1, 3, 20],
      [0, 2, 9],
      [2, 3, 9],
    ]),
    [0, 20, 20, 40],
  );
  assert.equal(
    spaced(2, [
      [0, 1, 4],
      [1, 0, 4],
    ]),
    undefined,
  );
  const distance = fc.tuple(fc.nat(7), fc.nat(7), fc.nat(60)).filter(([from, to]) => from < to);
  fc.assert(
    fc.property(fc.array(distance, { maxLength: 20 }), (distances) => {
      const places = spaced(8, distances);
      assert.ok(places);
      assert.ok(places.every((place) => place % 2 === 0 && place >= 0));
      for (const [from, to, least] of distances) assert.ok((places[to] ?? 0) - (places[from] ?? 0) >= least);
    }),
  );
});
