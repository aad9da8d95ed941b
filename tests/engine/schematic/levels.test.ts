import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { circuitFrom, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { levelPlan } from '../../../src/engine/schematic/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

/** A network of resistors: a number is one of so many ohms, a list is in series and in parallel by turns. */
type Shape = number | readonly Shape[];
const { shape } = fc.letrec<{ shape: Shape }>((tie) => ({
  shape: fc.oneof(
    { maxDepth: 4, depthSize: 'medium' },
    { weight: 2, arbitrary: fc.integer({ min: 1, max: 40 }) },
    { weight: 1, arbitrary: fc.array(tie('shape'), { minLength: 2, maxLength: 4 }) },
  ),
}));

/** A supply of 12 V that drives a network of resistors. */
const driven = fc.array(shape, { minLength: 1, maxLength: 5 }).map((whole): Circuit => {
  const components: Record<string, unknown>[] = [
    { id: 'B1', kind: 'supply', emf: '12', from: 'n0', to: 'end' },
  ];
  let nodes = 0;
  const add = (part: Shape, from: string, to: string, inSeries: boolean): void => {
    if (typeof part === 'number') {
      const id = `R${components.length}`;
      components.push({ id, kind: 'resistor', resistance: String(part), from, to });
      return;
    }
    let here = from;
    part.forEach((each, place) => {
      const there = inSeries && place < part.length - 1 ? `n${(nodes += 1)}` : to;
      add(each, here, there, !inSeries);
      if (inSeries) here = there;
    });
  };
  add(whole, 'n0', 'end', true);
  // The order in which they are written must not matter.
  components.sort((a, b) => Number(a['resistance'] ?? 0) - Number(b['resistance'] ?? 0));
  return circuitFrom({ version: 1, components });
});

test('every component has a column of its own, and a level line reaches just over all that meet there', () => {
  fc.assert(
    fc.property(driven, (circuit) => {
      const { columns, lines } = levelPlan(circuit);
      assert.deepEqual(columns.toSorted(), circuit.components.map(({ id }) => id).toSorted());
      for (const { node, first, last } of lines) {
        const joined = circuit.components.filter(({ from, to }) => from === node || to === node);
        const places = joined.map(({ id }) => columns.indexOf(id));
        assert.deepEqual([first, last], [Math.min(...places), Math.max(...places)]);
      }
    }),
  );
});

test('round a series–parallel circuit of one supply no upright line crosses a level line', () => {
  fc.assert(
    fc.property(driven, (circuit) => {
      const { columns, lines } = levelPlan(circuit);
      const solution = solveExact(circuit);
      const height = (node: string): number => Number(solution.potential(node));
      for (const { id, from, to } of circuit.components) {
        const column = columns.indexOf(id);
        const [low, high] = [height(from), height(to)].sort((a, b) => a - b) as [number, number];
        for (const { node, first, last } of lines) {
          const between = height(node) > low + 1e-9 && height(node) < high - 1e-9;
          assert.ok(!(between && first < column && column < last), `${id} crosses ${node}`);
        }
      }
    }),
  );
});

test('the lift comes first, then the drops along the current, branch after branch', () => {
  const { columns, lines } = levelPlan(
    parseCircuit('B1 6 V + R1 1 Ω + (R2 2 Ω ∥ (R3 3 Ω + L1 4 Ω)) + R4 1 Ω'),
  );
  assert.deepEqual(columns, ['B1', 'R1', 'R2', 'R3', 'L1', 'R4']);
  assert.deepEqual(
    lines.map(({ first, last }) => [first, last]).toSorted((a, b) => a[0]! - b[0]! || a[1]! - b[1]!),
    [
      [0, 1],
      [0, 5],
      [1, 3],
      [2, 5],
      [3, 4],
    ],
  );
});

test('a bridge keeps the order in which it is written', () => {
  const bridge = parseCircuit('B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 2 Ω + @q + R4 1 Ω)); R5 3 Ω @p–@q');
  assert.deepEqual(levelPlan(bridge).columns, ['B1', 'R1', 'R2', 'R3', 'R4', 'R5']);
});

test('nothing moves sideways while values, switches and conditions change', () => {
  const circuit = parseCircuit('B1 6 V + S1 open + (R1 [2..40] 8 Ω ∥ L1 4 Ω); V1 across R1');
  const plan = levelPlan(circuit);
  for (const [id, value] of [
    ['R1', '40'],
    ['S1', 'closed'],
    ['L1', 'broken'],
    ['L1', 'bridged'],
  ] as const)
    assert.deepEqual(levelPlan(withValue(circuit, id, value)), plan);
});
