// Shapes as IEC 60617 and school custom have them: a long thin line is a cell's positive plate, a short thick one its negative plate;
// a battery's cells stand in a row or are joined by a dashed line; a resistor is a rectangle, a variable one has an arrow through it; a
// lamp is a circle with a cross, a meter a circle with its letter. The zigzag is IEEE 315's.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { withValue } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, type Drawing, type DrawingStyle } from '../../../src/engine/schematic/index.ts';
import { drawings } from './random-drawings.ts';

type Symbol = Drawing['symbols'][number];

function symbol(line: string, id: string, style?: DrawingStyle): Symbol {
  const drawing = drawSchematic(parseCircuit(line), style);
  assert.ok(drawing.kind === 'drawing');
  const found = drawing.symbols.find((each) => each.id === id);
  assert.ok(found);
  return found;
}

/** The points of path data that is made of absolute M and L, each subpath a list of them; of a circle only where it begins. */
const subpaths = (path: string): { x: number; y: number }[][] =>
  path
    .split('M')
    .slice(1)
    .map((text) => text.replace(/[am].*|Z/, '').split('L'))
    .map((pairs) => pairs.map((pair) => pair.split(' ').map(Number)))
    .map((points) => points.map(([x = NaN, y = NaN]) => ({ x, y })));

const breadth = (points: readonly { x: number; y: number }[]): number =>
  Math.max(...points.map(({ y }) => y)) - Math.min(...points.map(({ y }) => y));

test('a cell has a long thin plate at its positive end and a short thick one at the other', () => {
  const cell = symbol('B1 1.5 V + R1 5 Ω', 'B1');
  assert.equal(cell.turn, 0, 'positive at the left');
  const [plate, ...others] = subpaths(cell.path).filter((points) =>
    points.every(({ x }) => x === points[0]?.x),
  );
  const [thick, ...rest] = subpaths(cell.filled);
  assert.ok(plate && thick && others.length === 0 && rest.length === 0);
  assert.ok((plate[0]?.x ?? 0) < 0 && thick.every(({ x }) => x > 0));
  assert.ok(breadth(plate) >= 2 * breadth(thick));
});

test('a battery has two pairs of plates, with dashes between them from three cells up', () => {
  const pairs = (line: string): number => subpaths(symbol(line, 'B1').filled).length;
  assert.equal(pairs('B1 1.5 V + R1 5 Ω'), 1);
  assert.equal(pairs('B1 2 × 1.5 V + R1 5 Ω'), 2);
  assert.equal(pairs('B1 3 × 1.5 V + R1 5 Ω'), 2);
  const two = subpaths(symbol('B1 2 × 1.5 V + R1 5 Ω', 'B1').path).length;
  assert.ok(subpaths(symbol('B1 3 × 1.5 V + R1 5 Ω', 'B1').path).length > two);
});

test('a supply is turned with its component: the positive plate is where the current leaves', () => {
  const left = symbol('B1 1.5 V + R1 5 Ω + B2 1.5 V', 'B2');
  const right = symbol('B1 1.5 V + R1 5 Ω + B2 1.5 V reversed', 'B2');
  assert.equal(Math.abs(left.turn - right.turn), 180);
  assert.notEqual(left.filled, right.filled);
});

test('a resistor is a rectangle in the wire, with an arrow through it if it is variable, and a zigzag by IEEE 315', () => {
  const fixed = symbol('B1 6 V + R1 5 Ω', 'R1');
  const [outline = []] = subpaths(fixed.path);
  assert.deepEqual(
    [new Set(outline.map(({ x }) => x)).size, new Set(outline.map(({ y }) => y)).size],
    [2, 2],
  );
  assert.equal(fixed.filled, '');
  const variable = symbol('B1 6 V + R1 [1..20] 5 Ω', 'R1');
  assert.ok(variable.path.startsWith(fixed.path) && variable.filled !== '');
  const zigzag = symbol('B1 6 V + R1 5 Ω', 'R1', { symbols: 'ansi' });
  assert.ok((subpaths(zigzag.path)[0]?.length ?? 0) >= 8);
});

test('a supply that can be varied has the same arrow through it, and as many cells at every setting', () => {
  const arrow = (variable: Symbol, fixed: Symbol): number[] => [
    subpaths(variable.path).length - subpaths(fixed.path).length,
    subpaths(variable.filled).length - subpaths(fixed.filled).length,
  ];
  const at = (setting: string): Symbol => symbol(`B1 ${setting} V + R1 5 Ω`, 'B1');
  assert.deepEqual(arrow(at('[0..12] 6'), at('6')), [1, 1]);
  assert.deepEqual(at('[0..12] 1'), at('[0..12] 6'));
  const resistor = (setting: string): Symbol => symbol(`B1 6 V + R1 ${setting} Ω`, 'R1');
  assert.deepEqual(arrow(resistor('[1..20] 5'), resistor('5')), [1, 1]);
});

test('a d.c. supply is its two terminals with their signs, which stay level however it is turned', () => {
  // The terminal (a small circle) and the polarity signs of IEC 60617-2; that pupils see them so is common practice.
  const rings = (path: string): number => path.split('a3 3 0 0 1 6 0').length - 1;
  for (const line of ['supply B1 6 V + R1 5 Ω', 'supply B1 1.5 V + R1 5 Ω']) {
    const supply = symbol(line, 'B1');
    assert.equal(rings(supply.path), 2);
    assert.equal(supply.filled, '', 'no plates');
    assert.ok(supply.path.includes('m-4 0h8m-4 -4v8') && supply.path.endsWith('m-4 0h8'));
  }
  const upright = symbol('B1 6 V + supply B2 3 V + R1 5 Ω + R2 5 Ω + R3 6 Ω', 'B2');
  assert.ok(upright.turn % 180 !== 0 && upright.path.endsWith('m-4 0h8'));
  const [plus, minus] = upright.path
    .split('M')
    .slice(-2)
    .map((text) => Number(text.split(' ')[1]?.replace(/m.*/, '')));
  assert.ok(
    plus !== undefined && minus !== undefined && plus !== minus,
    'the signs stand at their own terminals',
  );
});

test('a supply is drawn as what it is said to be, else as its e.m.f. has it, and no setting makes another of it', () => {
  const plates = (line: string): number => subpaths(symbol(line, 'B1').filled).length;
  assert.equal(plates('cell B1 9 V + R1 5 Ω'), 1);
  assert.equal(plates('battery B1 1.5 V + R1 5 Ω'), 2);
  for (const [line, volts] of [
    ['B1 1.5 V + R1 5 Ω', '6'],
    ['B1 6 V + R1 5 Ω', '1.5'],
    ['supply B1 6 V + R1 5 Ω', '1.5'],
  ] as const) {
    const circuit = parseCircuit(line);
    const [before, after] = [circuit, withValue(circuit, 'B1', volts)].map((each) => {
      const drawing = drawSchematic(each, { values: () => '' });
      assert.ok(drawing.kind === 'drawing');
      return drawing.symbols;
    });
    assert.deepEqual(after, before);
    const emf = line.includes('1.5') ? '1.5' : '6';
    const [back] = withValue(withValue(circuit, 'B1', volts), 'B1', emf).components;
    assert.ok(back?.kind === 'supply' && circuit.components[0]?.kind === 'supply');
    assert.equal(back.form, circuit.components[0].form, 'and back it is what it was');
  }
});

test('only what is made of a resistor changes with the standard', () => {
  // IEEE 315-1975, 2.1 and 2.1.10: thermistors are drawn on the resistor's zigzag (from memory).
  for (const id of ['R1', 'T1', 'LDR1']) {
    const [iec, ansi] = (['iec', 'ansi'] as const).map((symbols) =>
      symbol(`B1 6 V + ${id} 1 kΩ`, id, { symbols }),
    );
    assert.ok(iec && ansi && !iec.path.includes('L-11 8') && ansi.path.includes('L-11 8'), id);
    assert.deepEqual(ansi.box, iec.box);
  }
  const line = 'B1 6 V + S1 + A1 + L1 5 Ω + (R1 5 Ω ∥ V1)';
  for (const id of ['B1', 'S1', 'A1', 'L1', 'V1']) {
    assert.deepEqual(symbol(line, id), symbol(line, id, { symbols: 'ansi' }));
  }
});

test('a lamp is a circle with a cross, a meter a circle with its letter', () => {
  const lamp = symbol('B1 6 V + L1 5 Ω', 'L1');
  const circle = /M-14 0a14 14 0 0 1 28 0a14 14 0 0 1 -28 0/;
  assert.match(lamp.path, circle);
  assert.equal(subpaths(lamp.path).filter((points) => breadth(points) > 15).length, 2);
  for (const [id, letter] of [
    ['A1', 'A'],
    ['V1', 'V'],
  ] as const) {
    const meter = symbol('B1 6 V + A1 + (R1 5 Ω ∥ V1)', id);
    assert.match(meter.path, circle);
    assert.equal(meter.letter, letter);
  }
});

test('a switch has a lifted blade while it is open, and the same box when it is closed', () => {
  const open = symbol('B1 6 V + S1 + L1 5 Ω', 'S1');
  const closed = symbol('B1 6 V + S1 closed + L1 5 Ω', 'S1');
  const blade = (path: string): number => breadth(subpaths(path).at(-1) ?? []);
  assert.ok(blade(open.path) >= 9);
  assert.equal(blade(closed.path), 0);
  assert.deepEqual(open.box, closed.box);
});

test('all symbols are equally long, and lie within their boxes', () => {
  for (const { drawing } of drawings()) {
    for (const { id, at, box, path, filled } of drawing.symbols) {
      assert.equal(Math.max(box.width, box.height), 44, id);
      for (const { x, y } of subpaths(path + filled).flat()) {
        assert.ok(at.x + x >= box.x && at.x + x <= box.x + box.width, id);
        assert.ok(at.y + y >= box.y && at.y + y <= box.y + box.height, id);
      }
    }
  }
});
