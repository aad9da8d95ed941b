import assert from 'node:assert/strict';
import { test } from 'node:test';
import { prepareRibbons, type Drawing, type Point } from '../../../src/engine/schematic/index.ts';
import { madeUpFlow, treeOf } from './flow.ts';
import { keyOf, lengthOf } from './plane.ts';
import { doubleArea, polygonsOf } from './polygons.ts';
import { drawings } from './random-drawings.ts';

const scale = 11.7;
const some = drawings().filter((_, i) => i % 4 === 0);

/** The ribbons of a drawing at made-up currents, and the polygons of each: its outline, then two for each arrowhead. */
function ribbonsAt(
  sample: (typeof some)[number],
  total: number,
): { width: number; run: Drawing['ribbons'][number]; outline: Point[]; heads: Point[][] }[] {
  const { circuit, drawing } = sample;
  const ids = circuit.components.map(({ id }) => id);
  const flow = madeUpFlow(circuit, treeOf(circuit), total);
  const currents = Float64Array.from(ids, (id) => flow.get(id) ?? NaN);
  const ribbons = prepareRibbons(drawing, ids);
  const polygons = polygonsOf(ribbons.path(currents, scale));
  let next = 0;
  return drawing.ribbons.flatMap((run, i) => {
    const width = ribbons.along(i, currents) * scale;
    if (Math.abs(width) < 0.01) return [];
    const [outline = []] = polygons.slice(next, next + 1);
    const heads = polygons.slice(next + 1, next + 1 + 2 * run.arrows.length);
    next += 1 + 2 * run.arrows.length;
    return [{ width, run, outline, heads }];
  });
}

test('a ribbon is as wide at both its ends as its current, to 0.01 px', () => {
  for (const sample of some) {
    for (const { width, run, outline } of ribbonsAt(sample, 1)) {
      const corners = outline.length / 2;
      assert.equal(corners, run.points.length);
      for (const [a, b] of [
        [0, -1],
        [corners - 1, corners],
      ] as const) {
        const [from, to] = [outline.at(a), outline.at(b)];
        assert.ok(from && to && Math.abs(lengthOf({ from, to }) - Math.abs(width)) <= 0.0101);
      }
    }
  }
});

test('a corner is mitred: its outer and inner points lie half a width to either side of the path', () => {
  for (const sample of some.slice(0, 200)) {
    for (const { width, run, outline } of ribbonsAt(sample, 1)) {
      run.points.slice(1, -1).forEach((point, i) => {
        for (const corner of [outline[i + 1], outline.at(-i - 2)]) {
          assert.ok(corner);
          for (const off of [corner.x - point.x, corner.y - point.y]) {
            assert.ok(Math.abs(Math.abs(off) - Math.abs(width) / 2) <= 0.0051);
          }
        }
      });
    }
  }
});

test('at a junction a ribbon goes on to the far edge of the widest one that it meets at a right angle', () => {
  for (const sample of some) {
    const shown = ribbonsAt(sample, 1);
    const ends = shown.flatMap(({ run, width }) =>
      [run.points, run.points.toReversed()].map(([end, next]) => {
        assert.ok(end && next);
        return { end, next, upright: end.x === next.x, half: Math.abs(width) / 2 };
      }),
    );
    shown.forEach(({ outline, width }, i) => {
      for (const k of [0, 1]) {
        const mine = ends[2 * i + k];
        const corner = outline[k === 0 ? 0 : outline.length / 2];
        assert.ok(mine && corner);
        const met = ends.filter(
          (other) => keyOf(other.end) === keyOf(mine.end) && other.upright !== mine.upright,
        );
        const beyond = Math.max(0, ...met.map(({ half }) => half));
        const { end, next } = mine;
        const [ex, ey] = [Math.sign(end.x - next.x), Math.sign(end.y - next.y)];
        const along = (corner.x - end.x) * ex + (corner.y - end.y) * ey;
        assert.ok(Math.abs(along - beyond) <= 0.0051, `${width} px: ${along} instead of ${beyond}`);
      }
    });
  }
});

test('outlines and arrowheads run clockwise, so that they add; the chevrons cut out run the other way', () => {
  for (const sample of some) {
    for (const { outline, heads } of ribbonsAt(sample, 1)) {
      assert.ok(doubleArea(outline) > 0);
      heads.forEach((head, i) => {
        if (i % 2 === 0) assert.ok(doubleArea(head) > 0);
        else assert.ok(doubleArea(head) <= 0);
      });
    }
  }
});

test('arrowheads point the way the current flows, and turn round with it', () => {
  for (const sample of some) {
    for (const total of [1, -1]) {
      for (const { width, run, heads } of ribbonsAt(sample, total)) {
        run.arrows.forEach(({ at, turn }, i) => {
          const tip = heads[2 * i]?.[0];
          assert.ok(tip);
          const ahead = [tip.x - at.x, tip.y - at.y, at.x - tip.x, at.y - tip.y][turn / 90] ?? NaN;
          assert.equal(Math.sign(ahead), Math.sign(width));
          assert.ok(Math.abs(ahead) >= 5, 'seen at any width');
        });
      }
    }
  }
});

test('every number of the path is whole, and without a current there is no path', () => {
  for (const { circuit, drawing } of some) {
    const ids = circuit.components.map(({ id }) => id);
    const ribbons = prepareRibbons(drawing, ids);
    assert.equal(ribbons.path(new Float64Array(ids.length), scale), '');
    const path = ribbons.path(new Float64Array(ids.length).fill(1 / 3), scale);
    assert.match(path, /^[MHVhvlZ\d -]+$/);
  }
});
