import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { quantity } from '../../../src/engine/quantity/index.ts';
import { collapse } from '../../../src/engine/reduction/collapse.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

/** The circuit with R99 in the place of some components, as a line; '' where they are no stretch of it. */
function collapsed(line: string, ids: string, ohms = 12): string {
  const circuit = collapse(parseCircuit(line), ids.split(' '), {
    id: 'R99',
    resistance: quantity(ohms, 'Ω'),
  });
  return circuit ? formatCircuit(circuit) : '';
}

void describe('some components become one resistor', () => {
  const rows = [
    ['two in series', 'B1 6 V + R1 4 Ω + R2 8 Ω', 'R1 R2', 'B1 6 V + R99 12 Ω'],
    ['two of three in series', 'B1 6 V + R1 4 Ω + R2 8 Ω + R3 1 Ω', 'R1 R2', 'B1 6 V + R99 12 Ω + R3 1 Ω'],
    ['two side by side', 'B1 6 V + R3 1 Ω + (R1 4 Ω ∥ R2 8 Ω)', 'R1 R2', 'B1 6 V + R3 1 Ω + R99 12 Ω'],
    [
      'two of three side by side',
      'B1 6 V + (R1 4 Ω ∥ R2 8 Ω ∥ R3 1 Ω)',
      'R1 R2',
      'B1 6 V + (R99 12 Ω ∥ R3 1 Ω)',
    ],
    ['a row in a branch', 'B1 6 V + ((R1 4 Ω + R2 8 Ω) ∥ R3 1 Ω)', 'R1 R2', 'B1 6 V + (R99 12 Ω ∥ R3 1 Ω)'],
    ['with the meter between them', 'B1 6 V + R1 4 Ω + A1 + R2 8 Ω + A2', 'R1 R2', 'B1 6 V + R99 12 Ω + A2'],
    [
      'with the switches of branches',
      'B1 6 V + ((S1 closed + R1 4 Ω) ∥ (S2 closed + R2 8 Ω))',
      'R1 R2',
      'B1 6 V + R99 12 Ω',
    ],
    ['a network', 'R1 4 Ω + R2 8 Ω', 'R1 R2', 'R99 12 Ω'],
    ['one alone', 'B1 6 V + R1 4 Ω + R2 8 Ω', 'R1', 'B1 6 V + R99 12 Ω + R2 8 Ω'],
  ] as const;
  for (const [name, line, ids, expected] of rows)
    void it(name, () => {
      assert.equal(collapsed(line, ids), formatCircuit(parseCircuit(expected)));
    });

  void it('not where something else with a resistance, or a supply, stands between', () => {
    assert.equal(collapsed('B1 6 V + R1 4 Ω + R3 1 Ω + R2 8 Ω', 'R1 R2'), '');
    assert.equal(collapsed('B1 6 V + R1 4 Ω + B2 2 V + R2 8 Ω', 'R1 R2'), '');
    assert.equal(collapsed('B1 6 V + ((R1 4 Ω + R3 1 Ω) ∥ R2 8 Ω)', 'R1 R2'), '');
  });

  void it('not in a bridge', () => {
    const bridge = 'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q';
    assert.equal(collapsed(bridge, 'R1 R2'), '');
  });

  void it('a right value changes nothing for the rest', () => {
    const line = 'B1 12 V r 1 Ω + R1 3 Ω + (R2 12 Ω ∥ (R3 8 Ω + R4 4 Ω))';
    const whole = solveExact(parseCircuit(line));
    const row = solveExact(parseCircuit(collapsed(line, 'R3 R4')));
    const block = solveExact(parseCircuit(collapsed(line, 'R2 R3 R4', 6)));
    for (const name of ['I_B1', 'V_R1', 'V_B1', 'R_total', 'P_total'])
      for (const one of [row, block])
        assert.equal(one.quantity(name)?.toFraction(), whole.quantity(name)?.toFraction(), name);
    assert.equal(row.quantity('V_R99')?.toFraction(), whole.quantity('V_R2')?.toFraction());
  });
});
