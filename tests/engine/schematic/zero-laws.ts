import assert from 'node:assert/strict';
import type { Law } from './law.ts';
import { boxOf, touches, wireLegs } from './plane.ts';

/** The laws of the 0 V mark. */
export const zeroLaws: readonly Law[] = [
  {
    name: 'the 0 V mark is drawn where there is one, on a wire of its node',
    check: (drawing, { components, zero }) => {
      const isJoined = components.some(({ from, to }) => from !== to && (from === zero || to === zero));
      assert.equal(drawing.mark?.node, isJoined ? zero : undefined);
      const { mark } = drawing;
      if (!mark) return;
      const point = { ...mark.at, width: 0, height: 0 };
      const through = wireLegs(drawing).filter((leg) => touches(boxOf(leg), point));
      assert.deepEqual(
        through.map(({ node }) => node),
        [zero],
      );
    },
  },
  {
    name: 'the 0 V mark and its text touch no symbol, no label and no wire but its own, and lie within the frame',
    check: (drawing) => {
      const { mark, width, height } = drawing;
      if (!mark) return;
      for (const { id, box } of [...drawing.symbols, ...drawing.labels])
        for (const own of [mark.box, mark.textBox]) assert.ok(!touches(own, box), `the mark and ${id}`);
      assert.ok(!touches(mark.box, mark.textBox));
      const point = { ...mark.at, width: 0, height: 0 };
      for (const leg of wireLegs(drawing)) {
        assert.ok(!touches(boxOf(leg), mark.textBox), `the text of the mark and ${leg.node}`);
        if (!touches(boxOf(leg), point))
          assert.ok(!touches(boxOf(leg), mark.box), `the mark and ${leg.node}`);
      }
      for (const box of [mark.box, mark.textBox])
        assert.ok(box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height);
    },
  },
];
