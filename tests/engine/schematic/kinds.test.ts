import assert from 'node:assert/strict';
import { test } from 'node:test';
import { thinSpace } from '../../../src/engine/quantity/index.ts';
import { withValue } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { describeCircuit, drawSchematic, type PlacedSymbol } from '../../../src/engine/schematic/index.ts';

function symbols(line: string): readonly PlacedSymbol[] {
  const drawing = drawSchematic(parseCircuit(line));
  assert.ok(drawing.kind === 'drawing');
  return drawing.symbols;
}
const symbol = (line: string, id: string): PlacedSymbol => {
  const found = symbols(line).find((each) => each.id === id);
  assert.ok(found);
  return found;
};

const lines = [
  'B1 6 V + D1',
  'B1 6 V + LED1',
  'B1 6 V + T1 1 kΩ',
  'B1 6 V + LDR1 1 kΩ',
  'B1 6 V + F1 1 A',
  'B1 6 V + H1 12 Ω',
  'B1 6 V + M1 12 Ω',
  'B1 6 V + push S1',
  'B1 6 V + R1 12 Ω',
  'B1 6 V + L1 12 Ω',
];

test('every kind has a symbol of its own', () => {
  const paths = lines.map((line) => {
    const found = symbols(line).find(({ id }) => id !== 'B1');
    return `${found?.path ?? ''} ${found?.filled ?? ''} ${found?.letter ?? ''}`;
  });
  assert.equal(new Set(paths).size, lines.length);
});

test('a diode and an LED point where the current may go, and the other way round where they are turned round', () => {
  for (const id of ['D1', 'LED1']) {
    const [along, against] = [symbol(`B1 6 V + ${id}`, id), symbol(`B1 6 V + ${id} reversed`, id)];
    assert.equal(Math.abs(along.turn - against.turn), 180);
    assert.notEqual(along.path, against.path);
  }
});

test('a thermistor and a fuse, which have no front, are drawn the same both ways', () => {
  assert.equal(symbol('B1 6 V + T1 1 kΩ', 'T1').path, symbol('B1 6 V + T1 1 kΩ reversed', 'T1').path);
  assert.equal(symbol('B1 6 V + F1 1 A', 'F1').path, symbol('B1 6 V + F1 1 A reversed', 'F1').path);
});

test('pushing a push switch and blowing a fuse changes their symbols, and moves nothing', () => {
  const circuit = parseCircuit('B1 6 V + push S1 + F1 2 A + R1 12 Ω');
  const before = drawSchematic(circuit);
  const after = drawSchematic(withValue(withValue(circuit, 'S1', true), 'F1', 'blown'));
  assert.ok(before.kind === 'drawing' && after.kind === 'drawing');
  const boxes = (all: readonly PlacedSymbol[]): unknown =>
    all.map(({ id, at, box, hit }) => ({ id, at, box, hit }));
  assert.deepEqual(boxes(after.symbols), boxes(before.symbols));
  assert.deepEqual(after.wires, before.wires);
  const changed = after.symbols.filter((each, place) => each.path !== before.symbols[place]?.path);
  assert.deepEqual(changed.map(({ id }) => id).sort(), ['F1', 'S1']);
});

test('every kind has its name in words', () => {
  assert.equal(
    describeCircuit(
      parseCircuit(
        'B1 6 V + push S1 closed + F1 2 A + (D1 ∥ LED1 2 V 20 mA) + (T1 1 kΩ ∥ LDR1 2 kΩ) + (H1 4 Ω ∥ M1 6 V 6 W) + L1 6 V 3 W filament',
      ),
    ).replaceAll(thinSpace, ' '),
    'From the positive terminal of battery B1 of 6 V: closed push switch S1, then fuse F1 of 2 A, then two parallel branches: branch 1 is diode D1; ' +
      'branch 2 is light-emitting diode LED1 of 2 V and 20 mA; where branches 1 and 2 join, two parallel branches: branch 1 is thermistor T1 of 1 kΩ; ' +
      'branch 2 is light-dependent resistor LDR1 of 2 kΩ; where branches 1 and 2 join, two parallel branches: branch 1 is heater H1 of 4 Ω; ' +
      'branch 2 is motor M1 of 6 V and 6 W; where branches 1 and 2 join, filament lamp L1 of 6 V and 3 W, then back to B1.',
  );
});
