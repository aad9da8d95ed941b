// Webs with places: rails, columns between them, and bars on the line of two.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../../src/engine/notation/index.ts';
import { Rows } from '../../../../src/engine/schematic/web/bars.ts';
import { inLine } from '../../../../src/engine/schematic/web/columns.ts';
import type { Layout } from '../../../../src/engine/schematic/web/layout.ts';
import { roomOf } from '../../../../src/engine/schematic/web/stretch.ts';
import { leaves } from '../../../../src/engine/topology/index.ts';
import { randomWeb } from '../random-web.ts';
import { bridge, choices, ladder, laidOut, websOf } from './webs.ts';

const layoutsOf = (circuit: Circuit): Layout[] =>
  websOf(circuit).flatMap((web) =>
    choices.flatMap((choice) =>
      [false, true].flatMap((upright) => laidOut(circuit, web, choice, upright) ?? []),
    ),
  );

const idOf = ({ graph, web }: Layout, edge: number): string => {
  const strand = web.strands[graph.edges[edge]?.part ?? -1];
  return strand
    ? leaves(strand.tree)
        .map(({ id }) => id)
        .join(' ')
    : '';
};

const barIds = (circuit: Circuit, steepest: number): string[] => {
  const [web] = websOf(circuit);
  assert.ok(web);
  const layout = laidOut(circuit, web, { mirrored: false, steepest });
  assert.ok(layout);
  return layout.bars.map(({ edge }) => idOf(layout, edge)).sort();
};

const rails = fc.property(randomWeb, (circuit) => {
  for (const { graph, rows, columns, bars, stretches, length, breadth } of layoutsOf(circuit)) {
    const level = new Set(bars.map(({ edge }) => edge));
    graph.edges.forEach((_, edge) => {
      const [from, to] = [rows[graph.top[edge] ?? -1] ?? NaN, rows[graph.bottom[edge] ?? -1] ?? NaN];
      if (level.has(edge)) assert.equal(from, to);
      else assert.ok(to - from >= roomOf(stretches[edge]).length);
    });
    assert.ok(rows.every((row) => row >= 0 && row <= length && row % 2 === 0));
    assert.ok(columns.every((column) => column >= 0 && column <= breadth && column % 2 === 0));
  }
});

test('every column is as long as what stands in it, and every bar joins two vertices on one line', () => {
  fc.assert(rails, { numRuns: 60 });
});

test('columns that share a height are as far from each other as the room of both', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      for (const { graph, rows, columns, bars, stretches } of layoutsOf(circuit)) {
        const level = new Set(bars.map(({ edge }) => edge));
        const standing = graph.edges.map((_, edge) => edge).filter((edge) => !level.has(edge));
        const span = (edge: number): [number, number] => [
          rows[graph.top[edge] ?? -1] ?? NaN,
          rows[graph.bottom[edge] ?? -1] ?? NaN,
        ];
        for (const a of standing) {
          for (const b of standing) {
            const [[from, to], [start, end]] = [span(a), span(b)];
            if (a >= b || from >= end || start >= to) continue;
            const [near, far] = (columns[a] ?? 0) < (columns[b] ?? 0) ? [a, b] : [b, a];
            const apart = (columns[far] ?? NaN) - (columns[near] ?? NaN);
            assert.ok(apart >= roomOf(stretches[near]).after + roomOf(stretches[far]).before - 2, `${apart}`);
          }
        }
      }
    }),
    { numRuns: 60 },
  );
});

test('what lies in the middle of a bridge is a bar, and both joins of a ladder are, where bars may be', () => {
  assert.deepEqual(barIds(bridge, -1), []);
  assert.deepEqual(barIds(bridge, 0.02), ['R5']);
  assert.deepEqual(barIds(ladder, 0.02), ['R7', 'R8']);
});

test('no bar is the first edge, a part that crosses, or at either end of the web', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      for (const { graph, bars } of layoutsOf(circuit)) {
        for (const { edge, left, right } of bars) {
          assert.notEqual(edge, 0);
          assert.deepEqual([left, right].sort(), [graph.top[edge], graph.bottom[edge]].sort());
          for (const vertex of [left, right]) {
            assert.ok(vertex < graph.crossings);
            const height = graph.heights[vertex] ?? NaN;
            assert.ok(vertex === graph.top[edge] ? height < 1 : height > 0);
          }
        }
        const sides = bars.flatMap(({ left, right }) => [`${left} right`, `${right} left`]);
        assert.equal(new Set(sides).size, sides.length, 'one bar at each side of a vertex');
      }
    }),
    { numRuns: 60 },
  );
});

test('columns in line stand at one place, at a crossing those of one part', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      for (const { graph, columns, bars } of layoutsOf(circuit)) {
        const level = new Set(bars.map(({ edge }) => edge));
        graph.heights.forEach((_, vertex) => {
          const pair = inLine(graph, vertex, (edge) => !level.has(edge));
          if (pair.length < 2) return;
          assert.equal(new Set(pair.map((edge) => columns[edge])).size, 1);
          if (vertex < graph.crossings) return;
          assert.equal(new Set(pair.map((edge) => graph.edges[edge]?.part)).size, 1);
        });
      }
    }),
    { numRuns: 60 },
  );
});

test('every part has its symbols in one stretch, where it falls most, and wires in all others', () => {
  fc.assert(
    fc.property(randomWeb, (circuit) => {
      for (const { graph, stretches, web } of layoutsOf(circuit)) {
        const drop = (edge: number): number =>
          (graph.heights[graph.top[edge] ?? -1] ?? 0) - (graph.heights[graph.bottom[edge] ?? -1] ?? 0);
        web.strands.forEach(({ kind, tree }, strand) => {
          const own = graph.edges.flatMap(({ part }, edge) => (part === strand ? [edge] : []));
          const drawn = own.flatMap((edge) => stretches[edge] ?? []);
          if (kind === 'outside') {
            assert.equal(drawn.length, 0);
            return;
          }
          assert.equal(drawn.length, own.length);
          const [place, ...others] = own.filter((edge) => stretches[edge]?.block);
          assert.equal(others.length, 0);
          assert.equal(place !== undefined, kind === 'part');
          if (place === undefined) return;
          assert.ok(own.every((edge) => drop(edge) <= drop(place)));
          assert.deepEqual([stretches[place]?.from, stretches[place]?.to], [tree.from, tree.to]);
        });
      }
    }),
    { numRuns: 60 },
  );
});

test('what only holds a web together is not drawn', () => {
  const circuit = parseCircuit('B1 6 V @a–@b; R1 5 Ω @a–@b; R2 5 Ω @b–@c; R3 5 Ω @a–@d');
  const layouts = layoutsOf(circuit);
  assert.ok(layouts.length > 0);
  for (const { graph, stretches } of layouts) {
    const ties = graph.edges.flatMap(({ part }, edge) => (part === -1 ? [edge] : []));
    assert.ok(ties.length > 0);
    for (const tie of ties) assert.equal(stretches[tie], undefined);
  }
});

test('rows that are joined are one, whichever of their vertices were named', () => {
  const rows = new Rows(5);
  assert.deepEqual(
    [0, 1, 2, 3, 4].map((vertex) => rows.of(vertex)),
    [0, 1, 2, 3, 4],
  );
  rows.join(0, 1);
  rows.join(2, 3);
  rows.join(1, 3);
  assert.equal(new Set([0, 1, 2, 3].map((vertex) => rows.of(vertex))).size, 1);
  assert.notEqual(rows.of(4), rows.of(0));
});
