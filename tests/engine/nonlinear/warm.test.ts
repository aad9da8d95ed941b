import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { hasCurve, withValue, type Circuit } from '../../../src/engine/circuit/index.ts';
import { curveOf, parseCircuit, solve, track, type Curve } from '../../../src/engine/index.ts';
import { settle } from '../../../src/engine/nonlinear/newton.ts';
import { straightened } from '../../../src/engine/solve/index.ts';

/** How often the characteristics are asked until a circuit has settled. */
function asked(circuit: Circuit, before?: Circuit): number {
  const straight = straightened(circuit);
  let count = 0;
  const curves = new Map<number, Curve>();
  straight.components.forEach((component, place) => {
    if (!hasCurve(component)) return;
    const curve = curveOf(component);
    curves.set(place, (volts) => {
      count += 1;
      return curve(volts);
    });
  });
  const last = before && solve(before);
  const near = last && Float64Array.from(straight.components, ({ id }) => last.voltage(id) ?? 0);
  assert.ok(settle(straight, curves, near));
  return count;
}

const lines = [
  'B1 5 V + R1 [100..1000 step 1] 150 Ω + LED1 2 V 20 mA',
  'B1 6 V + R1 [1..1000 step 1] 20 Ω + (D1 ∥ L1 6 V 3 W filament)',
  'B1 6 V + R1 [1..1000 step 1] 10 Ω + L1 2.5 V 0.3 A filament + LED1',
];

describe('a slider of a circuit with curves', () => {
  it('needs fewer steps from where it stood than from nothing', () => {
    for (const line of lines) {
      const circuit = parseCircuit(line);
      const [before, after] = [withValue(circuit, 'R1', 200), withValue(circuit, 'R1', 201)];
      const [warm, cold] = [asked(after, before), asked(after)];
      assert.ok(warm < cold, `${line}: ${warm} against ${cold}`);
    }
  });

  it('ends in the same readings whichever way it came', () => {
    for (const line of lines) {
      const circuit = parseCircuit(line);
      const tracker = track(circuit, 'R1', ['I_R1', 'I_B1']);
      const out = new Float64Array(2);
      for (const ohms of [100, 1000, 101, 500, 999, 100]) {
        assert.ok(tracker.at(ohms, out));
        const wanted = solve(withValue(circuit, 'R1', ohms)).current('R1') ?? NaN;
        assert.ok(Math.abs((out[0] ?? NaN) - wanted) <= 1e-12 * wanted, `${line} at ${ohms}: ${out[0]}`);
        assert.equal(out[0], out[1]);
      }
    }
  });
});
