import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import {
  drawSchematic,
  explain,
  parseCircuit,
  prepare,
  solve,
  type Circuit,
} from '../../src/engine/index.ts';

const drawing = (circuit: Circuit): unknown => drawSchematic(circuit, { width: 400 });

// What pages fetch as they need it, whoever imports `rheolet/engine` has at once.
describe('the whole engine needs no preparation', () => {
  const lines = {
    'a changeover switch': 'B1 6 V + (changeover S1a closed ∥ (changeover S1b + R1 4 Ω)) + L1 8 Ω',
    'a potentiometer': 'B1 6 V + potentiometer R1b 5 Ω + (potentiometer R1a 5 Ω ∥ L1 8 Ω)',
    'a bridge': 'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q',
  };
  for (const [name, line] of Object.entries(lines))
    it(`to draw ${name}`, async () => {
      const circuit = parseCircuit(line);
      const before = drawing(circuit);
      await prepare(circuit);
      assert.deepEqual(before, drawing(circuit));
    });

  it('to solve what has a curve', () => {
    const { status } = solve(parseCircuit('B1 3 V + R1 100 Ω + D1'));
    assert.equal(status, 'solved');
  });

  it('to set up Kirchhoff’s equations', () => {
    const { status, steps } = explain(parseCircuit(lines['a bridge']), { find: 'I_R5' });
    assert.equal(status, 'found');
    assert.ok(steps.some(({ rule }) => rule === 'e.m.f.s round a loop'));
  });
});
