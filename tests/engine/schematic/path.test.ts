import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { dotRadius, dotsOf, lineOf } from '../../../src/engine/schematic/path.ts';

interface Step {
  readonly dx: number;
  readonly dy: number;
}
const ways: readonly Step[] = [
  { dx: 1, dy: 0 },
  { dx: 0, dy: 1 },
  { dx: -1, dy: 0 },
  { dx: 0, dy: -1 },
];

/** A right-angled way: a start, and legs of 40 pixels or more, each square to the one before. */
const way = fc
  .array(fc.tuple(fc.boolean(), fc.integer({ min: 4, max: 12 })), { minLength: 1, maxLength: 6 })
  .map((legs) => {
    let [x, y, turn] = [100, 100, 0];
    return [
      { x, y },
      ...legs.map(([left, tens]) => {
        turn = (turn + (left ? 1 : 3)) % 4;
        const { dx, dy } = ways[turn] ?? { dx: 0, dy: 0 };
        x += 10 * tens * dx;
        y += 10 * tens * dy;
        return { x, y };
      }),
    ];
  });

/** Where a path comes to, step after step, by the rules of SVG: `M`, `L` to a place, `a` by so much. */
function visited(path: string): readonly { readonly x: number; readonly y: number; readonly arc: boolean }[] {
  let [x, y] = [0, 0];
  return [...path.matchAll(/([MLa])([^MLaZ]*)/g)].map(([, letter, numbers = '']) => {
    const all = numbers.trim().split(' ').map(Number);
    const [dx = NaN, dy = NaN] = all.slice(-2);
    [x, y] = letter === 'a' ? [x + dx, y + dy] : [dx, dy];
    return { x, y, arc: letter === 'a' };
  });
}

describe('a line through points as path data', () => {
  it('comes to each of its points, in turn', () => {
    fc.assert(
      fc.property(way, (points) => {
        assert.deepEqual(
          visited(lineOf(points)).map(({ x, y }) => ({ x, y })),
          points,
        );
      }),
    );
  });

  it('hops, in a half circle, over each place that lies on it, in the order in which it comes there, and on to its end', () => {
    fc.assert(
      fc.property(
        way,
        fc.array(fc.tuple(fc.nat(), fc.integer({ min: 1, max: 3 })), { maxLength: 6 }),
        (points, picks) => {
          const hops = picks.map(([pick, tens]) => {
            const leg = pick % (points.length - 1);
            const [from, to] = [points[leg] ?? { x: 0, y: 0 }, points[leg + 1] ?? { x: 0, y: 0 }];
            return {
              x: from.x + 10 * tens * Math.sign(to.x - from.x),
              y: from.y + 10 * tens * Math.sign(to.y - from.y),
            };
          });
          const found = visited(lineOf(points, hops));
          for (const { x, y } of points) assert.ok(found.some((at) => at.x === x && at.y === y && !at.arc));
          assert.deepEqual([found.at(-1)?.x, found.at(-1)?.y], [points.at(-1)?.x, points.at(-1)?.y]);
          found.forEach(({ x, y, arc }, at) => {
            if (!arc) return;
            const before = found[at - 1] ?? { x: NaN, y: NaN };
            const middle = { x: (x + before.x) / 2, y: (y + before.y) / 2 };
            assert.ok(hops.some((hop) => hop.x === middle.x && hop.y === middle.y));
            assert.equal(Math.abs(x - before.x) + Math.abs(y - before.y), 10);
          });
          for (const hop of hops)
            assert.ok(
              found.some(({ x, y, arc }, at) => {
                const before = found[at - 1];
                return arc && before && x + before.x === 2 * hop.x && y + before.y === 2 * hop.y;
              }),
            );
        },
      ),
    );
  });

  it('leaves alone what lies beside it, beyond it, or at its ends', () => {
    const points = [
      { x: 0, y: 0 },
      { x: 100, y: 0 },
    ];
    for (const hop of [
      { x: 50, y: 1 },
      { x: 0, y: 0 },
      { x: 100, y: 0 },
      { x: -20, y: 0 },
      { x: 120, y: 0 },
    ])
      assert.equal(lineOf(points, [hop]), lineOf(points));
  });

  it('bulges up on a level wire and to the right on an upright one, from whichever end it is drawn', () => {
    for (const [from, to, sweep] of [
      [{ x: 0, y: 0 }, { x: 100, y: 0 }, 1],
      [{ x: 100, y: 0 }, { x: 0, y: 0 }, 0],
      [{ x: 0, y: 0 }, { x: 0, y: 100 }, 1],
      [{ x: 0, y: 100 }, { x: 0, y: 0 }, 0],
    ] as const) {
      const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
      assert.match(lineOf([from, to], [middle]), new RegExp(`a5 5 0 0 ${sweep} `));
    }
  });
});

describe('a node’s dots as path data', () => {
  it('are whole circles round their points', () => {
    assert.equal(dotsOf([]), '');
    assert.equal(
      dotsOf([{ x: 10, y: 20 }]),
      `M${10 - dotRadius} 20a${dotRadius} ${dotRadius} 0 0 1 ${2 * dotRadius} 0a${dotRadius} ${dotRadius} 0 0 1 ${-2 * dotRadius} 0Z`,
    );
    const [first, second] = [dotsOf([{ x: 1, y: 2 }]), dotsOf([{ x: 3, y: 4 }])];
    assert.equal(
      dotsOf([
        { x: 1, y: 2 },
        { x: 3, y: 4 },
      ]),
      first + second,
    );
  });
});
