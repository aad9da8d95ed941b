import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit, Component } from '../../../src/engine/circuit/index.ts';
import { electrical, leaves, loops, seriesParallel } from '../../../src/engine/topology/index.ts';
import { withConditions } from './conditions.ts';
import { network, plant, resistor, shape, supply } from './planted.ts';
import { randomGraph } from './random-graph.ts';

const condition = fc.constantFrom(undefined, undefined, 'broken' as const, 'bridged' as const);
const ids = (components: readonly Component[]): readonly string[] => components.map(({ id }) => id);
const open = (id: string, from: string, to: string) =>
  ({ kind: 'switch', id, from, to, closed: false }) as const;
const voltmeter = (id: string, from: string, to: string) => ({ kind: 'voltmeter', id, from, to }) as const;

describe('the circuit as its currents see it', () => {
  it('is the whole tree where everything conducts', () => {
    fc.assert(
      fc.property(shape, fc.nat(), (planted, seed) => {
        const { components } = plant(planted, seed);
        for (const circuit of [
          network(components),
          { components: [...components, supply('B1', 'p', 'n')] },
        ]) {
          assert.deepEqual(electrical(circuit), {
            live: circuit.components,
            trees: [seriesParallel(circuit)],
            bridge: [],
          });
        }
      }),
      { numRuns: 2500 },
    );
  });

  it('is not changed by voltmeters and open switches between any nodes, nor by what hangs on them', () => {
    fc.assert(
      fc.property(shape, fc.nat(), fc.nat(), (planted, seed, place) => {
        const components = [supply('B1', 'p', 'n'), ...plant(planted, seed).components];
        const nodes = components.flatMap(({ from, to }) => [from, to]);
        const [a = 'p', b = 'n'] = [nodes[place % nodes.length], nodes[(7 * place + 3) % nodes.length]];
        const idle = [voltmeter('V1', a, b), open('S1', b, a), open('S2', a, 'x'), resistor('R0', 'x', b)];
        assert.deepEqual(electrical({ components: [...components, ...idle] }), electrical({ components }));
      }),
      { numRuns: 2500 },
    );
  });

  it('holds exactly the components that share a loop with a supply, each once', () => {
    fc.assert(
      fc.property(randomGraph, (components) => {
        const { live, trees, bridge } = electrical({ components });
        const driven = loops({ components }).filter((loop) => loop.some(({ id }) => id.startsWith('B')));
        const looped = new Set(driven.flatMap((loop) => loop.map(({ id }) => id)));
        assert.deepEqual(
          ids(live),
          ids(components).filter((id) => looped.has(id)),
        );
        assert.deepEqual(
          trees.flatMap((tree) => leaves(tree).map(({ id }) => id)).sort(),
          [...ids(live)].sort(),
        );
        assert.ok(bridge.every((id) => looped.has(id)));
      }),
      { numRuns: 2500 },
    );
  });

  it('is without what is taken out, and has a wire beside what is bridged; the tree that is drawn knows of neither', () => {
    fc.assert(
      fc.property(randomGraph, fc.array(condition, { minLength: 13, maxLength: 13 }), (components, list) => {
        const circuit = withConditions({ components }, (_, place) => list[place]);
        const plain = components.flatMap((component, place): readonly Component[] => {
          const { id, from, to } = component;
          if (list[place] === 'broken') return [];
          const wire = { kind: 'wire', id: `${id} bridge`, from, to } as const;
          return list[place] === 'bridged' ? [component, wire] : [component];
        });
        const [seen, built] = [electrical(circuit), electrical({ components: plain })];
        assert.deepEqual({ ...seen, live: ids(seen.live) }, { ...built, live: ids(built.live) });
        assert.deepEqual(seriesParallel(circuit), seriesParallel({ components }));
      }),
      { numRuns: 2500 },
    );
  });

  it('has one tree for each part that its own supply drives', () => {
    const pair = (id: string, from: string, to: string) => [
      supply(`B${id}`, from, to),
      resistor(`R${id}`, from, to),
    ];
    const { trees } = electrical({
      components: [...pair('1', 'p', 'n'), ...pair('2', 'n', 'x'), ...pair('3', 'y', 'z')],
    });
    assert.deepEqual(
      trees.map((tree) => leaves(tree).map(({ id }) => id)),
      [
        ['B1', 'R1'],
        ['B2', 'R2'],
        ['B3', 'R3'],
      ],
    );
  });

  it('of a bridge is its series and parallel parts, the supply with what is in series with it', () => {
    const circuit: Circuit = {
      components: [
        supply('B1', 'p', 'n'),
        resistor('R1', 'p', 'a'),
        resistor('R2', 'p', 'b'),
        resistor('R3', 'a', 'b'),
        resistor('R4', 'a', 'q'),
        resistor('R5', 'b', 'c'),
        resistor('R6', 'c', 'q'),
        resistor('R7', 'q', 'n'),
      ],
    };
    const { trees, bridge } = electrical(circuit);
    assert.deepEqual(
      trees.map((tree) =>
        leaves(tree)
          .map(({ id }) => id)
          .sort()
          .join(' '),
      ),
      ['B1 R7', 'R1', 'R2', 'R3', 'R4', 'R5 R6'],
    );
    assert.deepEqual(bridge, ['R1', 'R2', 'R3', 'R4', 'R5', 'R6']);
  });

  it('is empty where there is no closed path', () => {
    const none = { live: [], trees: [], bridge: [] };
    assert.deepEqual(electrical({ components: [] }), none);
    assert.deepEqual(
      electrical({ components: [supply('B1', 'p', 'n'), open('S1', 'p', 'a'), resistor('R1', 'a', 'n')] }),
      none,
    );
    assert.deepEqual(electrical({ components: [supply('B1', 'p', 'n'), resistor('R1', 'p', 'a')] }), none);
  });
});
