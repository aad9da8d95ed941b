// A piece of a circuit as a graph in the plane: what becomes a strand, and which way each one runs.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../../src/engine/notation/index.ts';
import { head, tail, type Edge } from '../../../../src/engine/schematic/web/graph.ts';
import { upright, type Upright } from '../../../../src/engine/schematic/web/upright.ts';
import type { Web } from '../../../../src/engine/schematic/web/web.ts';
import { leaves } from '../../../../src/engine/topology/index.ts';
import { randomWeb } from '../random-web.ts';
import { bridge, websOf } from './webs.ts';

const idsOf = ({ strands }: Web): string[] =>
  strands.map(({ tree }) =>
    leaves(tree)
      .map(({ id }) => id)
      .join(' '),
  );

test('the strands of a bridge are its supply and its arms, and four vertices hold them', () => {
  const [web, ...others] = websOf(bridge);
  assert.ok(web && others.length === 0);
  assert.deepEqual(idsOf(web), ['B1', 'R1', 'R3', 'R2', 'R4', 'R5'].sort());
  assert.deepEqual([web.heights.length, web.embedding.edges.length, web.embedding.faces.length], [4, 6, 4]);
});

test('a network without a supply is closed by the way outside from terminal to terminal', () => {
  const [web] = websOf(parseCircuit('(R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω); R5 5 Ω @p–@q'));
  assert.equal(web?.strands[0]?.kind, 'outside');
  assert.ok(web.strands.slice(1).every(({ kind }) => kind === 'part'));
});

test('what leads back to where it began is a part and a wire that returns, of one node', () => {
  const [web] = websOf(parseCircuit('B1 6 V @a–@b; R1 5 Ω @a–@b; W1 @a–@a; R2 5 Ω @b–@c'));
  assert.ok(web);
  const [returned, ...others] = web.strands.filter(({ kind }) => kind === 'return');
  assert.ok(returned && others.length === 0);
  assert.equal(returned.tree.from, returned.tree.to);
});

test('every strand runs down but the first one, which runs up from the lowest to the highest vertex', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      for (const { strands, embedding, heights } of websOf(circuit)) {
        const at = (vertex: number): number => heights[vertex] ?? NaN;
        const [first] = embedding.edges;
        assert.ok(first && at(first.from) === 0 && at(first.to) === 1);
        strands.forEach(({ kind, tree }, strand) => {
          if (strand === 0 || kind !== 'part' || tree.from === tree.to) return;
          const own = embedding.edges.filter(({ part }) => part === strand);
          const begin = own.find((edge: Edge) => own.every(({ to }) => to !== edge.from));
          const end = own.find((edge: Edge) => own.every(({ from }) => from !== edge.to));
          assert.ok(begin && end && at(begin.from) > at(end.to));
        });
      }
    }),
  );
});

test('strands of a web hold every component of it once', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      const drawn = websOf(circuit).flatMap(({ strands }) =>
        strands.filter(({ kind }) => kind === 'part').flatMap(({ tree }) => leaves(tree).map(({ id }) => id)),
      );
      assert.equal(new Set(drawn).size, drawn.length);
      const ids = circuit.components.map(({ id }) => id);
      assert.ok(drawn.every((id) => ids.includes(id)));
    }),
  );
});

/** Everything upright that a web can be, of random webs. */
const standing = randomWeb.map((circuit) =>
  websOf(circuit).flatMap((web) => [false, true].map((mirrored) => ({ web, graph: upright(web, mirrored) }))),
);

const around = ({ above, below }: Upright, vertex: number): number[] => [
  ...(above[vertex] ?? []),
  ...(below[vertex] ?? []),
];

test('upright, what meets a vertex comes down to it or goes down from it, each edge once at each end', () => {
  fc.assert(
    fc.property(standing, (found) => {
      for (const { graph } of found) {
        const { edges, heights, above, below, top, bottom } = graph;
        heights.forEach((_, vertex) => {
          const own = edges.flatMap(({ from, to }, edge) => (from === vertex || to === vertex ? [edge] : []));
          assert.deepEqual(
            around(graph, vertex).sort((a, b) => a - b),
            own,
          );
          for (const edge of above[vertex] ?? []) assert.equal(bottom[edge], vertex);
          for (const edge of below[vertex] ?? []) assert.equal(top[edge], vertex);
        });
        edges.forEach((_, edge) =>
          assert.ok((heights[top[edge] ?? -1] ?? 0) > (heights[bottom[edge] ?? -1] ?? 0)),
        );
      }
    }),
  );
});

test('neighbours of what leaves a vertex downwards, and of what comes down to it, have the face between them in common', () => {
  fc.assert(
    fc.property(standing, (found) => {
      for (const { graph } of found) {
        const { above, below, left, right, edges } = graph;
        for (const row of [...above, ...below]) {
          row.slice(1).forEach((edge, i) => assert.equal(right[row[i] ?? -1], left[edge]));
        }
        edges.forEach((_, edge) => assert.notEqual(left[edge], right[edge]));
      }
    }),
  );
});

test('the first edge is the leftmost, with the face outside on its left', () => {
  fc.assert(
    fc.property(standing, (found) => {
      for (const { graph } of found) {
        const { top, bottom, below, above, left } = graph;
        assert.equal(below[top[0] ?? -1]?.[0], 0);
        assert.equal(above[bottom[0] ?? -1]?.[0], 0);
        assert.equal(left[0], 0);
      }
    }),
  );
});

test('a mirror image has the same edges and heights, and what stood from left to right stands from right to left', () => {
  const [web] = websOf(bridge);
  assert.ok(web);
  const [plain, mirrored] = [upright(web, false), upright(web, true)];
  assert.deepEqual(mirrored.edges, plain.edges);
  assert.deepEqual(mirrored.heights, plain.heights);
  const highest = plain.top[0] ?? -1;
  const [cut, ...others] = plain.below[highest] ?? [];
  assert.deepEqual(mirrored.below[highest], [cut, ...others.reverse()]);
});

test('each face lies between one highest and one lowest vertex', () => {
  fc.assert(
    fc.property(standing, (found) => {
      for (const { web, graph } of found) {
        const { edges } = graph;
        const at = (vertex: number): number => graph.heights[vertex] ?? NaN;
        for (const face of web.embedding.faces) {
          const falls = face.map((dart) => at(tail(edges, dart)) > at(head(edges, dart)));
          const turns = falls.filter((down, i) => down !== falls.at(i - 1)).length;
          assert.equal(turns, 2);
        }
        // What is outside is 0 at the left, where only the first edge is, and −1 at the right.
        graph.left.forEach((face, edge) => {
          assert.notEqual(face, graph.right[edge]);
          assert.equal(face === 0, edge === 0);
        });
      }
    }),
  );
});
