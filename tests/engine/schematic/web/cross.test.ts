import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { crossed } from '../../../../src/engine/schematic/web/cross.ts';
import { embed } from '../../../../src/engine/schematic/web/embed.ts';
import { back, edgeOf, tail, type Dart } from '../../../../src/engine/schematic/web/graph.ts';
import { edgesOf, twoConnected } from './graphs.ts';

test('nothing is crossed between two vertices of one face, one edge between opposite corners of two triangles', () => {
  const edges = edgesOf([
    [0, 1],
    [1, 2],
    [2, 0],
    [1, 3],
    [3, 2],
  ]);
  const { faces } = embed(edges, 4);
  assert.deepEqual(crossed(edges, faces, 0, 1), []);
  const outside = faces.find((face) => face.length === 4);
  assert.ok(outside?.some((dart) => tail(edges, dart) === 0));
  assert.deepEqual(crossed(edges, faces, 0, 3), [], 'they share the face outside');
  const within = faces.filter((face) => face !== outside);
  assert.deepEqual(crossed(edges, within, 0, 3).map(edgeOf), [1]);
});

test('a way that crosses leaves each face by an edge of it, enters the next by the same, and never crosses the first one', () => {
  fc.assert(
    fc.property(twoConnected, fc.nat(8), fc.nat(8), ({ count, edges: given }, a, b) => {
      const { edges, faces } = embed(given, count);
      const [from, to] = [a % count, b % count];
      const over = crossed(edges, faces, from, to);
      const faceOf = (dart: Dart): readonly Dart[] => faces.find((face) => face.includes(dart)) ?? [];
      const around = (face: readonly Dart[], vertex: number): boolean =>
        face.some((dart) => tail(edges, dart) === vertex);
      const [first] = over;
      if (first === undefined) {
        const whole = [...faces].some((face) => around(face, from) && around(face, to));
        assert.ok(whole);
        return;
      }
      assert.ok(around(faceOf(first), from) && around(faceOf(back(over.at(-1) ?? -1)), to));
      over.slice(1).forEach((dart, i) => assert.equal(faceOf(dart), faceOf(back(over[i] ?? -1))));
      assert.ok(!over.map(edgeOf).includes(0));
    }),
  );
});

test('what is not drawn is crossed rather than what is, however often', () => {
  // Five ways from 0 to 1 beside each other, 2 on the first and 3 on the fourth of them.
  const edges = edgesOf([
    [0, 2],
    [2, 1],
    [0, 1],
    [0, 1],
    [0, 3],
    [3, 1],
    [0, 1],
  ]);
  const faces = [
    [0, 2, 5],
    [4, 7],
    [6, 11, 9],
    [8, 10, 13],
    [12, 3, 1],
  ];
  const way = (...hidden: number[]): number[] => {
    const seen = edges.map((edge, i) => (hidden.includes(i) ? { ...edge, part: -1 } : edge));
    return crossed(seen, faces, 2, 3).map(edgeOf);
  };
  assert.deepEqual(way(), [6]);
  assert.deepEqual(way(2), [6]);
  assert.deepEqual(way(2, 3), [2, 3]);
  assert.deepEqual(way(6), [6]);
});
