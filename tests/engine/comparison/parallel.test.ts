import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import {
  drawSchematic,
  edgesOf,
  parseCircuit,
  solve,
  solveExact,
  type Drawing,
} from '../../../src/engine/index.ts';

type Place = readonly [x: number, y: number];

const linesOf = (path: string): Place[][] =>
  path
    .split('M')
    .filter(Boolean)
    .map((line) => line.split('L').map((point) => point.split(' ').map(Number) as [number, number]));

function drawn(line: string): Drawing {
  const drawing = drawSchematic(parseCircuit(line));
  assert.ok(drawing.kind === 'drawing');
  return drawing;
}

/** How far a place lies to the left of a leg, seen along it on a page whose y goes down. */
function leftOf([x, y]: Place, from: { x: number; y: number }, to: { x: number; y: number }): number {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  return ((x - from.x) * (to.y - from.y) - (y - from.y) * (to.x - from.x)) / length;
}

const lines = [
  'B1 6 V + R1 12 Ω',
  'B1 6 V + S1 closed + (R1 12 Ω ∥ R2 4 Ω) + L1 6 Ω',
  'B1 6 V + R1 4 Ω + (R2 6 Ω ∥ (R3 12 Ω + R4 3 Ω) ∥ R5 9 Ω)',
  'B1 6 V reversed + R1 4 Ω + (R2 6 Ω ∥ R3 12 Ω)',
];

void describe('the edges of a held ribbon', () => {
  for (const line of lines)
    void it(`run along every leg, one half the width to its left, then the other to its right: ${line}`, () => {
      const drawing = drawn(line);
      const held = solve(parseCircuit(line));
      const edges = linesOf(edgesOf(drawing, held, 20));
      assert.equal(edges.length, 2 * drawing.ribbons.length);
      let corners = 0;
      drawing.ribbons.forEach(({ points, carries }, run) => {
        const amperes = carries.reduce((sum, { id, sign }) => sum + sign * (held.current(id) ?? 0), 0);
        const half = 10 * Math.abs(amperes);
        corners += points.length - 2;
        for (const [edge, side] of [
          [edges[2 * run] ?? [], half],
          [edges[2 * run + 1] ?? [], -half],
        ] as const) {
          assert.equal(edge.length, points.length);
          points.slice(1).forEach((to, leg) => {
            const from = points[leg];
            assert.ok(from);
            for (const place of [edge[leg], edge[leg + 1]]) {
              assert.ok(place);
              assert.ok(Math.abs(leftOf(place, from, to) - side) < 0.011, `${line}: ${place.join()}`);
            }
          });
        }
      });
      assert.ok(corners > 0);
    });

  void it('end just where the ribbon ends', () => {
    const drawing = drawn(lines[0] ?? '');
    const edges = linesOf(edgesOf(drawing, solveExact(parseCircuit(lines[0] ?? '')), 20));
    drawing.ribbons.forEach(({ points }, run) => {
      for (const place of [0, points.length - 1]) {
        const [left, right, middle] = [edges[2 * run]?.[place], edges[2 * run + 1]?.[place], points[place]];
        assert.ok(left && right && middle);
        assert.ok(Math.abs((left[0] + right[0]) / 2 - middle.x) < 0.011);
        assert.ok(Math.abs((left[1] + right[1]) / 2 - middle.y) < 0.011);
      }
    });
  });

  void it('are left out where the ribbon would be thinner than a hundredth of a pixel', () => {
    // 1 A at so many pixels for an ampere.
    const line = 'B1 6 V + R1 6 Ω';
    const held = solveExact(parseCircuit(line));
    assert.equal(edgesOf(drawn(line), held, 0.0099), '');
    assert.notEqual(edgesOf(drawn(line), held, 0.01), '');
  });
});
