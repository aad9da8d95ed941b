import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import {
  leaves,
  pieces,
  seriesParallel,
  turnedRound,
  type Tree,
} from '../../../src/engine/topology/index.ts';
import { exponentOf, operationsOf } from './growth.ts';
import { resistor, supply } from './planted.ts';
import { randomGraph } from './random-graph.ts';

const ids = (tree: Tree): string =>
  leaves(tree)
    .map(({ id }) => id)
    .join(' ');
const parts = (circuit: Circuit): string[][] => pieces(circuit).map((piece) => piece.parts.map(ids));

test('a bridge has its supply first, which runs against the way it drives, and its five arms', () => {
  const circuit = {
    components: [
      resistor('R1', 'a', 'p'),
      resistor('R2', 'p', 'b'),
      resistor('R3', 'a', 'q'),
      resistor('R4', 'q', 'b'),
      resistor('R5', 'p', 'q'),
      supply('B1', 'a', 'b'),
    ],
  };
  const [piece, ...others] = pieces(circuit);
  assert.ok(piece && others.length === 0 && !piece.tree);
  assert.deepEqual(piece.parts.map(ids), ['B1', 'R1', 'R2', 'R3', 'R4', 'R5']);
  const [closing] = piece.parts;
  assert.deepEqual([closing?.from, closing?.to], ['a', 'b']);
  assert.deepEqual(piece.ties, []);
});

test('series and parallel parts of a web are one part each', () => {
  const circuit = {
    components: [
      supply('B1', 'a', 'b'),
      resistor('R0', 'a', 's'),
      resistor('R1', 's', 'p'),
      resistor('R2', 'p', 'b'),
      resistor('R3', 's', 'q'),
      resistor('R4', 'q', 'b'),
      resistor('R5', 'p', 'q'),
      resistor('R6', 'p', 'q'),
    ],
  };
  assert.deepEqual(parts(circuit), [['R0 B1', 'R1', 'R2', 'R3', 'R4', 'R5 R6']]);
});

test('a dead end is a part, tied to a neighbour of where it hangs', () => {
  const circuit = {
    components: [
      supply('B1', 'a', 'b'),
      resistor('R1', 'a', 'b'),
      resistor('R2', 'a', 'c'),
      resistor('R3', 'c', 'd'),
    ],
  };
  const [piece] = pieces(circuit);
  assert.ok(piece);
  assert.deepEqual(piece.parts.map(ids), ['B1', 'R1', 'R2 R3']);
  assert.deepEqual(piece.ties, [['d', 'b']]);
});

test('what leads back to where it began has an end of its own', () => {
  const [piece] = pieces({
    components: [supply('B1', 'a', 'b'), resistor('R1', 'a', 'b'), resistor('R2', 'b', 'b')],
  });
  assert.deepEqual(
    piece?.parts.map(({ to }) => to.split('\n')).filter(({ length }) => length > 1),
    [['b', 'R2']],
  );
});

test('pieces come in the order of their first components; one that is series and parallel has its tree', () => {
  const circuit = {
    components: [
      supply('B1', 'a', 'b'),
      resistor('R1', 'c', 'd'),
      resistor('R2', 'a', 'b'),
      supply('B2', 'd', 'c'),
      resistor('R3', 'e', 'f'),
    ],
  };
  const found = pieces(circuit);
  assert.deepEqual(
    found.map(({ tree }) => tree && ids(tree)),
    ['B1 R2', 'B2 R1', undefined],
  );
});

test('every component is in one part of one piece, and a piece with a tree is all that is in it', () => {
  fc.assert(
    fc.property(randomGraph, (components) => {
      const found = pieces({ components });
      const told = found.flatMap((piece) => piece.parts.flatMap((part) => leaves(part).map(({ id }) => id)));
      assert.deepEqual(told.sort(), components.map(({ id }) => id).sort());
      for (const { tree, parts: own } of found) {
        if (tree)
          assert.deepEqual(ids(tree).split(' ').sort(), own.flatMap((part) => ids(part).split(' ')).sort());
      }
    }),
  );
});

test('a circuit that is series and parallel is one piece with the same tree', () => {
  fc.assert(
    fc.property(randomGraph, (components) => {
      const tree = seriesParallel({ components });
      const [piece, ...others] = pieces({ components });
      if (tree.kind === 'irreducible') assert.ok(others.length > 0 || piece?.tree === undefined);
      else assert.deepEqual(piece?.tree, tree);
    }),
  );
});

test('with its ties no node holds a piece together alone', () => {
  fc.assert(
    fc.property(randomGraph, (components) => {
      for (const { parts: own, ties } of pieces({ components })) {
        const edges = [...own.map(({ from, to }) => [from, to] as const), ...ties];
        const nodes = [...new Set(edges.flat())];
        for (const gone of nodes) {
          const rest = nodes.filter((node) => node !== gone);
          const reached = new Set(rest.slice(0, 1));
          for (const node of reached) {
            for (const [from, to] of edges) {
              if (from === node && to !== gone) reached.add(to);
              if (to === node && from !== gone) reached.add(from);
            }
          }
          // A component back to its own node hangs on that by two wires: its far end is no node of the circuit.
          assert.equal(reached.size, rest.length, `${gone} of ${JSON.stringify(edges)}`);
        }
      }
    }),
  );
});

test('a part turned round twice is the same, and once runs through the same components the other way', () => {
  fc.assert(
    fc.property(randomGraph, (components) => {
      for (const part of pieces({ components }).flatMap((piece) => piece.parts)) {
        const turned = turnedRound(part);
        assert.deepEqual([turned.from, turned.to], [part.to, part.from]);
        assert.deepEqual(turnedRound(turned), part);
        assert.deepEqual(ids(turned).split(' ').sort(), ids(part).split(' ').sort());
      }
    }),
  );
});

test('pairs in a row, the farthest first, take no time that grows as a square of their number', () => {
  const row = (count: number): Circuit => ({
    components: [
      supply('B1', 'n0', 'n1'),
      resistor('R0', 'n0', 'n1'),
      ...Array.from({ length: count }, (_, at) => count - at).flatMap((at) => [
        resistor(`R${2 * at}`, `n${at}`, `n${at + 1}`),
        resistor(`R${2 * at + 1}`, `n${at}`, `n${at + 1}`),
      ]),
    ],
  });
  const power = exponentOf(
    [100, 400, 1600].map((count) => [count, operationsOf(() => pieces(row(count)))] as const),
  );
  assert.ok(power < 1.2, `${power}`);
});
