import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { seriesParallel } from '../../../src/engine/topology/index.ts';
import { network, plant, resistor, shape, supply } from './planted.ts';

const runs = { numRuns: 2500 };
const leaf = (id: string, from: string, to: string, reversed = false) =>
  ({ kind: 'component', id, reversed, from, to }) as const;

describe('the series–parallel tree', () => {
  it('of a network built from a tree is that tree', () => {
    fc.assert(
      fc.property(shape, fc.nat(), (planted, seed) => {
        const { components, tree } = plant(planted, seed);
        assert.deepEqual(seriesParallel(network(components)), tree);
      }),
      runs,
    );
  });

  it('of a circuit starts at its first supply, entered at the negative end, and closes on itself', () => {
    fc.assert(
      fc.property(shape, fc.nat(), fc.nat(), (planted, seed, place) => {
        const { components, tree } = plant(planted, seed);
        const rest = tree.kind === 'series' ? tree.parts : [tree];
        const all = components.toSpliced(place % (components.length + 1), 0, supply('B1', 'p', 'n'));
        assert.deepEqual(seriesParallel({ components: all }), {
          kind: 'series',
          parts: [leaf('B1', 'n', 'p', true), ...rest],
          from: 'n',
          to: 'n',
        });
      }),
      runs,
    );
  });

  it('is the same whether the supply stands beside the resistors or before them', () => {
    const B1 = supply('B1', 'p', 'n');
    const R1 = resistor('R1', 'p', 'n');
    const R2 = resistor('R2', 'n', 'p');
    assert.deepEqual(seriesParallel({ components: [B1, R1, R2] }), {
      kind: 'series',
      parts: [
        leaf('B1', 'n', 'p', true),
        { kind: 'parallel', parts: [leaf('R1', 'p', 'n'), leaf('R2', 'p', 'n', true)], from: 'p', to: 'n' },
      ],
      from: 'n',
      to: 'n',
    });
  });
});

describe('a circuit has no series–parallel tree', () => {
  const bridge = [
    resistor('R1', 'p', 'a'),
    resistor('R2', 'p', 'b'),
    resistor('R3', 'a', 'b'),
    resistor('R4', 'a', 'q'),
    resistor('R5', 'b', 'q'),
  ];
  const stuck = (reason: string, ...ids: string[]) => ({ kind: 'irreducible', reason, ids });

  it('where there is nothing', () => {
    assert.deepEqual(seriesParallel({ components: [] }), stuck('empty'));
  });

  it('where a bridge stands, and the bridge is named without what is in series with it', () => {
    const B1 = supply('B1', 'p', 'n');
    assert.deepEqual(
      seriesParallel({ components: [B1, ...bridge, resistor('R6', 'q', 'n')] }),
      stuck('bridge', 'R1', 'R2', 'R3', 'R4', 'R5'),
    );
    assert.deepEqual(
      seriesParallel(network([...bridge, resistor('R6', 'q', 'n')])),
      stuck('bridge', 'R1', 'R2', 'R3', 'R4', 'R5'),
    );
  });

  it('where two bridges stand, and what joins them belongs to neither', () => {
    const second = bridge.map((one) => ({
      ...one,
      id: `${one.id}b`,
      from: `${one.from}'`,
      to: one.to === 'q' ? 'n' : `${one.to}'`,
    }));
    const all = [supply('B1', 'p', 'n'), ...bridge, resistor('R6', 'q', "p'"), ...second];
    const found = seriesParallel({ components: all });
    assert.deepEqual(found, stuck('bridge', ...[...bridge, ...second].map(({ id }) => id)));
  });

  it('where a component hangs on one node, however it hangs', () => {
    const rest = [supply('B1', 'p', 'n'), resistor('R1', 'p', 'n')];
    const dead = (...more: Parameters<typeof resistor>[]) =>
      seriesParallel({ components: [...rest, ...more.map((one) => resistor(...one))] });
    assert.deepEqual(dead(['R2', 'p', 'x']), stuck('dead end', 'R2'));
    assert.deepEqual(dead(['R2', 'p', 'p']), stuck('dead end', 'R2'));
    assert.deepEqual(
      dead(['R2', 'p', 'x'], ['R3', 'x', 'y'], ['R4', 'y', 'p']),
      stuck('dead end', 'R2', 'R3', 'R4'),
    );
    assert.deepEqual(
      dead(['R2', 'p', 'x'], ['R3', 'x', 'y'], ['R4', 'x', 'z']),
      stuck('dead end', 'R2', 'R3', 'R4'),
    );
    assert.deepEqual(seriesParallel({ components: [supply('B1', 'p', 'n')] }), stuck('dead end', 'B1'));
    assert.deepEqual(
      seriesParallel(network([resistor('R1', 'p', 'x'), resistor('R2', 'y', 'n')])),
      stuck('dead end', 'R1', 'R2'),
    );
  });

  it('where it is in pieces, and the pieces without the first supply are named', () => {
    const rest = [supply('B1', 'p', 'n'), resistor('R1', 'p', 'n')];
    const other = [supply('B2', 'x', 'y'), resistor('R2', 'x', 'y'), resistor('R3', 'y', 'z')];
    assert.deepEqual(
      seriesParallel({ components: [...other.slice(1), ...rest] }),
      stuck('apart', 'R2', 'R3'),
    );
    assert.deepEqual(seriesParallel({ components: [...rest, ...other] }), stuck('apart', 'B2', 'R2', 'R3'));
  });
});
