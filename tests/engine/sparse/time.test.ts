import assert from 'node:assert/strict';
import { before, describe, it } from 'node:test';
import { graphOf } from '../../../src/engine/solve/graph.ts';
import { equipLarge, solve } from '../../../src/engine/solve/index.ts';
import { sparseFlow } from '../../../src/engine/sparse/index.ts';
import { exponentOf, leastTimes } from '../topology/growth.ts';
import { ladder, network } from './circuits.ts';

const ohms = (at: number): number => 1 + (at % 7);
const families = {
  'in a chain': (n: number) =>
    network(
      Array.from({ length: n }, (_, at) => [at + 1, at, ohms(at)] as const),
      n,
    ),
  'in a ladder': (n: number) => ladder(n / 2, ohms),
  'in a fan': (n: number) =>
    network(
      Array.from({ length: n }, (_, at) => [0, 1, ohms(at)] as const),
      1,
      2,
    ),
  'in ways of two beside each other': (n: number) =>
    network(
      Array.from({ length: n }, (_, at) => {
        const middle = 2 + (at >> 1);
        return at & 1 ? ([middle, 0, ohms(at)] as const) : ([1, middle, ohms(at)] as const);
      }),
      1,
      2,
    ),
};

/** By which power of the number of components a task grows: the best of three turns, since other work takes the caches away for a while. */
function powerOf<Made>(
  counts: readonly number[],
  make: (count: number) => Made,
  task: (made: Made) => unknown,
): number {
  const made = counts.map(make);
  const measure = (): number => {
    const times = leastTimes(
      made.map((each) => () => task(each)),
      3,
    );
    return exponentOf(counts.map((count, place) => [count, times[place] ?? NaN] as const));
  };
  return [1, 2, 3].reduce((least) => (least <= 1.65 ? least : Math.min(least, measure())), Infinity);
}

// A list searched, or a loop gone round, for each component makes the time a square; memory alone makes it 1.0 to 1.4, as measured.
for (const [name, family] of Object.entries(families))
  describe(`no time grows as a square of the number of resistors ${name}`, () => {
    before(() => {
      equipLarge(sparseFlow);
    });

    it('to reduce them and to hand their currents back', () => {
      const power = powerOf([4000, 16_000, 64_000], (count) => graphOf(family(count)), sparseFlow);
      assert.ok(power <= 1.65, `${power}`);
    });

    it('to find what is to be remarked and warned of', () => {
      const power = powerOf(
        [1000, 4000, 16_000],
        (count) => solve(family(count)),
        (solution) => [solution.status, solution.remarks, solution.cautions],
      );
      assert.ok(power <= 1.65, `${power}`);
    });
  });

describe('a hundred thousand resistors', () => {
  for (const [name, family] of Object.entries(families))
    it(`${name} have currents, without a stack that overflows`, () => {
      const graph = graphOf(family(100_000));
      const flow = sparseFlow(graph);
      assert.ok(flow.current(0) > 0);
    });
});
