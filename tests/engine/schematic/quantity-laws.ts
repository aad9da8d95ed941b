import assert from 'node:assert/strict';
import { isSupply } from '../../../src/engine/circuit/index.ts';
import type { QuantityArrow } from '../../../src/engine/schematic/index.ts';
import type { Law } from './law.ts';
import { webFlow } from './web-flow.ts';
import { boxOf, isBridge, lengthOf, touches, wireLegs } from './plane.ts';

const idOf = ({ name }: QuantityArrow): string => name.slice(2);

/** How the currents and p.d.s that are asked for are written. */
export const quantityLaws: readonly Law[] = [
  {
    name: 'every arrow has the symbol of its quantity nearby, and every quantity its arrow',
    check: ({ arrows = [], labels }) => {
      const written = labels.filter(({ role }) => role === 'quantity');
      assert.deepEqual(written.map(({ id }) => id).sort(), arrows.map(({ name }) => name).sort());
      for (const { name, box } of arrows) {
        const symbol = written.find(({ id }) => id === name);
        const reading = labels.find(({ id, role }) => id === name && role === 'reading');
        const near = { x: box.x - 16, y: box.y - 16, width: box.width + 32, height: box.height + 32 };
        assert.ok(
          [symbol, reading].some((each) => each && touches(each.box, near)),
          name,
        );
      }
    },
  },
  {
    name: 'the arrow of a current stands on a wire of its component and of no other, and on it nothing else but that current flows',
    check: ({ arrows = [], symbols, ...drawing }, circuit) => {
      const { components } = circuit;
      const flow = webFlow(circuit);
      for (const arrow of arrows.filter(({ kind }) => kind === 'current')) {
        const component = components.find(({ id }) => id === idOf(arrow));
        const symbol = symbols.find(({ id }) => id === idOf(arrow));
        assert.ok(component && symbol);
        const through = wireLegs({ ...drawing, symbols }).filter((leg) => touches(boxOf(leg), arrow.box));
        assert.equal(through.length, 1, arrow.name);
        assert.ok([component.from, component.to].includes(through[0]?.node ?? ''), arrow.name);
        const runs = drawing.ribbons.filter(({ points }) =>
          points
            .slice(1)
            .some((to, i) =>
              touches(boxOf({ from: points[i] ?? to, to }), { ...arrow.at, width: 0, height: 0 }),
            ),
        );
        assert.equal(runs.length, 1);
        const carried = runs[0]?.carries.reduce((sum, { id, sign }) => sum + sign * (flow.get(id) ?? NaN), 0);
        const own = flow.get(component.id) ?? NaN;
        assert.ok(Math.abs(Math.abs(carried ?? NaN) - Math.abs(own)) < 1e-9, `${arrow.name} is not alone`);
      }
    },
  },
  {
    name: 'the arrow of a current points from `from` to `to` through its component, and out of the `from` of a supply',
    check: ({ arrows = [], symbols, wires }, { components }) => {
      for (const { name, kind, at, filled } of arrows) {
        if (kind !== 'current') continue;
        const component = components.find(({ id }) => `I_${id}` === name);
        const symbol = symbols.find(({ id }) => `I_${id}` === name);
        assert.ok(component && symbol);
        if (component.from === component.to) continue;
        const [, x = '', y = ''] = /^M([-\d.]+) ([-\d.]+)/.exec(filled) ?? [];
        const towards = Number(x) * (symbol.at.x - at.x) + Number(y) * (symbol.at.y - at.y) > 0;
        const point = { ...at, width: 0, height: 0 };
        const node = wires
          .filter((each) => !isBridge(each))
          .find(({ lines }) =>
            lines.some((line) =>
              line.slice(1).some((to, i) => touches(boxOf({ from: line[i] ?? to, to }), point)),
            ),
          )?.node;
        assert.equal(towards, (node === component.from) !== isSupply(component), name);
      }
    },
  },
  {
    name: 'the line of a p.d. lies beside its component, as long as that, and touches nothing',
    check: ({ arrows = [], symbols, labels, ...drawing }) => {
      for (const { name, kind, at, box } of arrows) {
        for (const other of [...labels, ...symbols])
          assert.ok(!touches(other.box, box), `${name} and ${other.id}`);
        for (const other of arrows) assert.ok(other.name === name || !touches(other.box, box), other.name);
        if (kind === 'current') continue;
        const symbol = symbols.find(({ id }) => `V_${id}` === name);
        assert.ok(symbol);
        const upright = symbol.box.height > symbol.box.width;
        assert.equal(upright ? at.y : at.x, upright ? symbol.at.y : symbol.at.x, name);
        assert.ok(lengthOf({ from: at, to: symbol.at }) <= 40, name);
        assert.ok(Math.max(box.width, box.height) >= Math.max(symbol.box.width, symbol.box.height));
        for (const leg of wireLegs({ ...drawing, arrows, symbols, labels }))
          assert.ok(!touches(boxOf(leg), box), `${name} and ${leg.node}`);
      }
    },
  },
  {
    name: 'arrows lie within the frame and have no dot on them',
    check: ({ arrows = [], width, height, wires }) => {
      for (const { name, box } of arrows) {
        assert.ok(
          box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height,
          name,
        );
        for (const dot of wires.flatMap(({ dots }) => dots))
          assert.ok(!touches(box, { ...dot, width: 0, height: 0 }), name);
      }
    },
  },
];
