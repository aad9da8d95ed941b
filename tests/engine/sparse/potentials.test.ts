import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { currentsOf } from '../../../src/engine/sparse/potentials.ts';
import type { Network } from '../../../src/engine/sparse/reduce.ts';
import { complete, wheel, type Joined } from './graphs.ts';

/** A graph whose edges have resistances, with an e.m.f. of 1 V in some. */
function driven({ size, edges }: Joined, ohms: readonly number[], ...sources: readonly number[]): Network {
  return {
    nodes: size,
    tails: Int32Array.from(edges, ([tail]) => tail),
    heads: Int32Array.from(edges, ([, head]) => head),
    ohms: Float64Array.from(edges, (_, at) => ohms[at] ?? 1),
    driving: Float64Array.from(edges, (_, at) => sources.filter((source) => source === at).length),
  };
}

/** No node of these has fewer than three neighbours. */
const graph = fc.oneof(
  fc.integer({ min: 3, max: 12 }).map(wheel),
  fc.integer({ min: 4, max: 7 }).map(complete),
);
const ohms = fc.array(fc.integer({ min: 1, max: 1000 }), { minLength: 30, maxLength: 30 });
const near = (a: number, b: number, within = 1e-12): void => {
  assert.ok(Math.abs(a - b) <= within, `${a} is not ${b}`);
};

describe('the currents of what no reduction takes away', () => {
  it('an e.m.f. drives in another branch what it would be driven to from there: reciprocity', () => {
    fc.assert(
      fc.property(graph, ohms, fc.nat(), fc.nat(), (joined, values, pick, other) => {
        const [one, two] = [pick % joined.edges.length, other % joined.edges.length];
        near(
          currentsOf(driven(joined, values, one))[two] ?? NaN,
          currentsOf(driven(joined, values, two))[one] ?? NaN,
        );
      }),
    );
  });

  it('those of two e.m.f.s are the sums of each one’s: superposition', () => {
    fc.assert(
      fc.property(graph, ohms, fc.nat(), fc.nat(), (joined, values, pick, other) => {
        const [one, two] = [pick % joined.edges.length, other % joined.edges.length];
        const [first, second] = [one, two].map((at) => currentsOf(driven(joined, values, at)));
        currentsOf(driven(joined, values, one, two)).forEach((current, at) =>
          near(current, (first?.[at] ?? NaN) + (second?.[at] ?? NaN)),
        );
      }),
    );
  });

  it('the shares of the branches’ own resistances in what is between their ends sum to one less than the nodes (R. M. Foster, 1949, from memory)', () => {
    fc.assert(
      fc.property(graph, ohms, (joined, values) => {
        // An e.m.f. of 1 V in a branch of r drives 1 / (r + R) round through the rest; that beside r is r·R / (r + R).
        const shares = joined.edges.map((_, at) => {
          const { ohms: resistances } = driven(joined, values);
          return 1 - (currentsOf(driven(joined, values, at))[at] ?? NaN) * (resistances[at] ?? NaN);
        });
        near(
          shares.reduce((sum, share) => sum + share, 0),
          joined.size - 1,
          1e-10,
        );
      }),
    );
  });

  it('twice the ohms carry half of it, in the same form of network or in another in between', () => {
    const [four, five] = [complete(4), complete(5)];
    const twice = five.edges.map(() => 2);
    const [before, between, after] = [
      currentsOf(driven(five, [], 3)),
      currentsOf(driven(four, [], 3)),
      currentsOf(driven(five, twice, 3)),
    ];
    // Between two nodes of n that are all joined there are 2/n ohms: 2/5 and 1/2 beside the branch’s own 1 Ω are of 2/3 and 1 Ω round it.
    near(before[3] ?? NaN, 3 / 5);
    near(between[3] ?? NaN, 1 / 2);
    near(after[3] ?? NaN, 3 / 10);
  });

  it('of no branches are none', () => {
    assert.equal(currentsOf(driven({ size: 0, edges: [] }, [])).length, 0);
  });
});
