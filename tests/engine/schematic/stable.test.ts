import assert from 'node:assert/strict';
import { test } from 'node:test';
import { lastSetting, settingAt, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { drawSchematic } from '../../../src/engine/schematic/index.ts';
import { build } from './build.ts';
import { drawings } from './random-drawings.ts';

/** All of a drawing that has a place, as a text: everything but the words and the lines inside the symbols. */
function geometry(circuit: Circuit, width: number): string {
  const drawing = drawSchematic(circuit, { width });
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return JSON.stringify(drawing, (key, value: unknown) =>
    key === 'text' || key === 'path' || key === 'filled' ? undefined : value,
  );
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
