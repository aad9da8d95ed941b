import assert from 'node:assert/strict';
import type { Point } from '../../../src/engine/schematic/index.ts';
import type { Law } from './law.ts';
import { isBridge, keyOf, wiperEnds } from './plane.ts';

/** How what is taken out and what is bridged is drawn. */
export const conditionLaws: readonly Law[] = [
  {
    name: 'across a component stands a wire exactly where it is bridged, from dot to dot on the side without its label',
    check: (drawing, { components }) => {
      const wires = new Map(drawing.wires.map((one) => [one.node, one]));
      const bridged = components.filter(({ condition }) => condition === 'bridged');
      assert.deepEqual(
        [...wires.keys()].filter((node) => isBridge({ node })).sort(),
        bridged.map(({ id }) => `${id} bridge`).sort(),
      );
      for (const { id, from, to } of bridged) {
        const { lines: [line = [], ...others] = [], dots = [] } = wires.get(`${id} bridge`) ?? {};
        const symbol = drawing.symbols.find((one) => one.id === id);
        const label = drawing.labels.find((one) => one.id === id);
        const [, corner] = line;
        assert.ok(symbol && label && corner);
        // That across a part of a track ends at the wire of the contact, which may have nothing else there to make a dot.
        const isPart = wiperEnds(symbol, drawing).length > 0;
        assert.ok(line.length === (isPart ? 3 : 4) && others.length === 0 && dots.length === 0, id);
        const ends = (node: string): readonly string[] =>
          [
            ...(wires.get(node)?.dots ?? []),
            ...(isPart ? (wires.get(node)?.lines.flatMap((each) => each.slice(-1)) ?? []) : []),
          ].map(keyOf);
        const joined = [line[0], line.at(-1)].flatMap((end) =>
          [...new Set([from, to])].filter((node) => end && ends(node).includes(keyOf(end))),
        );
        assert.deepEqual(joined.sort(), [from, to].sort(), id);
        const upright = symbol.box.height > symbol.box.width;
        const aside = (point: Point): number =>
          Math.sign(upright ? point.x - symbol.at.x : point.y - symbol.at.y);
        assert.equal(
          aside(corner),
          -aside({ x: label.box.x + label.box.width / 2, y: label.box.y + label.box.height / 2 }),
          id,
        );
      }
    },
  },
  {
    name: 'a component is between two open ends exactly where it is taken out, and touches neither',
    check: (drawing, { components }) => {
      for (const { id, condition } of components) {
        const symbol = drawing.symbols.find((one) => one.id === id);
        assert.ok(symbol);
        assert.equal(symbol.condition, condition, id);
        assert.equal(symbol.ends !== '', condition === 'broken', id);
        if (condition !== 'broken') continue;
        const upright = symbol.box.height > symbol.box.width;
        // A part of a track is shorter; the arrow onto it stays where it is.
        const isPart = wiperEnds(symbol, drawing).length > 0;
        const [along, across] = isPart ? [8, 8] : [16, Infinity];
        for (const [, x, y] of (symbol.path + (isPart ? '' : symbol.filled))
          .replace(/a[^MLZ]*/g, '')
          .matchAll(/([-\d.]+) ([-\d.]+)(?=[MLZ]|$)/g)) {
          const [u, v] = (upright ? [y, x] : [x, y]).map((each) => Math.abs(Number(each)));
          assert.ok((u ?? 0) <= along || (v ?? 0) > across, `${id}: ${symbol.path}`);
        }
      }
    },
  },
];
