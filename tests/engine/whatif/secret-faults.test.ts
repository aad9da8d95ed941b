import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit, sensitivity, sweep, thevenin, withinTolerance } from '../../../src/engine/index.ts';

describe('what if, in a circuit with something secretly wrong', () => {
  it('a component at fault is turned to no effect, and no reasons are given that do not hold', () => {
    const circuit = parseCircuit('B1 6 V + R1 [2..40] 8 Ω secretly bridged + R2 4 Ω');
    const { value, direction, reasons } = sensitivity(circuit, 'I_R2', 'R1');
    assert.deepEqual([value.toFraction(), direction, reasons], ['0', 'stays the same', []]);
    assert.deepEqual(sensitivity(circuit, 'I_R2', 'R2').value.toFraction(), '-3/8');
    assert.deepEqual(sensitivity(circuit, 'I_R2', 'R2').reasons, []);
    assert.equal(sensitivity(circuit, 'P_R1', 'B1').direction, 'stays the same');
    const { values } = sweep(circuit, 'R1', undefined, ['I_R2', 'R_R1']);
    assert.deepEqual(new Set(values['I_R2']), new Set([1.5]));
    assert.deepEqual([values['R_R1']?.at(0), values['R_R1']?.at(-1)], [2, 40]);
  });

  it('its tolerance counts for nothing', () => {
    const circuit = parseCircuit('B1 6 V + R1 8 Ω ±10% secretly bridged + R2 4 Ω');
    for (const [name, value] of Object.entries({ I_R2: '3/2', P_R1: '0', P_R2: '9' })) {
      const { low, high } = withinTolerance(circuit, name);
      assert.deepEqual([low.toFraction(), high.toFraction()], [value, value], name);
    }
  });

  it('a supply at fault is none in what stands for the circuit', () => {
    const seen = (fault: string): readonly (string | undefined)[] => {
      const line = `B1 6 V r 2 Ω ${fault} + R1 4 Ω + @p + R2 6 Ω + @q; V1 @p–@q`;
      const found = thevenin(parseCircuit(line), 'p', 'q');
      return [found?.emf.toFraction(), found?.resistance.toFraction()];
    };
    assert.deepEqual(seen(''), ['3', '3']);
    assert.deepEqual(seen('secretly bridged'), ['0', '12/5']);
    assert.deepEqual(seen('secretly broken')[1], '6');
  });
});
