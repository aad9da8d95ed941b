import assert from 'node:assert/strict';
import { terminalRadius } from '../../../src/engine/schematic/index.ts';
import { conditionLaws } from './condition-laws.ts';
import type { Law } from './law.ts';
import {
  boxOf,
  crossingOf,
  endsOf,
  firstTouch,
  forkEnds,
  hopsOf,
  isBridge,
  keyOf,
  legsOf,
  lengthOf,
  touches,
  wiperEnds,
  wireLegs,
} from './plane.ts';
import { quantityLaws } from './quantity-laws.ts';
import { zeroLaws } from './zero-laws.ts';

const all: Law[] = [];
const law = (name: string, check: Law['check']): void => {
  all.push({ name, check });
};

law('every component has one symbol, one label, and at most one value', (drawing, { components }) => {
  const ids = components.map(({ id }) => id).sort();
  assert.deepEqual(drawing.symbols.map(({ id }) => id).sort(), ids);
  const named = drawing.labels.filter(({ role }) => role === 'label');
  assert.deepEqual(named.map(({ id }) => id).sort(), ids);
  const valued = drawing.labels.filter(({ role }) => role === 'value').map(({ id }) => id);
  assert.equal(new Set(valued).size, valued.length);
});

law('every wire and every ribbon is level or upright, and turns only at right angles', (drawing) => {
  for (const points of [
    ...drawing.wires.flatMap(({ lines }) => lines),
    ...drawing.ribbons.map((run) => run.points),
  ]) {
    const legs = legsOf(points);
    assert.ok(legs.length > 0);
    for (const [i, leg] of legs.entries()) {
      const upright = leg.from.x === leg.to.x;
      assert.ok(upright !== (leg.from.y === leg.to.y), keyOf(leg.from));
      const next = legs[i + 1];
      if (next) assert.notEqual(upright, next.from.x === next.to.x);
    }
  }
});

law('no symbol touches another, no label another, and no label a symbol', (drawing) => {
  const boxes = [
    ...drawing.symbols.map(({ id, box }) => ({ id, box })),
    ...drawing.labels.map(({ id, role, box }) => ({ id: `${role} of ${id}`, box })),
  ];
  assert.equal(
    firstTouch(
      boxes,
      ({ box }) => box,
      ({ id }) => id,
    ),
    undefined,
  );
});

law('a wire touches no label, and of symbols only the ends of its own', (drawing) => {
  for (const leg of wireLegs(drawing)) {
    for (const { id, box } of drawing.labels)
      assert.ok(!touches(boxOf(leg), box), `${leg.node} and the label of ${id}`);
    for (const symbol of drawing.symbols) {
      if (!touches(boxOf(leg), symbol.box)) continue;
      const ends = endsOf(symbol).map(keyOf);
      const mine = [leg.from, leg.to].filter((end) => ends.includes(keyOf(end)));
      assert.equal(mine.length, 1, `${leg.node} and ${symbol.id}`);
      const inside = lengthOf({ from: mine[0] ?? leg.from, to: symbol.at }) + lengthOf(leg);
      const other = mine[0] === leg.from ? leg.to : leg.from;
      assert.equal(lengthOf({ from: other, to: symbol.at }), inside, `${leg.node} runs into ${symbol.id}`);
    }
  }
});

law(
  'wires of different nodes do not touch, unless one hops over the other; those of one node, and one across a component, only end to end',
  (drawing) => {
    const legs = wireLegs(drawing);
    const crossings: string[] = [];
    for (const [i, a] of legs.entries()) {
      for (const b of legs.slice(i + 1)) {
        if (!touches(boxOf(a), boxOf(b))) continue;
        const point = crossingOf(a, b);
        if (point) {
          crossings.push(keyOf(point));
          continue;
        }
        if (!isBridge(a)) assert.ok(a.node === b.node || isBridge(b), `${a.node} and ${b.node}`);
        const common = [a.from, a.to].filter((end) =>
          [b.from, b.to].some((other) => keyOf(other) === keyOf(end)),
        );
        assert.equal(common.length, 1);
      }
    }
    assert.deepEqual(
      hopsOf(drawing)
        .map(({ at }) => keyOf(at))
        .sort(),
      crossings.sort(),
    );
  },
);

law('nothing but the two wires that cross comes near a hop', (drawing) => {
  for (const { at, node } of hopsOf(drawing)) {
    const box = { x: at.x - 7, y: at.y - 7, width: 14, height: 14 };
    for (const each of [...drawing.symbols, ...drawing.labels])
      assert.ok(!touches(each.box, box), `the hop of ${node} and ${each.id}`);
    const through = wireLegs(drawing).filter((leg) => touches(boxOf(leg), box));
    assert.equal(through.length, 2, node);
    for (const leg of through) {
      assert.ok(lengthOf(leg) >= 14 && touches(boxOf(leg), { ...at, width: 0, height: 0 }), node);
    }
    assert.ok(through.some((leg) => leg.node === node));
  }
});

law('the wires of a node hang together, and reach every component of it', (drawing, { components }) => {
  for (const { node, lines } of drawing.wires.filter((wires) => !isBridge(wires))) {
    const group = new Map<string, string>();
    const root = (key: string): string => {
      const parent = group.get(key);
      return parent === undefined || parent === key ? key : root(parent);
    };
    for (const { from, to } of lines.flatMap((line) => legsOf(line))) {
      group.set(root(keyOf(from)), root(keyOf(to)));
      if (!group.has(keyOf(to))) group.set(keyOf(to), root(keyOf(to)));
    }
    const points = [...group.keys()];
    assert.equal(new Set(points.map(root)).size, 1, node);
    for (const symbol of drawing.symbols) {
      const reached = [...endsOf(symbol), ...forkEnds(symbol, drawing), ...wiperEnds(symbol, drawing)].filter(
        (end) => points.includes(keyOf(end)),
      ).length;
      const ends = components.filter(({ id }) => id === symbol.id).flatMap(({ from, to }) => [from, to]);
      assert.equal(reached, ends.filter((end) => end === node).length, `${node} at ${symbol.id}`);
    }
  }
});

law(
  'a dot stands where three or more wires meet, and at most one more of each labelled point, on the wires of its node',
  (drawing) => {
    const ends = new Map<string, number>();
    for (const { from, to } of wireLegs(drawing)) {
      for (const key of [keyOf(from), keyOf(to)]) ends.set(key, (ends.get(key) ?? 0) + 1);
    }
    const meetings = [...ends].filter(([, count]) => count > 2).map(([key]) => key);
    const dots = drawing.wires.flatMap(({ node, dots }) => dots.map((at) => ({ node, at })));
    const lettered = drawing.labels.filter(({ role }) => role === 'point').map(({ id }) => id);
    const added = dots.filter(({ at }) => !meetings.includes(keyOf(at)));
    assert.equal(dots.length - added.length, meetings.length);
    assert.equal(new Set(added.map(({ node }) => node)).size, added.length);
    for (const { node } of added) assert.ok(lettered.includes(node), node);
    for (const { node, at } of dots) {
      const own = wireLegs(drawing).filter((leg) => leg.node === node);
      assert.ok(
        !isBridge({ node }) && own.some((leg) => touches(boxOf(leg), { ...at, width: 0, height: 0 })),
        node,
      );
    }
  },
);

law('everything lies within the frame', (drawing) => {
  const boxes = [
    ...drawing.symbols.flatMap(({ box, hit }) => [box, hit]),
    ...drawing.labels.map(({ box }) => box),
    ...wireLegs(drawing).map(boxOf),
    ...drawing.terminals.map(({ x, y }) => ({
      x: x - terminalRadius,
      y: y - terminalRadius,
      width: 2 * terminalRadius,
      height: 2 * terminalRadius,
    })),
  ];
  for (const { x, y, width, height } of boxes) {
    assert.ok(x >= 0 && y >= 0 && x + width <= drawing.width && y + height <= drawing.height);
    assert.ok([x, y, width, height].every(Number.isFinite));
  }
});

law(
  'a pointer finds one component at most, in a box of at least 24 by 24 pixels round its symbol',
  (drawing) => {
    for (const { id, box, hit } of drawing.symbols) {
      assert.ok(hit.width >= 24 && hit.height >= 24, id);
      assert.ok(
        hit.x <= box.x &&
          hit.y <= box.y &&
          hit.x + hit.width >= box.x + box.width &&
          hit.y + hit.height >= box.y + box.height,
        id,
      );
    }
    const inner = drawing.symbols.map(({ id, hit }) => ({
      id,
      box: { x: hit.x + 0.5, y: hit.y + 0.5, width: hit.width - 1, height: hit.height - 1 },
    }));
    assert.equal(
      firstTouch(
        inner,
        ({ box }) => box,
        ({ id }) => id,
      ),
      undefined,
    );
  },
);

law('a network has an open circle at either end, a closed circuit has none', (drawing, { terminals }) => {
  assert.equal(drawing.terminals.length, terminals ? 2 : 0);
  const ends = wireLegs(drawing).flatMap(({ from, to }) => [from, to]);
  for (const terminal of drawing.terminals) {
    assert.equal(ends.filter((end) => lengthOf({ from: end, to: terminal }) === terminalRadius).length, 1);
  }
});

/** The laws of a legible schematic. */
export const laws: readonly Law[] = [...all, ...conditionLaws, ...zeroLaws, ...quantityLaws];
