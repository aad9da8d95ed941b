import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lastSetting, settingAt, withValue } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, schematicSize } from '../../../src/engine/schematic/index.ts';
import { build } from './build.ts';
import { withConditions } from '../topology/conditions.ts';
import { geometry, places, turned } from './places.ts';
import { drawings } from './random-drawings.ts';

const some = drawings().filter((_, i) => i % 5 === 0);

test('the same circuit and style give the same drawing', () => {
  for (const { circuit, style, drawing } of some) {
    assert.equal(JSON.stringify(drawSchematic(circuit, style)), JSON.stringify(drawing));
  }
});

test('a drawing is as large as is found without drawing it', () => {
  for (const { circuit, style, drawing } of drawings()) {
    const { width, height } = schematicSize(circuit, style) ?? {};
    assert.deepEqual({ width, height }, { width: drawing.width, height: drawing.height });
  }
  assert.equal(schematicSize({ components: [] }), undefined);
});

test('turning the switches and sliders of a circuit to either end moves nothing', () => {
  for (const { circuit, style } of some) {
    const before = geometry(circuit, style);
    assert.equal(geometry(turned(circuit, 'first'), style), before);
    assert.equal(geometry(turned(circuit, 'last'), style), before);
  }
});

test('taking components out and putting wires across them moves nothing', () => {
  for (const { circuit, style } of some) {
    const whole = places(
      withConditions(circuit, () => undefined),
      style,
    );
    assert.deepEqual(places(circuit, style), whole);
    assert.deepEqual(
      places(
        withConditions(circuit, () => 'broken'),
        style,
      ),
      whole,
    );
    assert.deepEqual(
      places(
        withConditions(circuit, () => 'bridged'),
        style,
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
    const before = geometry(circuit, { width: 300 });
    for (let setting = 0; setting <= lastSetting(first.range); setting++) {
      const set = withValue(circuit, 'Rfog', settingAt(first.range, setting));
      assert.equal(geometry(set, { width: 300 }), before, `setting ${setting}`);
    }
  }
});

test('turning a supply moves nothing on its whole way, below 0 and into a single cell', () => {
  const line = 'B1 [-12..12 step 0.25] 6 V r [0..10 step 0.5] 1 Ω + Rfog 5 Ω + (L1 6 Ω ∥ V1)';
  const circuit = parseCircuit(line);
  for (const width of [300, 640]) {
    const before = geometry(circuit, { width });
    for (const setting of ['-12', '-11.75 r 9.5', '0 r 0', '1.25', '12 r 10']) {
      assert.equal(geometry(withValue(circuit, 'B1', setting), { width }), before, setting);
    }
  }
});
