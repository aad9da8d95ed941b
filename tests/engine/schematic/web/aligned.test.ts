import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Point } from '../../../../src/engine/schematic/index.ts';
import type { Piece } from '../../../../src/engine/schematic/page.ts';
import { aligned } from '../../../../src/engine/schematic/web/aligned.ts';

const point = (x: number, y = 0): Point => ({ x, y });
const carries = [{ id: 'R1', sign: 1 }] as const;
const piece = (from: Point, to: Point): Piece => ({ node: 'a', from, to, carries });

test('a piece that runs against the one before it is turned round, and counts its current the other way', () => {
  const found = aligned([
    piece(point(0), point(10)),
    piece(point(20), point(10)),
    piece(point(20), point(30)),
  ]);
  assert.deepEqual(found[1], {
    node: 'a',
    from: point(10),
    to: point(20),
    carries: [{ id: 'R1', sign: -1 }],
  });
  assert.deepEqual(found[2], piece(point(20), point(30)));
});

test('what meets at a junction keeps its direction', () => {
  const star = [piece(point(0), point(10)), piece(point(20), point(10)), piece(point(10, 10), point(10))];
  assert.deepEqual(aligned(star), star);
});

test('a piece of a symbol stays without a node', () => {
  const symbol = { from: point(20), to: point(10), carries };
  const [, found] = aligned([piece(point(0), point(10)), symbol]);
  assert.ok(found && !('node' in found));
});

test('however a chain is put together, in the end it runs one way, and its current is what it was', () => {
  const flips = fc.array(fc.boolean(), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(flips, fc.boolean(), fc.nat(), (flipped, closed, seed) => {
      const count = flipped.length + (closed ? 2 : 0);
      const place = (i: number): Point => (closed ? point(i % count, 5) : point(i, 5));
      const chain = Array.from({ length: count }, (_, i) => {
        const flip = flipped[i] ?? false;
        return {
          node: `n${i}`,
          from: place(flip ? i + 1 : i),
          to: place(flip ? i : i + 1),
          carries: [{ id: 'I', sign: flip ? -1 : 1 } as const],
        };
      });
      const cut = seed % count;
      const found = aligned([...chain.slice(cut), ...chain.slice(0, cut)]);
      // Forwards means that what it carries has the sign +1, wherever it began.
      const signs = new Set(found.flatMap((each) => each.carries.map(({ sign }) => sign)));
      assert.equal(signs.size, 1);
      const ends = found.map(({ to }) => `${to.x}`);
      assert.equal(new Set(ends).size, ends.length, 'no two run towards each other');
    }),
  );
});
