import assert from 'node:assert/strict';
import { test } from 'node:test';
import { solve } from '../../../src/engine/solve/index.ts';
import { madeUpFlow, treeOf } from './flow.ts';
import { boxOf, legsOf, touches } from './plane.ts';
import { drawings } from './random-drawings.ts';
import { coverAll, throughAll, worstJunction } from './ribbon-laws.ts';

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
    throughAll(drawing, circuit, (id) => flow.get(id) ?? NaN);
  }
});

test('the ribbons cover every wire and every component exactly once', () => {
  for (const { drawing } of drawings()) coverAll(drawing);
});

test('an arrowhead stands on a straight piece of its own run, clear of the symbols', () => {
  for (const { drawing } of drawings()) {
    for (const { points, arrows } of drawing.ribbons) {
      assert.ok(arrows.length > 0);
      for (const { at, turn } of arrows) {
        const spot = { ...at, width: 0, height: 0 };
        const leg = legsOf(points).find((each) => touches(boxOf(each), spot));
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
        assert.ok(drawing.symbols.every(({ box }) => !touches(box, spot)));
      }
    }
  }
});
