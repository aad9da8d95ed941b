import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  isContact as contact,
  twinOf,
  withValue,
  type Circuit,
  type Component,
} from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import {
  drawSchematic,
  equipForks,
  equipWebs,
  type Drawing,
  type Point,
} from '../../../src/engine/schematic/index.ts';
import { drawForks } from '../../../src/engine/schematic/fork/index.ts';
import { drawWeb } from '../../../src/engine/schematic/web/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { withConditions } from '../topology/conditions.ts';
import { laws } from './laws.ts';
import { forkLines as lines } from './random-forks.ts';
import { worstJunction } from './ribbon-laws.ts';

equipWebs(drawWeb);
equipForks(drawForks);

const conditions = fc.array(
  fc.constantFrom(undefined, undefined, undefined, 'broken' as const, 'bridged' as const),
  {
    minLength: 7,
    maxLength: 7,
  },
);
const isContact = (each: Component | undefined): boolean => each !== undefined && contact(each);

function drawn(circuit: Circuit, width: number): Drawing {
  const drawing = drawSchematic(circuit, { width });
  assert.ok(drawing.kind === 'drawing');
  return drawing;
}

/** The laws of a legible schematic; what knows only symbols with an end at either side has its own form below. */
const others = ['across a component', 'a component is between two open ends'];

const samples = fc
  .sample(fc.tuple(lines, conditions, fc.constantFrom(300, 640)), 300)
  .map(([line, list, width]) => {
    const circuit = withConditions(parseCircuit(line), (_, place) => list[place % list.length]);
    return { line, circuit, drawing: drawn(circuit, width) };
  });

for (const { name, check } of laws.filter((each) => !others.some((start) => each.name.startsWith(start))))
  test(`in random drawings with changeover switches ${name}`, () => {
    for (const { line, circuit, drawing } of samples)
      try {
        check(drawing, circuit);
      } catch (error) {
        throw new Error(line, { cause: error });
      }
  });

test('both contacts of a switch are drawn as one: their wires end at a common terminal and at one terminal each', () => {
  fc.assert(
    fc.property(lines, fc.constantFrom(300, 640), (line, width) => {
      const circuit = parseCircuit(line);
      const drawing = drawn(circuit, width);
      const byId = new Map(circuit.components.map((each) => [each.id, each]));
      for (const symbol of drawing.symbols.filter(({ id }) => id.endsWith('a') && isContact(byId.get(id)))) {
        const twin = drawing.symbols.find(({ id }) => id === twinOf(symbol.id));
        const [one, other] = [byId.get(symbol.id), byId.get(twin?.id ?? '')];
        assert.ok(one && other && twin);
        const middle = { x: (symbol.at.x + twin.at.x) / 2, y: (symbol.at.y + twin.at.y) / 2 };
        assert.equal(Math.abs(symbol.at.x - twin.at.x) + Math.abs(symbol.at.y - twin.at.y), 24);
        const nodesNear = (point: Point): readonly string[] =>
          drawing.wires.flatMap(({ node, lines: all }) =>
            all.flatMap((points) =>
              [points[0], points.at(-1)].flatMap((end) =>
                end && Math.abs(end.x - point.x) + Math.abs(end.y - point.y) === 22 ? [node] : [],
              ),
            ),
          );
        const common = [one.from, one.to].filter((node) => node === other.from || node === other.to);
        assert.ok(common.includes(nodesNear(middle)[0] ?? ''), symbol.id);
        for (const [{ at }, { from, to }] of [
          [symbol, one],
          [twin, other],
        ] as const)
          assert.ok(
            nodesNear(at).some((node) => node === from || node === to),
            symbol.id,
          );
      }
    }),
    { numRuns: 300 },
  );
});

test('the ribbons of changeover switches add up, cover every wire once, and run in the current’s direction', () => {
  fc.assert(
    fc.property(lines, conditions, (line, list) => {
      const circuit = withConditions(parseCircuit(line), (_, place) => list[place % list.length]);
      const drawing = drawn(circuit, 640);
      const solution = solveExact(circuit);
      fc.pre(solution.status === 'solved');
      assert.ok(worstJunction(drawing, (id) => Number(solution.current(id) ?? 0)) < 1e-9);
      for (const run of drawing.ribbons) assert.ok(run.carries.length > 0);
    }),
    { numRuns: 300 },
  );
});

test('turning a changeover switch, or damaging it, moves nothing', () => {
  fc.assert(
    fc.property(lines, conditions, fc.nat(), (line, list, pick) => {
      const circuit = parseCircuit(line);
      const contacts = circuit.components.filter(contact);
      const { id = '', closed = false } = contacts[pick % contacts.length] ?? {};
      const done = withConditions(withValue(circuit, id, !closed), (_, place) => list[place % list.length]);
      const where = (of: Circuit): unknown =>
        drawn(of, 640).symbols.map(({ id: label, at, box, hit }) => ({ label, at, box, hit }));
      assert.deepEqual(where(done), where(circuit));
    }),
    { numRuns: 200 },
  );
});

test('the blade lies between the pivot and the contact that is closed', () => {
  const circuit = parseCircuit('B1 6 V + ((changeover S1a closed + L1 8 Ω) ∥ (changeover S1b + L2 8 Ω))');
  const paths = (of: Circuit): readonly string[] =>
    drawn(of, 640)
      .symbols.filter(({ id }) => id.startsWith('S'))
      .map(({ path }) => path);
  const [before, after] = [paths(circuit), paths(withValue(circuit, 'S1b', 'closed'))];
  assert.notDeepEqual(before, after);
  assert.equal(before.filter((path) => path.endsWith('M-10 10L10 2')).length, 1, before.join());
  assert.equal(after.filter((path) => path.endsWith('M-10 -10L10 -2')).length, 1, after.join());
});

test('where its contacts do not begin or end two branches, a changeover switch is drawn as two that are marked alike', () => {
  const line =
    'B1 6 V @n–@a; changeover S1a closed @a–@p; changeover S1b @a–@q; R1 4 Ω @p–@n; R2 4 Ω @q–@n; R3 2 Ω @p–@q';
  const { symbols } = drawn(parseCircuit(line), 640);
  assert.deepEqual(symbols.map(({ id }) => id).sort(), ['B1', 'R1', 'R2', 'R3', 'S1a', 'S1b']);
});
