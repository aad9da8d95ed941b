import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit, prepare, solve } from '../../../src/engine/index.ts';

const read = (line: string, name: string): number => solve(parseCircuit(line)).quantity(name) ?? NaN;

describe('a filament or a diode with something secretly wrong', async () => {
  await prepare(parseCircuit('B1 6 V + L1 6 V 3 W filament'));

  it('is no curve any more: it conducts nothing, or as a wire does', () => {
    const pair = 'B1 6 V + L1 6 V 3 W filament';
    assert.equal(read(`${pair} + L2 6 V 3 W filament secretly broken`, 'I_L1'), 0);
    assert.equal(read(`${pair} + L2 6 V 3 W filament secretly broken`, 'V_L2'), 6);
    // The other one alone stands at its rating: 3 W / 6 V.
    assert.ok(Math.abs(read(`${pair} + L2 6 V 3 W filament secretly bridged`, 'I_L1') - 0.5) < 1e-12);
    assert.equal(read(`${pair} + L2 6 V 3 W filament secretly bridged`, 'P_L2'), 0);
    assert.equal(read('B1 6 V + LED1 reversed secretly bridged + R1 60 Ω', 'I_R1'), 0.1);
  });

  it('has the resistance of its rating', () => {
    assert.equal(read('B1 6 V + L1 6 V 3 W filament secretly broken + R1 6 Ω', 'R_L1'), 12);
  });
});
