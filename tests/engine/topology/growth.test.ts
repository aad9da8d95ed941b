import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { Component } from '../../../src/engine/circuit/index.ts';
import { electrical, leaves, seriesParallel, turnedRound } from '../../../src/engine/topology/index.ts';
import { exponentOf, leastTimes, operationsOf } from './growth.ts';
import { network, resistor } from './planted.ts';

const chain = (count: number): Component[] =>
  Array.from({ length: count }, (_, index) =>
    resistor(`R${index}`, index === 0 ? 'p' : `n${index}`, index === count - 1 ? 'n' : `n${index + 1}`),
  );
const fan = (count: number): Component[] =>
  Array.from({ length: count }, (_, index) => resistor(`R${index}`, 'p', 'n'));
/** R0 + (R1 ∥ (R2 + (R3 ∥ …))): every second component one level deeper. */
const nest = (count: number): Component[] =>
  Array.from({ length: 2 * Math.floor(count / 2) + 1 }, (_, index) => {
    const level = Math.floor(index / 2);
    const at = level === 0 ? 'p' : `n${level}`;
    if (index >= count - 1 && index % 2 === 0) return resistor(`R${index}`, at, 'n');
    return index % 2 === 0
      ? resistor(`R${index}`, at, `n${level + 1}`)
      : resistor(`R${index}`, `n${level + 1}`, 'n');
  });
/** A chain of pairs in parallel, whose blocks are many. */
const beads = (count: number): Component[] =>
  chain(count / 2).flatMap((one) => [one, { ...one, id: `${one.id}b` }]);

const families = { 'in series': chain, 'in parallel': fan, nested: nest, 'in pairs': beads };

function depthOf(components: readonly Component[]): number {
  let deepest = 0;
  const pending = [{ tree: seriesParallel(network(components)), depth: 0 }];
  for (let next = pending.pop(); next; next = pending.pop()) {
    deepest = Math.max(deepest, next.depth);
    if (next.tree.kind === 'irreducible' || next.tree.kind === 'component') continue;
    for (const tree of next.tree.parts) pending.push({ tree, depth: next.depth + 1 });
  }
  return deepest;
}

describe('the tree of a hundred thousand components', () => {
  it('is flat where all are in series or all in parallel', () => {
    for (const family of [chain, fan]) {
      const tree = seriesParallel(network(family(100_000)));
      assert.ok(tree.kind === 'series' || tree.kind === 'parallel');
      assert.equal(tree.parts.length, 100_000);
      assert.ok(tree.parts.every((part, index) => part.kind === 'component' && part.id === `R${index}`));
    }
  });

  it('is as deep as the circuit is nested, fifty thousand pairs and more', () => {
    const components = nest(100_001);
    assert.equal(depthOf(components), 100_000);
    const tree = seriesParallel(network(components));
    assert.ok(tree.kind !== 'irreducible');
    assert.equal(leaves(tree).length, components.length);
    const turned = leaves(turnedRound(tree)).at(-1);
    assert.equal(turned?.id, leaves(tree)[0]?.id);
    assert.equal(turned?.reversed, !leaves(tree)[0]?.reversed);
  });

  it('is found for each part that carries current, too', () => {
    for (const family of Object.values(families)) {
      const components = family(100_000);
      assert.equal(electrical(network(components)).live.length, components.length);
    }
  });
});

describe('the work of finding the tree', () => {
  for (const [name, family] of Object.entries(families)) {
    it(`grows as the number of components ${name}, counted`, () => {
      const points = [1000, 4000, 16_000].map((count) => {
        const circuit = network(family(count));
        return [count, operationsOf(() => seriesParallel(circuit))] as const;
      });
      for (const [count, operations] of points) assert.ok(operations > count);
      const exponent = exponentOf(points);
      assert.ok(exponent <= 1.05, `${exponent}`);
    });

    // Memory makes the time grow faster than the work, by a power of 1.0 to 1.4 as measured; a trap that copies or searches a
    // list for each component makes it 2.
    it(`takes no time that grows as a square ${name}`, () => {
      const counts = [3000, 12_000, 48_000];
      const circuits = counts.map((count) => network(family(count)));
      const measure = (): number => {
        const times = leastTimes(circuits.map((circuit) => () => seriesParallel(circuit)));
        return exponentOf(counts.map((count, place) => [count, times[place] ?? NaN] as const));
      };
      // Other work on the machine takes the caches away for a while; a square is one every time.
      const exponent = [1, 2, 3].reduce((least) => (least <= 1.65 ? least : measure()), Infinity);
      assert.ok(exponent <= 1.65, `${exponent}`);
    });
  }
});
