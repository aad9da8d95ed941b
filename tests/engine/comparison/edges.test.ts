import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { drawSchematic, edgesOf, parseCircuit, solve, solveExact } from '../../../src/engine/index.ts';
import { randomCircuit } from '../schematic/random-circuit.ts';

type Line = readonly (readonly [number, number])[];

const linesOf = (path: string): Line[] =>
  path
    .split('M')
    .filter(Boolean)
    .map((line) => line.split('L').map((point) => point.split(' ').map(Number) as [number, number]));

/** The distance from a point to the leg of a path it stands beside: between the n-th points of both. */
function apart(left: Line, right: Line): number[] {
  return left.map(([x, y], place) => Math.hypot(x - right[place]![0], y - right[place]![1]));
}

describe('the edges of held ribbons', () => {
  it('are as far apart as the current was wide, all along every run', () => {
    let checked = 0;
    for (const circuit of fc.sample(randomCircuit, 400)) {
      const drawing = drawSchematic(circuit);
      if (drawing.kind !== 'drawing') continue;
      const held = solve(circuit);
      if (held.status === 'faulty') continue;
      const lines = linesOf(edgesOf(drawing, held, 10));
      const runs = drawing.ribbons.flatMap(({ carries, points }) => {
        const amperes = carries.reduce(
          (sum, { id, sign }) => sum + sign * (held.quantity(`I_${id}`) ?? 0),
          0,
        );
        return Math.abs(amperes) * 10 < 0.01 ? [] : [{ width: Math.abs(amperes) * 10, points }];
      });
      assert.equal(lines.length, 2 * runs.length);
      runs.forEach(({ width, points }, run) => {
        const [left, right] = [lines[2 * run]!, lines[2 * run + 1]!];
        assert.deepEqual([left.length, right.length], [points.length, points.length]);
        apart(left, right).forEach((distance, place) => {
          const isEnd = place === 0 || place === points.length - 1;
          const wanted = isEnd ? width : Math.SQRT2 * width; // across a right-angled corner
          assert.ok(Math.abs(distance - wanted) < 0.03, `${distance} for ${wanted}`);
          checked += 1;
        });
      });
    }
    assert.ok(checked > 1000, `${checked}`);
  });

  it('are none where no current flowed', () => {
    const drawing = drawSchematic(parseCircuit('B1 6 V + S1 open + R1 12 Ω'));
    if (drawing.kind !== 'drawing') throw new Error(drawing.reason);
    assert.equal(edgesOf(drawing, solveExact(parseCircuit('B1 6 V + S1 open + R1 12 Ω')), 10), '');
    const closed = solveExact(parseCircuit('B1 6 V + S1 closed + R1 12 Ω'));
    assert.equal(linesOf(edgesOf(drawing, closed, 10)).length, 2 * drawing.ribbons.length);
  });
});
