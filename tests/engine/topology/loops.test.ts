import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Component } from '../../../src/engine/circuit/index.ts';
import { loops, type Loop } from '../../../src/engine/topology/index.ts';
import { resistor, supply } from './planted.ts';
import { randomGraph } from './random-graph.ts';

const ids = (loop: Loop): string => loop.map(({ id, reversed }) => (reversed ? '−' : '') + id).join(' ');

/** The rank, over the integers modulo 2, of the sets of components. */
function rank(found: readonly Loop[]): number {
  const rows: Set<string>[] = [];
  for (const loop of found) {
    const row = new Set(loop.map(({ id }) => id));
    for (const other of rows) {
      const [pivot] = other;
      if (pivot === undefined || !row.has(pivot)) continue;
      for (const id of other) if (!row.delete(id)) row.add(id);
    }
    if (row.size > 0) rows.push(row);
  }
  return rows.length;
}

/** Connected pieces among the nodes of these components. */
function pieces(components: readonly Component[]): number {
  const root = new Map<string, string>();
  const find = (node: string): string => {
    const up = root.get(node) ?? node;
    return up === node ? node : find(up);
  };
  for (const { from, to } of components) {
    for (const node of [from, to]) if (!root.has(node)) root.set(node, node);
    root.set(find(from), find(to));
  }
  return [...root.keys()].filter((node) => find(node) === node).length;
}

describe('the loops of a circuit', () => {
  it('are closed, meet no node twice, and are as many as are independent', () => {
    fc.assert(
      fc.property(randomGraph, (components) => {
        const found = loops({ components });
        for (const loop of found) {
          assert.equal(new Set(loop.map(({ from }) => from)).size, loop.length);
          loop.forEach((step, index) => {
            const component = components.find(({ id }) => id === step.id);
            assert.ok(component);
            const [from, to] = step.reversed
              ? [component.to, component.from]
              : [component.from, component.to];
            assert.deepEqual([step.from, step.to], [from, to]);
            assert.equal(step.to, loop[(index + 1) % loop.length]?.from);
          });
        }
        const joining = components.filter(({ from, to }) => from !== to);
        const nodes = new Set(joining.flatMap(({ from, to }) => [from, to])).size;
        assert.equal(found.length, joining.length - nodes + pieces(joining));
        assert.equal(rank(found), found.length);
      }),
      { numRuns: 2500 },
    );
  });

  it('go through a supply where the components share a loop with one, the way it drives, the shortest first', () => {
    fc.assert(
      fc.property(randomGraph, (components) => {
        const found = loops({ components });
        const lengths = found.map((loop) => loop.length);
        assert.deepEqual(
          lengths,
          lengths.toSorted((a, b) => a - b),
        );
        const driven = found.filter((loop) => loop.some(({ id }) => id.startsWith('B')));
        for (const loop of driven) assert.ok(loop[0]?.id.startsWith('B') && loop[0].reversed, ids(loop));
        const touched = new Set(driven.flatMap((loop) => loop.map(({ id }) => id)));
        for (const loop of found.filter((one) => !driven.includes(one))) {
          assert.ok(loop.every(({ id }) => !touched.has(id)));
        }
      }),
      { numRuns: 2500 },
    );
  });

  it('of a series circuit are one', () => {
    assert.deepEqual(
      loops({ components: [supply('B1', 'p', 'n'), resistor('R1', 'p', 'a'), resistor('R2', 'n', 'a')] }).map(
        ids,
      ),
      ['−B1 R1 −R2'],
    );
  });

  it('of a parallel circuit go through the supply and one branch each', () => {
    const components = [supply('B1', 'p', 'n'), ...['R1', 'R2', 'R3'].map((id) => resistor(id, 'p', 'n'))];
    assert.deepEqual(loops({ components }).map(ids), ['−B1 R1', '−B1 R2', '−B1 R3']);
  });

  it('of a bridge are its two arms and one across', () => {
    const arms = [
      ['R1', 'p', 'a'],
      ['R2', 'p', 'b'],
      ['R3', 'a', 'b'],
      ['R4', 'a', 'n'],
      ['R5', 'b', 'n'],
    ] as const;
    const components = [supply('B1', 'p', 'n'), ...arms.map(([id, from, to]) => resistor(id, from, to))];
    assert.deepEqual(loops({ components }).map(ids), ['−B1 R1 R4', '−B1 R2 R5', '−B1 R2 −R3 R4']);
  });

  it('leave an ideal voltmeter out, and take a real one in', () => {
    const components = [supply('B1', 'p', 'n'), resistor('R1', 'p', 'n')];
    const meter = { kind: 'voltmeter', id: 'V1', from: 'p', to: 'n' } as const;
    assert.deepEqual(loops({ components: [...components, meter] }).map(ids), ['−B1 R1']);
    const real = { ...meter, resistance: { ...resistor('', '', '', 10_000).resistance } };
    assert.deepEqual(loops({ components: [...components, real] }).map(ids), ['−B1 R1', '−B1 V1']);
  });
});
