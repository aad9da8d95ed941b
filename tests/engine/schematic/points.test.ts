import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { drawSchematic, terminalRadius, type Drawing } from '../../../src/engine/schematic/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { laws } from './laws.ts';
import { boxOf, keyOf, legsOf, lengthOf, touches, wireLegs } from './plane.ts';
import { places } from './places.ts';
import { randomCircuit } from './random-circuit.ts';
import { randomWeb } from './random-web.ts';
import './web-drawings.ts';

function draw(circuit: Circuit, width = 640): Drawing {
  const drawing = drawSchematic(circuit, { width });
  assert.ok(drawing.kind === 'drawing');
  return drawing;
}
const drawn = (line: string, width?: number): Drawing => draw(parseCircuit(line), width);

const letters = ({ labels }: Drawing) => labels.filter(({ role }) => role === 'point');
const dotsOf = ({ wires }: Drawing, point: string) => wires.find(({ node }) => node === point)?.dots ?? [];

/** The circuit with the first so many of its nodes as labelled points. */
function labelled(circuit: Circuit, count: number): Circuit {
  const nodes = [...new Set(circuit.components.flatMap(({ from, to }) => [from, to]))];
  const names = new Map(nodes.slice(0, count).map((node, i) => [node, `P${i}`]));
  const named = (node: string): string => names.get(node) ?? node;
  const [first, last] = circuit.terminals ?? [];
  return {
    ...circuit,
    components: circuit.components.map((each) => ({ ...each, from: named(each.from), to: named(each.to) })),
    ...(first && last && { terminals: [named(first), named(last)] }),
  };
}

const samples = fc
  .sample(
    fc.tuple(
      fc.oneof({ arbitrary: randomCircuit, weight: 4 }, { arbitrary: randomWeb, weight: 1 }),
      fc.constantFrom(1, 3, 99),
      fc.constantFrom(300, 640),
    ),
    250,
  )
  .map(([whole, count, width]) => {
    const circuit = labelled(whole, count);
    return { circuit, width, drawing: draw(circuit, width) };
  });

test('every labelled point of a random circuit has its letter, under every law of a legible drawing', () => {
  for (const { circuit, drawing } of samples) {
    const wanted = new Set(circuit.components.flatMap(({ from, to }) => [from, to]));
    assert.deepEqual(
      letters(drawing)
        .map(({ text }) => text)
        .sort(),
      [...wanted].filter((node) => node.startsWith('P')).sort(),
    );
    for (const { check } of laws) check(drawing, circuit);
  }
});

test('a letter stands near its own dot or terminal, and no wire and no widest ribbon runs through it', () => {
  for (const { drawing } of samples) {
    const legs = wireLegs(drawing);
    for (const { id, box } of letters(drawing)) {
      const near = { x: box.x - 13, y: box.y - 13, width: box.width + 26, height: box.height + 26 };
      const own = legs.filter(({ node }) => node === id);
      const ends = own.flatMap(({ from, to }) => [from, to]);
      const open = drawing.terminals.filter((at) =>
        ends.some((end) => lengthOf({ from: end, to: at }) === terminalRadius),
      );
      const marks = [...dotsOf(drawing, id), ...open];
      assert.ok(
        marks.some((mark) => touches({ ...mark, width: 0, height: 0 }, near)),
        id,
      );
      const clear = { x: box.x - 8, y: box.y - 8, width: box.width + 16, height: box.height + 16 };
      for (const leg of legs) assert.ok(!touches(boxOf(leg), clear), `${leg.node} near ${id}`);
    }
  }
});

test('taking components out, and wires across them, move no letter', () => {
  for (const { circuit, width } of samples.filter((_, i) => i % 10 === 0)) {
    const whole = places(
      withConditions(circuit, () => undefined),
      { width },
    );
    for (const condition of ['broken', 'bridged'] as const)
      assert.deepEqual(
        places(
          withConditions(circuit, () => condition),
          { width },
        ),
        whole,
      );
  }
});

test('the points of an exam paper: X, Y and Z between resistors in series, in the order of the line', () => {
  const drawing = drawn('B1 12 V + @X + R1 2 Ω + @Y + R2 4 Ω + @Z');
  assert.deepEqual(
    letters(drawing)
      .map(({ text }) => text)
      .sort(),
    ['X', 'Y', 'Z'],
  );
  const at = (point: string) => {
    const [dot] = dotsOf(drawing, point);
    assert.ok(dot, point);
    const legs = drawing.wires
      .filter(({ node }) => node === point)
      .flatMap(({ lines }) => lines.flatMap(legsOf));
    assert.ok(
      legs.some((leg) => touches(boxOf(leg), { ...dot, width: 0, height: 0 })),
      'on its own wire',
    );
    return dot;
  };
  const [r1, r2] = ['R1', 'R2'].map((id) => drawing.symbols.find((each) => each.id === id)?.at.x ?? NaN);
  assert.ok((r1 ?? NaN) < at('Y').x && at('Y').x < (r2 ?? NaN));
});

test('a junction that is a labelled point keeps its one dot, and a terminal its open circle', () => {
  const bridge = drawn('B1 6 V + ((R1 1 Ω + @X + R2 2 Ω) ∥ (R3 3 Ω + @Y + R4 4 Ω)); V1 @X–@Y');
  assert.equal(dotsOf(bridge, 'X').length, 1);
  assert.equal(new Set(dotsOf(bridge, 'Y').map(keyOf)).size, 1);
  const network = drawn('R1 1 Ω @X–@Y; R2 2 Ω @Y–@Z; ends @X–@Z');
  assert.deepEqual([dotsOf(network, 'X'), dotsOf(network, 'Z')], [[], []]);
  assert.equal(letters(network).length, 3);
});

test('a junction with a small letter, a number or a long name has none', () => {
  for (const name of ['x', 'p1', 'Quay', 'X1234'])
    assert.deepEqual(letters(drawn(`R1 1 Ω @a–@${name}; R2 2 Ω @${name}–@b; ends @a–@b`)), []);
});

test('a circuit without labelled points is drawn as if there were no such thing', () => {
  const line = (p: string): string =>
    `B1 6 V + (R1 1 Ω + @${p} + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω); V1 @${p}–@q`;
  assert.equal(
    JSON.stringify(drawn(line('p'))),
    JSON.stringify(drawn(line('longer'))).replaceAll('longer', 'p'),
  );
});
