import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { junctions } from '../../../src/engine/topology/index.ts';
import { resistor, supply } from './planted.ts';
import { randomGraph } from './random-graph.ts';

describe('the junctions of a circuit', () => {
  it('are where three or more branches meet, with every end that is there', () => {
    fc.assert(
      fc.property(randomGraph, (components) => {
        const found = new Map(junctions({ components }).map(({ node, ends }) => [node, ends]));
        for (const node of ['0', '1', '2', '3', '4', '5']) {
          const ends = components
            .filter(({ from, to }) => from !== to && (from === node || to === node))
            .map(({ id, from }) => ({ id, end: from === node ? 'from' : 'to' }));
          assert.deepEqual(found.get(node), ends.length > 2 ? ends : undefined);
        }
      }),
      { numRuns: 2500 },
    );
  });

  it('are not made by an ideal voltmeter, but by a real one they are', () => {
    const series = [supply('B1', 'p', 'n'), resistor('R1', 'p', 'a'), resistor('R2', 'a', 'n')];
    const meter = { kind: 'voltmeter', id: 'V1', from: 'p', to: 'a' } as const;
    assert.deepEqual(junctions({ components: [...series, meter] }), []);
    const real = { ...meter, resistance: resistor('', '', '', 10_000).resistance };
    const nodes = junctions({ components: [...series, real] }).map(({ node }) => node);
    assert.deepEqual(nodes, ['p', 'a']);
  });

  it('stay apart on both sides of a wire, a closed switch or an ideal ammeter', () => {
    const joins = [
      { kind: 'wire', id: 'W1', from: 'a', to: 'b' },
      { kind: 'switch', id: 'S1', from: 'a', to: 'b', closed: true },
      { kind: 'ammeter', id: 'A1', from: 'a', to: 'b' },
    ] as const;
    for (const join of joins) {
      const pairs = [
        resistor('R1', 'p', 'a'),
        resistor('R2', 'p', 'a'),
        resistor('R3', 'b', 'p'),
        resistor('R4', 'p', 'b'),
      ];
      const found = junctions({ components: [...pairs, join] });
      assert.deepEqual(
        found.filter(({ node }) => node !== 'p'),
        [
          {
            node: 'a',
            ends: [
              { id: 'R1', end: 'to' },
              { id: 'R2', end: 'to' },
              { id: join.id, end: 'from' },
            ],
          },
          {
            node: 'b',
            ends: [
              { id: 'R3', end: 'from' },
              { id: 'R4', end: 'to' },
              { id: join.id, end: 'to' },
            ],
          },
        ],
      );
    }
  });
});
