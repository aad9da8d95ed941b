import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { asMarked } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { checkRules } from '../../../src/engine/rules/index.ts';
import { withFaults } from '../circuit/with-faults.ts';
import { prose } from './prose.ts';
import { random } from './random-circuit.ts';

const said = (line: string): readonly string[] => checkRules(parseCircuit(line)).map((check) => prose(check));
const reason =
  'This cannot be worked out from what the components are marked with: one of them here is not as it is marked.';

describe('the rules of a circuit with something secretly wrong', () => {
  it('of currents and p.d.s hold as in the drawing; those with a resistance do not, and do not say where', () => {
    assert.deepEqual(said('B1 6 V + R1 2 Ω + (L1 8 Ω secretly broken ∥ L2 4 Ω)'), [
      'series current: I_B1 = I_R1: 1.00 A = 1.00 A',
      'series current does not apply: R1 and L1 are not in series: the current splits between them.',
      'series p.d.: V_B1 = V_R1 + V_L1: 6.00 V = 2.00 V + 4.00 V',
      `series resistance does not apply: ${reason}`,
      'parallel p.d.: V_L1 = V_L2: 4.00 V = 4.00 V',
      'parallel current: I_B1 = I_L1 + I_L2: 1.00 A = 0.00 A + 1.00 A',
      `parallel resistance does not apply: ${reason}`,
      'junction law: I_L2 = I_B1 + I_L1: 1.00 A = 1.00 A + 0.00 A',
      'loop law: V_B1 = V_R1 + V_L1: 6.00 V = 2.00 V + 4.00 V',
      'loop law: V_B1 = V_R1 + V_L2: 6.00 V = 2.00 V + 4.00 V',
      `V = IR does not apply: ${reason}`,
      'power balance: P_B1 = P_R1 + P_L1 + P_L2: 6.00 W = 2.00 W + 0.00 W + 4.00 W',
    ]);
  });

  it('of p.d.s do not hold where a closed switch secretly has one, nor between two breaks', () => {
    for (const line of [
      'B1 6 V + S1 closed secretly broken + R1 3 Ω',
      'B1 6 V + R1 3 Ω secretly broken + R2 4 Ω + R3 5 Ω secretly broken',
    ])
      for (const one of said(line))
        if (/^(series p|parallel p|loop|power)/.test(one)) assert.match(one, new RegExp(`apply: ${reason}`));
  });

  it('hold exactly wherever they are said to, name no more than in the drawing, and use no resistance, whatever the circuit', () => {
    let holding = 0;
    fc.assert(
      fc.property(withFaults(random), (circuit) => {
        for (const { status, within, substituted, why, rule, about } of checkRules(circuit)) {
          if (why.code === 'not as marked') assert.deepEqual(about, [], rule);
          if (status !== 'holds') continue;
          holding += 1;
          assert.equal(within, 0, rule);
          const terms = substituted?.sides.flat() ?? [];
          assert.ok(terms.every(({ name }) => !name.startsWith('R')));
        }
        const codes = checkRules(asMarked(circuit)).map(({ why }) => why.code);
        assert.ok(!codes.includes('not as marked'));
      }),
      { numRuns: 1000 },
    );
    assert.ok(holding > 1000, `${holding} hold`);
  });
});
