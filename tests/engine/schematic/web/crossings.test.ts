// How many crossings a drawing has beside the fewest that any drawing could have.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { embed } from '../../../../src/engine/schematic/web/embed.ts';
import { crossingNumber } from './crossing-number.ts';
import { bipartite, complete, edgesOf } from './graphs.ts';
import { isPlanar, type Pair } from './planarity.ts';

const drawnCrossings = (pairs: readonly Pair[], count: number): number =>
  embed(edgesOf(pairs), count).order.length - count;

/** A ring of up to eight vertices, with other joins. */
const simple = fc
  .tuple(fc.integer({ min: 4, max: 8 }), fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { maxLength: 11 }))
  .map(([count, chords]) => {
    const ring = Array.from({ length: count }, (_, i): Pair => [i, (i + 1) % count]);
    const all = [...ring, ...chords.map(([a, b]): Pair => [a % count, b % count])].filter(
      ([a, b]) => a !== b,
    );
    return { count, pairs: [...new Map(all.map((pair) => [pair.toSorted().join(' '), pair])).values()] };
  });

const petersen: Pair[] = [0, 1, 2, 3, 4].flatMap((i): Pair[] => [
  [i, (i + 1) % 5],
  [i, i + 5],
  [i + 5, ((i + 2) % 5) + 5],
]);

test('the trials know the crossing numbers of well-known graphs (common knowledge of graph drawing)', () => {
  assert.equal(crossingNumber(complete(4), 3), 0);
  assert.equal(crossingNumber(complete(5), 3), 1);
  assert.equal(crossingNumber(bipartite(3, 3), 3), 1);
  assert.equal(crossingNumber(bipartite(3, 4), 3), 2);
  assert.equal(crossingNumber(petersen, 3), 2);
  assert.equal(crossingNumber(complete(6), 3), 3);
});

test('exactly what cannot lie in a plane is drawn with crossings', () => {
  fc.assert(
    fc.property(simple, ({ count, pairs }) => {
      assert.equal(drawnCrossings(pairs, count) === 0, isPlanar(pairs));
    }),
    { numRuns: 1000 },
  );
});

test('five nodes all joined, six, and four joined to four, are drawn with the fewest crossings, whichever edge comes first', () => {
  // 1, 3 and 4: R. K. Guy, Bulletin of the Malayan Mathematical Society 7 (1960) 68, and K. Zarankiewicz, Fundamenta Mathematicae
  // 41 (1954) 137 (both from memory).
  for (const [pairs, count, fewest] of [
    [complete(5), 5, 1],
    [bipartite(3, 3), 6, 1],
    [bipartite(3, 4), 7, 2],
    [complete(6), 6, 3],
    [bipartite(4, 4), 8, 4],
  ] as const) {
    for (const [first] of pairs.entries()) {
      assert.equal(drawnCrossings([...pairs.slice(first), ...pairs.slice(0, first)], count), fewest);
    }
  }
});

test('a drawing of up to eight nodes has at most one crossing more than it must with its first edge not crossed', (t) => {
  const found = { needed: 0, drawn: 0, graphs: 0 };
  fc.assert(
    fc.property(simple, ({ count, pairs }) => {
      const drawn = drawnCrossings(pairs, count);
      fc.pre(drawn > 0);
      const needed = crossingNumber(pairs, Math.min(drawn, 2), (edge) => edge === 0);
      assert.ok(needed === undefined || drawn <= needed + 1, `${drawn} where ${needed} would do`);
      found.graphs += 1;
      found.drawn += drawn;
      found.needed += needed ?? drawn;
    }),
    { numRuns: 60, maxSkipsPerRun: 1000 },
  );
  t.diagnostic(`${found.graphs} graphs: ${found.drawn} crossings where ${found.needed} would do`);
  assert.ok(found.drawn <= 1.1 * found.needed);
});

test('the first edge, which is the supply’s, is never crossed', () => {
  fc.assert(
    fc.property(simple, ({ count, pairs }) => {
      const { edges } = embed(edgesOf(pairs), count);
      assert.equal(edges.filter(({ part }) => part === 0).length, 1);
    }),
  );
});
