import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawingToSVG } from '../../../src/engine/picture/index.ts';
import { drawSchematic, type Drawing, type WrittenQuantity } from '../../../src/engine/schematic/index.ts';
import './web-drawings.ts';
import './with-quantities.ts';
import { laws } from './laws.ts';

const wanted = (names: string, reading = ''): WrittenQuantity[] =>
  names.split(' ').map((name) => ({
    name,
    id: name.slice(2),
    kind: name.startsWith('I') ? 'current' : 'voltage',
    text: name,
    reading,
  }));

function drawn(line: string, quantities: WrittenQuantity[], width = 640): Drawing {
  const circuit = parseCircuit(line);
  const drawing = drawSchematic(circuit, { width, quantities });
  assert.ok(drawing.kind === 'drawing');
  for (const law of laws) law.check(drawing, circuit);
  return drawing;
}
const at = (drawing: Drawing, id: string) => drawing.symbols.find((each) => each.id === id)?.at;

test('exactly what is asked for is written, a reading beside its symbol', () => {
  const drawing = drawn('B1 6 V + R1 12 Ω + R2 24 Ω', [
    ...wanted('I_R1 V_R1'),
    ...wanted('V_R2', '= 4.00 V'),
  ]);
  const written = drawing.labels.filter(({ role }) => role === 'quantity' || role === 'reading');
  assert.deepEqual(written.map(({ role, text }) => `${role} ${text}`).sort(), [
    'quantity I_R1',
    'quantity V_R1',
    'quantity V_R2',
    'reading = 4.00 V',
  ]);
  assert.equal(drawing.arrows?.length, 3);
});

test('nothing is drawn of quantities where none are asked for', () => {
  const line = 'B1 6 V + (R1 12 Ω ∥ R2 24 Ω)';
  assert.deepEqual(drawn(line, []), drawSchematic(parseCircuit(line)));
  assert.ok(!('arrows' in drawn(line, [])));
});

test('branches stay in line where the current of one of them is written', () => {
  for (const width of [300, 640]) {
    const drawing = drawn('B1 6 V + (R1 12 Ω ∥ R2 24 Ω ∥ V1)', wanted('I_R2', '= 0.250 A'), width);
    const [one, other] = [at(drawing, 'R1'), at(drawing, 'R2')];
    assert.ok(one && other && (one.x === other.x || one.y === other.y));
  }
});

test('the arrow of a bridged component’s current stands inside the wire across it, where no other current is', () => {
  const drawing = drawn('B1 6 V + R1 12 Ω bridged + R2 24 Ω', wanted('I_R1 I_R2'));
  const across = drawing.wires.find(({ node }) => node === 'R1 bridge')?.lines[0] ?? [];
  const arrow = drawing.arrows?.find(({ name }) => name === 'I_R1');
  assert.ok(arrow);
  const [from = 0, to = 0] = across.map(({ x }) => x).sort((a, b) => a - b);
  const most = Math.max(...across.map(({ x }) => x));
  assert.ok(from < arrow.box.x && arrow.at.x < most && from <= to);
});

test('a ribbon’s arrowhead stands clear of the arrow of a current', () => {
  for (const line of ['B1 6 V + R1 12 Ω', 'B1 6 V + A1 + (R1 12 Ω ∥ (A2 + L1 8 Ω)) + R2 5 Ω']) {
    const drawing = drawn(line, wanted('I_B1 I_R1', '= 0.500 A'));
    const ribbons = drawing.ribbons.flatMap(({ arrows }) => arrows.map((each) => each.at));
    assert.ok(ribbons.length > 0);
    for (const { at: own } of drawing.arrows ?? [])
      for (const { x, y } of ribbons) assert.ok(Math.abs(x - own.x) + Math.abs(y - own.y) >= 24);
  }
});

test('an SVG has the arrows, the symbols in italics with upright subscripts, and the readings', () => {
  const svg = drawingToSVG(drawn('B1 6 V + R1 12 Ω', [...wanted('I_R1'), ...wanted('V_R1', '= 6 V')]));
  assert.match(svg, /data-arrow="I_R1"/);
  assert.match(svg, /data-quantity="V_R1" font-style="italic"[^>]*>V<tspan[^>]*font-style="normal">R1</);
  assert.match(svg, /data-reading="V_R1"[^>]*>= 6 V</);
});
