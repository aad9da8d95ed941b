import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lastSetting, settingAt, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, type Drawing } from '../../../src/engine/schematic/index.ts';
import { build } from './build.ts';
import { withConditions } from '../topology/conditions.ts';
import { boxOf, isBridge, keyOf, wireLegs } from './plane.ts';
import { drawings } from './random-drawings.ts';

/** All of a drawing that has a place, as a text: everything but the words and the lines inside the symbols. */
function geometry(circuit: Circuit, width: number): string {
  const drawing = drawSchematic(circuit, { width });
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return JSON.stringify(drawing, (key, value: unknown) =>
    key === 'text' || key === 'path' || key === 'filled' ? undefined : value,
  );
}

/** What the wires of each node cover: their straight lines as long as may be, wherever they are cut. */
function covered(drawing: Drawing): readonly string[] {
  const lines = new Map<string, [from: number, to: number][]>();
  for (const leg of wireLegs(drawing).filter((each) => !isBridge(each))) {
    const { x, y, width, height } = boxOf(leg);
    const line = `${leg.node} ${height > 0 ? `x ${x}` : `y ${y}`}`;
    const [from, to] = height > 0 ? [y, y + height] : [x, x + width];
    lines.set(line, [...(lines.get(line) ?? []), [from, to]]);
  }
  return [...lines].flatMap(([line, pieces]) => {
    const whole: [from: number, to: number][] = [];
    for (const [from, to] of pieces.sort((a, b) => a[0] - b[0])) {
      const last = whole.at(-1);
      if (last?.[1] === from) last[1] = to;
      else whole.push([from, to]);
    }
    return whole.map(([from, to]) => `${line} from ${from} to ${to}`);
  });
}

/** All of a drawing that has a place, but what is drawn within the symbols and for the wires across them. */
function places(circuit: Circuit, width: number): unknown {
  const drawing = drawSchematic(circuit, { width });
  assert.ok(drawing.kind === 'drawing');
  const { symbols, labels, terminals, wires } = drawing;
  const joints = wires
    .filter(isBridge)
    .flatMap(({ lines }) => lines.flatMap((line) => [line[0], line.at(-1)]));
  const added = new Set(joints.map((point) => point && keyOf(point)));
  return {
    size: [drawing.width, drawing.height],
    symbols: symbols.map(({ id, at, turn, letter, box, hit }) => ({ id, at, turn, letter, box, hit })),
    labels,
    terminals,
    wires: [...covered(drawing)].sort(),
    dots: wires.flatMap(({ dots }) => dots.map(keyOf).filter((dot) => !added.has(dot))).sort(),
  };
}

/** The circuit with every switch and every slider at one end. */
function turned(circuit: Circuit, end: 'first' | 'last'): Circuit {
  return circuit.components.reduce((changed, component) => {
    if (component.kind === 'switch') return withValue(changed, component.id, end === 'last');
    const range = component.kind === 'resistor' ? component.range : undefined;
    if (!range) return changed;
    return withValue(changed, component.id, settingAt(range, end === 'last' ? lastSetting(range) : 0));
  }, circuit);
}

const some = drawings().filter((_, i) => i % 4 === 0);

test('the same circuit and style give the same drawing', () => {
  for (const { circuit, width, drawing } of some) {
    assert.equal(JSON.stringify(drawSchematic(circuit, { width })), JSON.stringify(drawing));
  }
});

test('turning the switches and sliders of a circuit to either end moves nothing', () => {
  for (const { circuit, width } of some) {
    const before = geometry(circuit, width);
    assert.equal(geometry(turned(circuit, 'first'), width), before);
    assert.equal(geometry(turned(circuit, 'last'), width), before);
  }
});

test('taking components out and putting wires across them moves nothing', () => {
  for (const { circuit, width } of some) {
    const whole = places(
      withConditions(circuit, () => undefined),
      width,
    );
    assert.deepEqual(places(circuit, width), whole);
    assert.deepEqual(
      places(
        withConditions(circuit, () => 'broken'),
        width,
      ),
      whole,
    );
    assert.deepEqual(
      places(
        withConditions(circuit, () => 'bridged'),
        width,
      ),
      whole,
    );
  }
});

test('a slider of any scale moves nothing on its whole way', () => {
  const ranges = [
    { min: '4', max: '40', step: '0.25' },
    { min: '1', max: '1000000', scale: 'log' },
    { min: '10', max: '1000', scale: 'E12' },
    { min: '0.51', max: '2', scale: 'E24' },
  ];
  for (const range of ranges) {
    const slider = { id: 'Rfog', kind: 'resistor', fields: { resistance: range.min, range } };
    const lamp = { id: 'Lquay', kind: 'lamp', fields: { resistance: '8' } };
    const circuit = build({
      series: [
        { id: 'B1', kind: 'supply', fields: { emf: '6' } },
        slider,
        { parallel: [lamp, { id: 'V1', kind: 'voltmeter' }] },
      ],
    });
    const first = circuit.components[1];
    assert.ok(first?.kind === 'resistor' && first.range);
    const before = geometry(circuit, 300);
    for (let setting = 0; setting <= lastSetting(first.range); setting++) {
      const set = withValue(circuit, 'Rfog', settingAt(first.range, setting));
      assert.equal(geometry(set, 300), before, `setting ${setting}`);
    }
  }
});

test('turning a supply moves nothing on its whole way, below 0 and into a single cell', () => {
  const line = 'B1 [-12..12 step 0.25] 6 V r [0..10 step 0.5] 1 Ω + Rfog 5 Ω + (L1 6 Ω ∥ V1)';
  const circuit = parseCircuit(line);
  for (const width of [300, 640]) {
    const before = geometry(circuit, width);
    for (const setting of ['-12', '-11.75 r 9.5', '0 r 0', '1.25', '12 r 10']) {
      assert.equal(geometry(withValue(circuit, 'B1', setting), width), before, setting);
    }
  }
});
