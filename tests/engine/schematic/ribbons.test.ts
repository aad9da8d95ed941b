import assert from 'node:assert/strict';
import { test } from 'node:test';
import { type Drawing, type Point, type RibbonRun } from '../../../src/engine/schematic/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { madeUpFlow, treeOf } from './flow.ts';
import { boxOf, keyOf, legsOf, lengthOf, touches, wireLegs } from './plane.ts';
import { drawings } from './random-drawings.ts';

const scale = 12;

type Current = (id: string) => number;

/** What flows along a run, added up here from what it says it carries. */
const along = (run: RibbonRun, current: Current): number =>
  run.carries.reduce((sum, { id, sign }) => sum + sign * current(id), 0);

/** The largest sum of signed widths at any point where runs end, in pixels; open ends of a network apart. */
function worstJunction(drawing: Drawing, current: Current): number {
  const sums = new Map<string, { sum: number; runs: number }>();
  const add = (point: Point | undefined, width: number): void => {
    if (!point) throw new Error('a run without points');
    const { sum, runs } = sums.get(keyOf(point)) ?? { sum: 0, runs: 0 };
    sums.set(keyOf(point), { sum: sum + width, runs: runs + 1 });
  };
  for (const run of drawing.ribbons) {
    add(run.points[0], -along(run, current) * scale);
    add(run.points.at(-1), along(run, current) * scale);
  }
  return Math.max(0, ...[...sums.values()].map(({ sum, runs }) => (runs > 1 ? Math.abs(sum) : 0)));
}

test('the widths add up at every junction for any currents that obey the junction law', () => {
  for (const { circuit, drawing } of drawings()) {
    const flow = madeUpFlow(circuit, treeOf(circuit), 1);
    assert.ok(worstJunction(drawing, (id) => flow.get(id) ?? NaN) < 1e-9);
  }
});

test('the widths of a solved circuit add up at every junction to 0.02 px', () => {
  let solved = 0;
  for (const { circuit, drawing } of drawings().slice(0, 600)) {
    const solution = solve(circuit);
    if (solution.status !== 'solved') continue;
    solved++;
    assert.ok(worstJunction(drawing, (id) => solution.current(id) ?? 0) <= 0.02);
  }
  assert.ok(solved > 100, `${solved} solved`);
});

test('a ribbon runs through every component with its own current, in its own direction', () => {
  for (const { circuit, drawing } of drawings()) {
    const flow = madeUpFlow(circuit, treeOf(circuit), 1);
    for (const { id, at, turn } of drawing.symbols) {
      const through = drawing.ribbons.flatMap((run) =>
        legsOf(run.points)
          .filter((leg) => touches(boxOf(leg), { ...at, width: 0, height: 0 }))
          .map((leg) => ({ run, leg })),
      );
      assert.equal(through.length, 1, id);
      const [{ run, leg } = { run: undefined, leg: undefined }] = through;
      assert.ok(run && leg);
      const forward =
        turn === 0
          ? leg.to.x > leg.from.x
          : turn === 180
            ? leg.to.x < leg.from.x
            : turn === 90
              ? leg.to.y > leg.from.y
              : leg.to.y < leg.from.y;
      const isSupply = circuit.components.some(
        (component) => component.id === id && component.kind === 'supply',
      );
      const own = flow.get(id) ?? NaN;
      assert.ok(
        Math.abs(along(run, (each) => flow.get(each) ?? NaN) - (forward === isSupply ? -own : own)) < 1e-9,
        id,
      );
    }
  }
});

test('the ribbons cover every wire and every component exactly once', () => {
  for (const { drawing } of drawings()) {
    const total = (legs: readonly { from: Point; to: Point }[]): number =>
      legs.reduce((sum, leg) => sum + lengthOf(leg), 0);
    const ribbons = total(drawing.ribbons.flatMap(({ points }) => legsOf(points)));
    const symbols = drawing.symbols.reduce((sum, { box }) => sum + Math.max(box.width, box.height), 0);
    assert.equal(ribbons, total(wireLegs(drawing)) + symbols);
  }
});

test('an arrowhead stands on a straight piece of its own run, clear of the symbols', () => {
  for (const { drawing } of drawings()) {
    for (const { points, arrows } of drawing.ribbons) {
      assert.ok(arrows.length > 0);
      for (const { at, turn } of arrows) {
        const leg = legsOf(points).find((each) => touches(boxOf(each), { ...at, width: 0, height: 0 }));
        assert.ok(leg);
        const [dx, dy] = [Math.sign(leg.to.x - leg.from.x), Math.sign(leg.to.y - leg.from.y)];
        assert.deepEqual(
          [dx, dy],
          [
            [1, 0],
            [0, 1],
            [-1, 0],
            [0, -1],
          ][turn / 90],
        );
        assert.ok(drawing.symbols.every(({ box }) => !touches(box, { ...at, width: 0, height: 0 })));
      }
    }
  }
});
