import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { explain, withValue } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { stagesOf, type Stage } from '../../../src/engine/reduction/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

function stages(line: string, find: string): readonly Stage[] {
  const circuit = parseCircuit(line);
  return stagesOf(circuit, explain(circuit, { find }).steps).filter((stage) => stage !== undefined);
}
const labels = (line: string, find: string): string[] =>
  stages(line, find).map(({ circuit }) => circuit.components.map(({ id }) => id).join(', '));

void describe('the label of a block', () => {
  void it('is written out for five components, and has its ends only for six', () => {
    const five = 'R1 1 Ω + R2 1 Ω + R3 1 Ω + R4 1 Ω + R5 1 Ω';
    assert.equal(labels(`B1 6 V + ${five}`, 'R_total')[0], 'B1, R1 + R2 + R3 + R4 + R5');
    assert.equal(labels(`B1 6 V + ${five} + R6 1 Ω`, 'R_total')[0], 'B1, R1…R6');
  });

  void it('has brackets round the blocks in it, one inside another', () => {
    const line = 'R1 1 Ω + (R2 2 Ω ∥ (R3 1 Ω + R4 1 Ω))';
    assert.equal(labels(line, 'R_total').at(-1), 'R1 + (R2 ∥ (R3 + R4))');
  });
});

void describe('what stands beside a reduction', () => {
  void it('keeps its temperature: a sensor carries what it did, in the cold and in the heat', () => {
    for (const celsius of [0, 60]) {
      const line = 'B1 6 V + T1 10 kΩ + (R1 4 kΩ ∥ R2 12 kΩ)';
      const circuit = withValue(parseCircuit(line), 'temperature', celsius);
      const whole = solveExact(circuit).current('T1');
      const found = stagesOf(circuit, explain(circuit, { find: 'I_T1' }).steps).filter(Boolean);
      assert.ok(found.length > 0);
      for (const stage of found) {
        const t = stage && solveExact(stage.circuit).current('T1');
        // In the last stage the sensor may be inside a block itself.
        if (t) assert.equal(t.toFraction(), whole?.toFraction(), `at ${celsius} °C`);
      }
    }
  });

  void it('has the same total resistance at every stage of a network', () => {
    const line = 'R1 12 Ω ∥ (R2 4 Ω + R3 8 Ω) ∥ (R4 3 Ω + (R5 6 Ω ∥ R6 6 Ω))';
    const whole = solveExact(parseCircuit(line)).totalResistance()?.toFraction();
    const all = stages(line, 'R_total');
    assert.equal(all.length, 4);
    for (const { circuit } of all) assert.equal(solveExact(circuit).totalResistance()?.toFraction(), whole);
  });
});
