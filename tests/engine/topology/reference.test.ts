import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { Component } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { seriesParallel, type Tree } from '../../../src/engine/topology/index.ts';
import { byHand } from './by-hand.ts';
import { resistor } from './planted.ts';
import { networkOf, networks } from '../solve/reference.ts';

function resistance(tree: Tree, components: readonly Component[]): Fraction {
  if (tree.kind === 'component') {
    const component = components.find(({ id }) => id === tree.id);
    assert.ok(component?.kind === 'resistor');
    return component.resistance.value;
  }
  const parts = tree.parts.map((part) => resistance(part, components));
  return tree.kind === 'series'
    ? parts.reduce((sum, part) => sum.add(part))
    : parts.reduce((sum, part) => sum.add(part.inverse()), new Fraction(0)).inverse();
}

describe('published networks of resistors', () => {
  it('that reduce have the published resistance, to the last digit', () => {
    let reduced = 0;
    for (const network of networks) {
      const circuit = networkOf(network);
      const { components } = circuit;
      const tree = seriesParallel(circuit);
      if (tree.kind === 'irreducible') continue;
      reduced += 1;
      assert.equal(resistance(tree, components).toFraction(), network.answer, network.id);
    }
    assert.ok(reduced > 20, `${reduced} of ${networks.length} networks reduce`);
  });

  it('reduce exactly where reduction by hand ends at one part, and else leave the same core', () => {
    const bridges = new Set<string>();
    for (const network of networks) {
      const circuit = networkOf(network);
      const { components } = circuit;
      const tree = seriesParallel(circuit);
      const left = byHand(components, network.nodes);
      const kept = left.flatMap(({ ids }) => ids);
      if (tree.kind !== 'irreducible') assert.equal(left.length, 1, network.id);
      else if (tree.reason === 'dead end') {
        assert.deepEqual([...tree.ids, ...kept].sort(), components.map(({ id }) => id).sort(), network.id);
      } else {
        bridges.add(network.id);
        assert.equal(tree.reason, 'bridge', network.id);
        assert.ok(left.length > 1, network.id);
        // With a supply between the ends, what is in series or in parallel with that is no part of the bridge.
        const closed = byHand([...components, resistor('B1', ...network.nodes)], []);
        const within = closed.flatMap(({ ids }) => (ids.includes('B1') ? [] : ids));
        assert.deepEqual([...tree.ids].sort(), within.sort(), network.id);
      }
    }
    for (const id of [
      'wheatstone-unbalanced',
      'complete-4',
      'tetrahedron',
      'hypercube-3-antipodal',
      'hypercube-3-edge',
      'grid-2x2-corner',
      'grid-4x4-corner',
    ]) {
      assert.ok(bridges.has(id), id);
    }
  });
});
