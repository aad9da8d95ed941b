import assert from 'node:assert/strict';
import { test } from 'node:test';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, type Drawing, type DrawingStyle } from '../../../src/engine/schematic/index.ts';

function drawn(line: string, style?: DrawingStyle): Drawing {
  const drawing = drawSchematic(parseCircuit(line), style);
  if (drawing.kind === 'irreducible') throw new Error(drawing.reason);
  return drawing;
}

const symbol = (drawing: Drawing, id: string): Drawing['symbols'][number] => {
  const found = drawing.symbols.find((each) => each.id === id);
  assert.ok(found);
  return found;
};
const texts = (drawing: Drawing, id: string): string[] =>
  drawing.labels.filter((label) => label.id === id).map(({ text }) => text);

test('a circuit without components is not drawn', () => {
  const result = drawSchematic({ components: [] });
  assert.ok(result.kind === 'irreducible' && result.reason === 'empty');
});

test('the supply is at the top where there is the width, its positive terminal where the current sets out', () => {
  const drawing = drawn('B1 6 V + A1 + (R1 12 Ω ∥ R2 8 Ω) + R3 5 Ω');
  const { at, turn } = symbol(drawing, 'B1');
  assert.equal(turn, 0);
  assert.ok(drawing.symbols.every((each) => each.id === 'B1' || each.at.y > at.y));
  assert.ok(symbol(drawing, 'A1').at.x < symbol(drawing, 'R1').at.x);
  assert.ok(symbol(drawing, 'R1').at.x < symbol(drawing, 'R3').at.x);
});

test('parallel branches are evenly spaced', () => {
  for (const width of [300, 640]) {
    const drawing = drawn('B1 6 V + (R1 1 Ω ∥ L2 2 Ω ∥ (A1 + R3 3 Ω) ∥ R4 4 Ω)', { width });
    const heights = ['R1', 'L2', 'A1', 'R4'].map((id) => symbol(drawing, id).at.y);
    const steps = heights.slice(1).map((y, i) => y - (heights[i] ?? NaN));
    assert.deepEqual(new Set(steps).size, 1);
  }
});

test('the branches of a small circuit are as far from each other as from the supply', () => {
  for (const line of ['B1 6 V + (R1 1 Ω ∥ R2 2 Ω)', 'B1 6 V + (L1 1 Ω ∥ (A1 + L2 2 Ω) ∥ V1)']) {
    const drawing = drawn(line);
    const heights = [...new Set(drawing.symbols.map(({ at }) => at.y))].sort((a, b) => a - b);
    const steps = heights.slice(1).map((y, i) => y - (heights[i] ?? NaN));
    assert.ok(Math.max(...steps) - Math.min(...steps) <= 2, `${line}: ${steps.join(', ')}`);
  }
});

test('a loop without a junction is one ribbon, which begins and ends on the straight', () => {
  for (const line of ['B1 6 V + R1 1 Ω', 'B1 6 V + S1 + A1 + R1 1 Ω + R2 2 Ω']) {
    const [run, ...others] = drawn(line).ribbons;
    assert.ok(run && others.length === 0);
    const [first, second, last, before] = [0, 1, -1, -2].map((i) => run.points.at(i));
    assert.deepEqual(first, last);
    assert.ok(first && second && before);
    assert.ok(
      (first.x === second.x && first.x === before.x) || (first.y === second.y && first.y === before.y),
    );
  }
});

test('components in series are evenly spaced along their side', () => {
  const drawing = drawn(
    'B1 12 V + R1 2 Ω + R2 4 Ω + R3 6 Ω + R4 8 Ω + R5 10 Ω + R6 12 Ω + R7 14 Ω + R8 16 Ω',
  );
  const bottom = Math.max(...drawing.symbols.map(({ at }) => at.y));
  const along = drawing.symbols.filter(({ at }) => at.y === bottom).map(({ at }) => at.x);
  const steps = along.slice(1).map((x, i) => x - (along[i] ?? NaN));
  assert.ok(along.length >= 3 && Math.max(...steps) - Math.min(...steps) <= 1);
});

test('a voltmeter stands outermost beside what it is across, however it was written', () => {
  for (const group of ['(V1 ∥ R1 12 Ω ∥ R2 8 Ω)', '(R1 12 Ω ∥ V1 ∥ R2 8 Ω)']) {
    const drawing = drawn(`B1 6 V + A1 + ${group}`);
    const lowest = drawing.symbols.reduce((a, b) => (b.at.y > a.at.y ? b : a));
    assert.equal(lowest.id, 'V1');
  }
});

test('a narrow page makes it grow downwards, a wide one landscape', () => {
  const lines = [
    'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ (A2 + L1 8 Ω))',
    'B1 12 V + R1 2 Ω + R2 4 Ω + R3 6 Ω + R4 8 Ω + R5 10 Ω + R6 12 Ω + R7 14 Ω + R8 16 Ω',
    'B1 6 V + (R1 10 Ω ∥ R2 20 Ω ∥ R3 30 Ω ∥ R4 40 Ω ∥ R5 50 Ω ∥ R6 60 Ω)',
    'B1 9 V + (R1 6 Ω ∥ R2 12 Ω) + (R3 6 Ω ∥ R4 12 Ω ∥ R5 8 Ω) + (R6 6 Ω ∥ R7 12 Ω)',
  ];
  for (const line of lines) {
    const narrow = drawn(line, { width: 300 });
    const wide = drawn(line, { width: 640 });
    assert.ok(narrow.width <= 300, `${line} is ${narrow.width} wide`);
    assert.ok(wide.width <= 640);
    assert.ok(narrow.width / narrow.height <= wide.width / wide.height);
  }
});

test('values are as written, with a thin space; a hidden one is a question mark; other texts may be given', () => {
  const line = 'B1 9 V r 0.5 Ω + R1 4.70 kΩ ±5% + R2 12 Ω hidden + L1 6 V 3 W + A1 + S1';
  const own = drawn(line);
  assert.deepEqual(texts(own, 'B1'), ['B1', '9\u202fV, r 0.5\u202fΩ']);
  assert.deepEqual(texts(own, 'R1'), ['R1', '4.70\u202fkΩ, ±5\u202f%']);
  assert.deepEqual(texts(own, 'R2'), ['R2', '?']);
  assert.deepEqual(texts(own, 'L1'), ['L1', '6\u202fV, 3\u202fW']);
  assert.deepEqual(texts(own, 'A1'), ['A1']);
  assert.deepEqual(texts(own, 'S1'), ['S1']);
  const given = drawn(line, { values: (id) => (id === 'A1' ? '0.45 A' : '') });
  assert.deepEqual(texts(given, 'A1'), ['A1', '0.45 A']);
  assert.deepEqual(texts(given, 'R1'), ['R1']);
});

test('forty components are drawn in less than 50 ms', () => {
  const rows = Array.from(
    { length: 10 },
    (_, i) => `(R${4 * i} 1 Ω ∥ (R${4 * i + 1} 2 Ω + R${4 * i + 2} 3 Ω)) + R${4 * i + 3} 4 Ω`,
  );
  const circuit = parseCircuit(`B1 6 V + ${rows.join(' + ')}`);
  drawSchematic(circuit);
  const start = process.cpuUsage();
  drawSchematic(circuit);
  assert.ok(process.cpuUsage(start).user < 50_000);
});
