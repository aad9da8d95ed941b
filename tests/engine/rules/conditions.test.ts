import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { Circuit, Condition } from '../../../src/engine/circuit/index.ts';
import { checkRules, ruleLine, type Rule } from '../../../src/engine/rules/index.ts';
import { short } from '../solve/short.ts';
import { withConditions } from '../topology/conditions.ts';
import { prose } from './prose.ts';
import { everySample } from './samples.ts';

const said = (circuit: Circuit, ...rules: readonly Rule[]): readonly string[] =>
  checkRules(circuit)
    .filter(({ rule }) => rules.length === 0 || rules.includes(rule))
    .map((check) => prose(check));

const done = (circuit: Circuit, conditions: Readonly<Record<string, Condition>>): Circuit =>
  withConditions(circuit, ({ id }) => conditions[id]);

describe('the rules of a circuit in which something is taken out or bridged', () => {
  it('give the wire across a lamp all the current, and the lamp none', () => {
    const circuit = done(short('B1 p n 6; L1 p a 6; L2 a n 6'), { L1: 'bridged' });
    assert.deepEqual(said(circuit), [
      'series current: I_B1 = I_L2: 1.00 A = 1.00 A',
      'series current does not apply: B1 and L1 are not in series: the current splits between them.',
      'series p.d. does not apply: No path here has two parts to add up.',
      'series resistance does not apply: No path here has two parts to add up.',
      'parallel p.d.: V_L1 = V_wire across L1: 0.00 V = 0.00 V',
      'parallel current: I_B1 = I_L1 + I_wire across L1: 1.00 A = 0.00 A + 1.00 A',
      'parallel resistance does not apply: Without a resistance, the wire across L1 takes the whole current.',
      'junction law: I_B1 = I_L1 + I_wire across L1: 1.00 A = 0.00 A + 1.00 A',
      'loop law: V_B1 = V_L1 + V_L2: 6.00 V = 0.00 V + 6.00 V',
      'loop law: V_B1 = V_L2: 6.00 V = 6.00 V',
      'V = IR: V_L1 = I_L1 × R_L1: 0.00 V = 0.00 A × 6.00 Ω',
      'V = IR: V_L2 = I_L2 × R_L2: 6.00 V = 1.00 A × 6.00 Ω',
      'V = IR does not apply: B1 is a supply, not a resistance.',
      'power balance: P_B1 = P_L1 + P_L2: 6.00 W = 0.00 W + 6.00 W',
    ]);
  });

  it('leave what is bridged out of a combined resistance', () => {
    const circuit = done(short('B1 p n 6; R1 p a 1; L1 a b 6; R2 b n 2; R3 a n 6'), { L1: 'bridged' });
    assert.deepEqual(said(circuit, 'series resistance', 'parallel resistance'), [
      'series resistance: R_total = R_R1 + R_R2∥R3: 2.50 Ω = 1.00 Ω + 1.50 Ω',
      'parallel resistance: 1/(R_R2∥R3) = 1/(R_R2) + 1/(R_R3): 1/(1.50 Ω) = 1/(2.00 Ω) + 1/(6.00 Ω)',
      'parallel resistance: R_R2∥R3 < R_R2: 1.50 Ω < 2.00 Ω',
      'parallel resistance does not apply: Without a resistance, the wire across L1 takes the whole current.',
    ]);
  });

  it('say of a lamp taken out that it carries nothing, and of the other that its path is left', () => {
    const circuit = done(short('B1 p n 6; L1 p n 6; L2 p n 6'), { L1: 'broken' });
    assert.deepEqual(said(circuit), [
      'series current: I_B1 = I_L2: 1.00 A = 1.00 A',
      'series p.d. does not apply: With L1 taken out, no path has two parts to add up.',
      'series resistance does not apply: With L1 taken out, no path has two parts to add up.',
      'parallel p.d. does not apply: With L1 taken out, only one path is left.',
      'parallel current does not apply: With L1 taken out, only one path is left.',
      'parallel resistance does not apply: With L1 taken out, only one path is left.',
      'junction law does not apply: With L1 taken out, only one path is left.',
      'loop law: V_B1 = V_L2: 6.00 V = 6.00 V',
      'V = IR: V_L2 = I_L2 × R_L2: 6.00 V = 1.00 A × 6.00 Ω',
      'V = IR does not apply: B1 is a supply, not a resistance.',
      'V = IR does not apply: L1 is taken out: no current flows there.',
      'power balance: P_B1 = P_L2: 6.00 W = 6.00 W',
    ]);
  });

  it('are none where what is taken out opens the circuit, or parts the terminals', () => {
    const lines = said(done(short('B1 p n 6; L1 p a 6; L2 a n 6'), { L2: 'broken' }));
    assert.equal(lines.length, 10);
    for (const line of lines) assert.match(line, / does not apply: No current: the circuit is open at L2\.$/);
    for (const line of said(done(short('R1 p a 3; R2 a n 5; ends p n'), { R1: 'broken' })))
      assert.match(line, / does not apply: No path leads from one terminal to the other\.$/);
  });

  it('tell no quantity of what is taken out, and no current, p.d. or power of what is bridged but 0, whatever the circuit', () => {
    let bridged = 0;
    everySample(({ circuit, checks }) => {
      for (const { id, kind, condition } of circuit.components) {
        const terms = checks
          .flatMap(({ substituted }) => substituted?.sides.flat() ?? [])
          .filter(({ name }) => name.slice(2) === id && !name.startsWith('R'));
        if (condition === 'broken') assert.deepEqual(terms, [], id);
        if (condition !== 'bridged' || kind === 'supply' || kind === 'source') continue;
        for (const { name, value } of terms) assert.equal(Number(value), 0, name);
        bridged += terms.length;
      }
    });
    assert.ok(bridged > 100, `${bridged} terms`);
  });

  it('never call the wire across a component by its id', () => {
    everySample(({ checks }) => {
      for (const check of checks) {
        const { why, rule, spoken } = ruleLine(check);
        assert.doesNotMatch([prose(check), why, rule, spoken].join(), /\d bridge/);
      }
    });
  });

  it('leave out a voltmeter that is taken out', () => {
    const circuit = short('B1 p n 6; R1 p a 4; R2 a n 16; R3 a n 16; V1 p a; V2 n a');
    assert.deepEqual(said(done(circuit, { V2: 'broken' }), 'parallel p.d.'), [
      'parallel p.d.: V_R1 = V_V1: 2.00 V = 2.00 V',
      'parallel p.d.: V_R2 = V_R3: 4.00 V = 4.00 V',
    ]);
  });
});
