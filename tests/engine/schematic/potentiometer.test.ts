import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  circuitFrom,
  circuitToJSON,
  isTrack,
  twinOf,
  withValue,
  type Circuit,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import {
  describeCircuit,
  drawSchematic,
  equipWebs,
  equipWipers,
  type Drawing,
} from '../../../src/engine/schematic/index.ts';
import { drawWeb } from '../../../src/engine/schematic/web/index.ts';
import { drawWipers } from '../../../src/engine/schematic/wiper/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { laws } from './laws.ts';
import { boxOf, legsOf, lengthOf, touches, wiperEnds } from './plane.ts';
import { wiperLines as lines } from './random-wipers.ts';
import { randomWeb } from './random-web.ts';
import { along, worstJunction } from './ribbon-laws.ts';
import { withZero } from './with-zero.ts';

equipWebs(drawWeb);
equipWipers(drawWipers);

const conditions = fc.array(
  fc.constantFrom(undefined, undefined, undefined, 'broken' as const, 'bridged' as const),
  { minLength: 7, maxLength: 7 },
);

function drawn(circuit: Circuit, width = 640, symbols: 'iec' | 'ansi' = 'iec'): Drawing {
  const drawing = drawSchematic(circuit, { width, symbols });
  assert.ok(drawing.kind === 'drawing');
  return drawing;
}

/** Drawn once for all the laws that they are held against. */
const samples = fc
  .sample(
    fc.tuple(
      lines,
      conditions,
      fc.constantFrom(300, 640),
      fc.constantFrom('iec' as const, 'ansi' as const),
      fc.nat(99),
    ),
    300,
  )
  .map(([line, list, width, symbols, by]) => {
    const done = withConditions(parseCircuit(line), (_, place) => list[place % list.length]);
    const circuit = withZero(done, by);
    return { line, circuit, drawing: drawn(circuit, width, symbols) };
  });

for (const { name, check } of laws)
  test(`in random drawings with potentiometers ${name}`, () => {
    for (const { line, circuit, drawing } of samples) {
      try {
        check(drawing, circuit);
      } catch (error) {
        throw new Error(line, { cause: error });
      }
    }
  });

/** A random web in which the first two resistors that meet are the parts of a track; undefined where no two do. */
function withTrack(web: Circuit): Circuit | undefined {
  const { components } = web;
  const resistors = components.filter(({ kind }) => kind === 'resistor');
  const pair = resistors.flatMap((one, i) =>
    resistors
      .slice(i + 1)
      .filter((other) => [one.from, one.to].some((node) => node === other.from || node === other.to))
      .map((other) => [one, other] as const),
  )[0];
  if (!pair) return undefined;
  const json = circuitToJSON(web);
  const parts = json.components.map((each) => {
    const place = pair.findIndex(({ id }) => id === each['id']);
    if (place < 0) return each;
    const { from = '', to = '' } = each;
    return { id: place === 0 ? 'R99a' : 'R99b', kind: 'potentiometer', from, to, resistance: '5' };
  });
  return circuitFrom({ ...json, components: parts });
}

const webs = fc
  .sample(randomWeb, { numRuns: 400, seed: 7 })
  .flatMap((web) => withTrack(web) ?? [])
  .map((circuit) => ({ circuit, drawing: drawn(circuit) }));

for (const { name, check } of laws)
  test(`in random webs with a potentiometer ${name}`, () => {
    assert.ok(webs.length > 100);
    for (const { circuit, drawing } of webs) check(drawing, circuit);
  });

test('in some random webs a potentiometer is one symbol, in others it is two', () => {
  const whole = webs.map(({ drawing }) =>
    drawing.symbols.some((each) => each.id === 'R99a' && wiperEnds(each, drawing).length > 0),
  );
  assert.ok(whole.includes(true) && whole.includes(false));
});

test('both parts of a track are drawn as one: their wires end at either end of it and beside its middle', () => {
  fc.assert(
    fc.property(lines, fc.constantFrom(300, 640), (line, width) => {
      const circuit = parseCircuit(line);
      const drawing = drawn(circuit, width);
      const byId = new Map(circuit.components.map((each) => [each.id, each]));
      for (const symbol of drawing.symbols) {
        const one = byId.get(symbol.id);
        if (!one || !isTrack(one)) continue;
        const other = byId.get(twinOf(one.id));
        const [tail] = wiperEnds(symbol, drawing);
        assert.ok(other && tail, one.id);
        const contact = [one.from, one.to].find((node) => node === other.from || node === other.to);
        const there = drawing.wires.filter(({ lines: all }) =>
          all.some((points) =>
            [points[0], points.at(-1)].some((end) => end && lengthOf({ from: end, to: tail }) === 0),
          ),
        );
        assert.deepEqual(
          there.map(({ node }) => node),
          [contact],
          one.id,
        );
      }
      const arrows = drawing.symbols
        .filter(({ id }) => /\d[ab]$/.test(id))
        .map(({ filled }) => filled !== '');
      assert.equal(arrows.filter(Boolean).length * 2, arrows.length);
    }),
    { numRuns: 300 },
  );
});

test('the ribbons of potentiometers add up, and through each part of a track runs its own current', () => {
  fc.assert(
    fc.property(lines, conditions, (line, list) => {
      const circuit = withConditions(parseCircuit(line), (_, place) => list[place % list.length]);
      const solution = solveExact(circuit);
      fc.pre(solution.status === 'solved');
      const current = (id: string): number => Number(solution.current(id) ?? 0);
      const drawing = drawn(circuit);
      assert.ok(worstJunction(drawing, current) < 1e-9);
      for (const { id, at } of drawing.symbols.filter((each) => /\d[ab]$/.test(each.id))) {
        const through = drawing.ribbons.filter(({ points }) =>
          legsOf(points).some((leg) => touches(boxOf(leg), { ...at, width: 0, height: 0 })),
        );
        const [run] = through;
        assert.ok(run && through.length === 1, id);
        assert.ok(Math.abs(Math.abs(along(run, current)) - Math.abs(current(id))) < 1e-9, id);
      }
    }),
    { numRuns: 300 },
  );
});

test('sliding a contact, or damaging what is there, moves nothing', () => {
  fc.assert(
    fc.property(lines, conditions, fc.nat(), (line, list, pick) => {
      const circuit = parseCircuit(line);
      const tracks = circuit.components.filter(isTrack);
      const { id = '' } = tracks[pick % tracks.length] ?? {};
      const done = withConditions(withValue(circuit, id, 0), (_, place) => list[place % list.length]);
      const where = (of: Circuit): unknown =>
        drawn(of).symbols.map(({ id: label, at, box, hit }) => ({ label, at, box, hit }));
      // Of a value that nobody may turn the width is that of its own digits.
      fc.pre(tracks.every(({ range }) => range));
      assert.deepEqual(where(done), where(circuit));
    }),
    { numRuns: 300 },
  );
});

const divider = 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100] 30 Ω ∥ V1)';

test('a track that nothing is taken out of is one outline with one arrowhead, a zigzag where symbols are those of IEEE 315', () => {
  const symbols = (of: string, style: 'iec' | 'ansi'): Drawing['symbols'] =>
    drawn(parseCircuit(of), 640, style).symbols.filter(({ id }) => id.startsWith('R'));
  const [before, after] = symbols(divider, 'iec');
  assert.ok(before && after);
  assert.match(before.path, /^M15 -8L-15 -8L-15 8L15 8M15 22L15 17$/);
  assert.equal(after.path, 'M-15 -8L15 -8L15 8L-15 8');
  assert.equal(after.filled, '');
  const [zig, zag] = symbols(divider, 'ansi');
  assert.match(zig?.path ?? '', /^M15 0L10 -8L0 8L-10 -8L-15 0/);
  assert.equal(zag?.path, 'M-15 0L-10 8L0 -8L10 8L15 0');
  const [cut, out] = symbols(divider.replace('30 Ω', '30 Ω broken'), 'iec');
  assert.match(cut?.path ?? '', /Z/);
  assert.equal(out?.path, 'M-7 -8L7 -8L7 8L-7 8Z');
});

test('the 0 V mark stands beside a potentiometer, not in the midst of it, where anything else is at its contact', () => {
  const line = 'B1 6 V + potentiometer R1b 70 Ω + @q + (potentiometer R1a 30 Ω ∥ L1 60 Ω); 0 V @q';
  const drawing = drawn(parseCircuit(line));
  assert.equal(drawing.mark?.node, 'q');
  for (const symbol of drawing.symbols.filter(({ id }) => id.startsWith('R1')))
    assert.equal(wiperEnds(symbol, drawing).length, 1, symbol.id);
});

test('where its parts do not meet along one line, a potentiometer is drawn as two resistors that are varied', () => {
  const line =
    'B1 2 V @n–@a; potentiometer R1a [0..1] 0.3 Ω @a–@x; potentiometer R1b 0.7 Ω @x–@n; R2 5 Ω @a–@y; R3 10 Ω @y–@n; A1 @x–@y';
  const { symbols } = drawn(parseCircuit(line));
  assert.deepEqual(symbols.map(({ id }) => id).sort(), ['A1', 'B1', 'R1a', 'R1b', 'R2', 'R3']);
  assert.ok(symbols.filter(({ id }) => id.startsWith('R1')).every(({ filled }) => filled !== ''));
});

test('a potentiometer is told as its two parts', () => {
  const words = describeCircuit(parseCircuit(divider));
  assert.match(words, /potentiometer part R1b of 70\sΩ \(from 0\sΩ to 100\sΩ\)/);
});
