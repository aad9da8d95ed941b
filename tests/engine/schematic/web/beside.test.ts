import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Box, Point } from '../../../../src/engine/schematic/index.ts';
import type { Page } from '../../../../src/engine/schematic/page.ts';
import { margin, type Plan } from '../../../../src/engine/schematic/plan.ts';
import { beside } from '../../../../src/engine/schematic/web/beside.ts';

const blank = (): Page => ({ pieces: [], symbols: [], labels: [], marks: [], hops: [], arrows: [] });

/** A plan of a size that draws one of everything at its corner and at its middle. */
const planOf = (width: number, height: number, cost = 0): Plan => ({
  cost,
  size: { width, height },
  draw: (page) => {
    const [corner, middle]: Point[] = [
      { x: 0, y: 0 },
      { x: width / 2, y: height / 2 },
    ];
    const box: Box = { x: 0, y: 0, width, height };
    assert.ok(corner && middle);
    page.pieces.push({ node: 'a', from: corner, to: middle, carries: [] });
    const symbol = { id: 'R1', turn: 0, path: '', filled: '', letter: '', ends: '' } as const;
    page.symbols.push({ ...symbol, at: middle, box, hit: box });
    page.labels.push({ id: 'R1', role: 'label', text: 'R1', at: middle, anchor: 'middle', box });
    page.hops.push({ node: 'a', at: middle });
    return [corner, middle];
  },
});

const sizes = fc.array(fc.tuple(fc.integer({ min: 20, max: 500 }), fc.integer({ min: 20, max: 300 })), {
  minLength: 1,
  maxLength: 8,
});

test('plans stand apart, within their size, and what each one draws moves with it', () => {
  fc.assert(
    fc.property(sizes, fc.integer({ min: 200, max: 1000 }), (all, widest) => {
      const plan = beside(
        all.map(([width, height]) => planOf(width, height)),
        widest,
      );
      const page = blank();
      const terminals = plan.draw(page);
      assert.equal(terminals.length, 2 * all.length);
      page.symbols.forEach(({ box, hit, at }, i) => {
        assert.deepEqual(hit, box);
        const label = page.labels[i];
        assert.deepEqual([label?.box, label?.at], [box, at]);
        assert.deepEqual(page.hops[i]?.at, at);
        assert.deepEqual(page.pieces[i]?.to, at);
        assert.deepEqual(terminals.slice(2 * i, 2 * i + 2), [{ x: box.x, y: box.y }, at]);
        assert.deepEqual(at, { x: box.x + box.width / 2, y: box.y + box.height / 2 });
        assert.ok(box.x + box.width <= plan.size.width && box.y + box.height <= plan.size.height);
        for (const { box: other } of page.symbols.slice(i + 1)) {
          const right = other.x >= box.x + box.width + margin || box.x >= other.x + other.width + margin;
          assert.ok(right || other.y >= box.y + box.height + margin);
        }
      });
    }),
  );
});

test('a row is never wider than there is room, unless one plan alone is', () => {
  fc.assert(
    fc.property(sizes, fc.integer({ min: 200, max: 1000 }), (all, widest) => {
      const { size } = beside(
        all.map(([width, height]) => planOf(width, height)),
        widest,
      );
      assert.ok(size.width <= Math.max(widest, ...all.map(([width]) => width)));
    }),
  );
});

test('one plan alone is drawn as it is, and costs add up', () => {
  const only = beside([planOf(100, 60, 7)], 640);
  assert.deepEqual([only.cost, only.size], [7, { width: 100, height: 60 }]);
  assert.equal(beside([planOf(10, 10, 7), planOf(10, 10, 5)], 640).cost, 12);
});
