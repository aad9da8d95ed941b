import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Measure } from '../../../src/engine/schematic/block.ts';
import { boxOn, onwards, pointOn, wire, type Line, type Page } from '../../../src/engine/schematic/page.ts';

const blank = (): Page => ({ pieces: [], symbols: [], labels: [], marks: [], hops: [], arrows: [] });
const pixel = fc.integer({ min: -200, max: 200 });

/** A line of any page: level or upright, running on or back. */
const line = fc
  .record({ upright: fc.boolean(), back: fc.boolean(), start: pixel, cross: pixel })
  .map(({ upright, back, start, cross }): Line => {
    const measure: Measure = {
      upright,
      stacked: false,
      left: false,
      part: () => assert.fail('no part is measured'),
    };
    return { page: blank(), measure, start, cross, way: back ? -1 : 1, carries: [{ id: 'R1', sign: 1 }] };
  });

describe('a line on which blocks are placed', () => {
  it('is level or upright: along it one coordinate changes, to its side the other', () => {
    fc.assert(
      fc.property(line, pixel, pixel, (on, along, across) => {
        const [begin, there, aside] = [pointOn(on, 0), pointOn(on, along), pointOn(on, along, across)];
        const [m, c] = on.measure.upright ? (['y', 'x'] as const) : (['x', 'y'] as const);
        assert.equal(there[m] - begin[m], along === 0 ? 0 : on.way * along);
        assert.equal(there[c], begin[c]);
        assert.equal(aside[m], there[m]);
        // To its side is to the same side whichever way it runs: labels stand above a level line and beside an upright one.
        assert.equal(aside[c] - there[c], across);
      }),
    );
  });

  it('goes on from any point of it as it did', () => {
    fc.assert(
      fc.property(line, pixel, pixel, pixel, (on, first, then, across) => {
        assert.deepEqual(pointOn(onwards(on, first), then, across), pointOn(on, first + then, across));
        assert.equal(onwards(on, first).page, on.page);
      }),
    );
  });

  it('has a wire from place to place with what flows along it, and none where there is no length', () => {
    fc.assert(
      fc.property(line, pixel, pixel, (on, from, to) => {
        wire(on, 'a', from, to);
        const drawn = on.page.pieces;
        assert.equal(drawn.length, from === to ? 0 : 1);
        for (const piece of drawn)
          assert.deepEqual(piece, {
            node: 'a',
            from: pointOn(on, from),
            to: pointOn(on, to),
            carries: on.carries,
          });
      }),
    );
  });

  it('has boxes whose sizes are their lengths and breadths, with both ends at their edges', () => {
    const size = fc.nat({ max: 200 });
    fc.assert(
      fc.property(line, pixel, size, size, size, (on, from, length, before, after) => {
        const box = boxOn(on, from, from + length, before, after);
        const [along, across] = on.measure.upright ? [box.height, box.width] : [box.width, box.height];
        assert.equal(along, length);
        assert.equal(across, before + after);
        for (const end of [from, from + length])
          for (const side of [-before, after]) {
            const { x, y } = pointOn(on, end, side);
            assert.ok(x === box.x || x === box.x + box.width);
            assert.ok(y === box.y || y === box.y + box.height);
          }
      }),
    );
  });
});
