import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { checkRules, type Rule } from '../../../src/engine/rules/index.ts';
import { short } from '../solve/short.ts';
import { prose } from './prose.ts';

const said = (circuit: Circuit, ...rules: readonly Rule[]): readonly string[] =>
  checkRules(circuit)
    .filter(({ rule }) => rules.length === 0 || rules.includes(rule))
    .map((check) => prose(check));

const hide = (circuit: Circuit, id: string): Circuit => ({
  components: circuit.components.map((one) => (one.id === id ? { ...one, hidden: true } : one)),
});

describe('the rules of a circuit', () => {
  it('of a harbour with two ammeters are these, and no others', () => {
    const quay = short('B1 p n 6; A1 p a; R1 a n 12; A2 a b; L1 b n 8');
    assert.deepEqual(said(quay), [
      'series current: I_B1 = I_A1: 1.25 A = 1.25 A',
      'series current: I_A2 = I_L1: 0.750 A = 0.750 A',
      'series current does not apply: A1 and R1 are not in series: the current splits between them.',
      'series p.d. does not apply: No path here has two parts to add up.',
      'series resistance does not apply: No path here has two parts to add up.',
      'parallel p.d.: V_B1 = V_R1 = V_L1: 6.00 V = 6.00 V = 6.00 V',
      'parallel current: I_A1 = I_R1 + I_A2: 1.25 A = 0.50 A + 0.75 A',
      'parallel resistance: 1/(R_total) = 1/(R_R1) + 1/(R_L1): 1/(4.80 Ω) = 1/(12.0 Ω) + 1/(8.00 Ω)',
      'parallel resistance: R_total < R_L1: 4.80 Ω < 8.00 Ω',
      'junction law: I_A1 = I_R1 + I_A2: 1.25 A = 0.50 A + 0.75 A',
      'loop law: V_B1 = V_R1: 6.00 V = 6.00 V',
      'loop law: V_B1 = V_L1: 6.00 V = 6.00 V',
      'V = IR: V_R1 = I_R1 × R_R1: 6.00 V = 0.500 A × 12.0 Ω',
      'V = IR: V_L1 = I_L1 × R_L1: 6.00 V = 0.750 A × 8.00 Ω',
      'V = IR does not apply: B1 is a supply, not a resistance.',
      'power balance: P_B1 = P_R1 + P_L1: 7.50 W = 3.00 W + 4.50 W',
    ]);
  });

  it('light up what they are about', () => {
    const checks = checkRules(short('B1 p n 6; A1 p a; R1 a n 12; A2 a b; L1 b n 8'));
    const about = (rule: Rule) => checks.filter((check) => check.rule === rule).map((check) => check.about);
    assert.deepEqual(about('series current'), [
      ['B1', 'A1'],
      ['A2', 'L1'],
      ['A1', 'R1'],
    ]);
    assert.deepEqual(about('junction law'), [['A1', 'R1', 'A2']]);
    assert.deepEqual(about('loop law'), [
      ['B1', 'A1', 'R1'],
      ['B1', 'A1', 'A2', 'L1'],
    ]);
  });

  it('are none where the circuit is open, and say where', () => {
    const lines = said(short('B1 p n 6; S1 p a open; R1 a n 12'));
    assert.equal(lines.length, 10);
    for (const line of lines) assert.match(line, / does not apply: No current: the circuit is open at S1\.$/);
  });

  it('are none where there is a fault', () => {
    const lines = said(short('B1 p n 6; W1 p n; R1 p n 12'));
    assert.equal(lines.length, 10);
    for (const line of lines) assert.match(line, / does not apply: The circuit has a fault/);
  });

  it('of a network without a supply are those of resistances', () => {
    const lines = said(short('R1 p a 3; R2 a n 5; R3 a n 5; ends p n'));
    assert.deepEqual(
      lines.filter((line) => !line.includes('does not apply')),
      [
        'series resistance: R_total = R_R1 + R_R2∥R3: 5.50 Ω = 3.00 Ω + 2.50 Ω',
        'parallel resistance: 1/(R_R2∥R3) = 1/(R_R2) + 1/(R_R3): 1/(2.50 Ω) = 1/(5.00 Ω) + 1/(5.00 Ω)',
        'parallel resistance: R_R2∥R3 < R_R2: 2.50 Ω < 5.00 Ω',
      ],
    );
    assert.equal(
      lines.filter((line) => line.endsWith('does not apply: Without a supply there is no current.')).length,
      8,
    );
  });

  it('count an open branch and a dead end as if they were not there', () => {
    const alone = short('B1 p n 6; R1 p a 4; R2 a n 8');
    const more = short('B1 p n 6; R1 p a 4; R2 a n 8; S1 p b open; R3 b n 8; R4 a c 5');
    const named = said(alone).map((line) => line.replace('only one path', 'only one path while S1 is open'));
    assert.deepEqual(said(more), named);
  });

  it('name each open switch that alone would lead a second path, and no other', () => {
    for (const [circuit, open] of [
      ['B1 6 V + ((S1 open + L1 4 Ω) ∥ (push S2 open + L2 4 Ω) ∥ L3 4 Ω)', ' while S1 and S2 are open'],
      ['B1 6 V + R1 4 Ω + (R2 4 Ω ∥ S1 open)', ' while S1 is open'],
      // Closing one of two leaves the other; a dead end stays one; and a circuit of its own is no second path in this one.
      ['B1 6 V + ((S1 open + S2 open + L1 4 Ω) ∥ L2 4 Ω)', ''],
      ['B1 6 V @a–@b; R1 4 Ω @a–@b; S1 open @a–@c; R2 4 Ω @c–@d', ''],
      ['B1 6 V @a–@b; R1 4 Ω @a–@b; B2 6 V @c–@d; S1 open @c–@e; R2 4 Ω @e–@d', ''],
      // What the one contact closes the other opens, and what a wire bridges is closed.
      ['B1 6 V + ((changeover S1a closed + L1 4 Ω) ∥ (changeover S1b open + L2 4 Ω))', ''],
      ['B1 6 V + S1 open bridged + R1 4 Ω', ''],
    ] as const) {
      const lines = said(parseCircuit(circuit), 'parallel current', 'junction law');
      const sentence = `does not apply: There is only one path${open}.`;
      assert.deepEqual(lines, [`parallel current ${sentence}`, `junction law ${sentence}`], circuit);
    }
  });

  it('compare an ideal voltmeter with what it is across', () => {
    const circuit = short('B1 p n 6; R1 p a 4; R2 a n 16; R3 a n 16; V1 p a; V2 n a');
    assert.deepEqual(said(circuit, 'parallel p.d.'), [
      'parallel p.d.: V_R1 = V_V1: 2.00 V = 2.00 V',
      'parallel p.d.: V_R2 = V_R3 = V_V2: 4.00 V = 4.00 V = 4.00 V',
    ]);
  });

  it('leave out of sums what drops no p.d., but not the current in it', () => {
    const circuit = short('B1 p n 6; S1 p a closed; A1 a b; R1 b c 4; W1 c d; R2 d n 8');
    assert.deepEqual(said(circuit, 'series current', 'series p.d.', 'loop law', 'power balance'), [
      'series current: I_B1 = I_A1 = I_R1 = I_R2: 0.500 A = 0.500 A = 0.500 A = 0.500 A',
      'series p.d.: V_B1 = V_R1 + V_R2: 6.00 V = 2.00 V + 4.00 V',
      'loop law: V_B1 = V_R1 + V_R2: 6.00 V = 2.00 V + 4.00 V',
      'power balance: P_B1 = P_R1 + P_R2: 3.00 W = 1.00 W + 2.00 W',
    ]);
  });

  it('say what a closed switch beside a resistor does', () => {
    const circuit = short('B1 p n 6; R1 p a 4; S1 p a closed; R2 a n 6');
    assert.deepEqual(said(circuit, 'parallel current', 'parallel resistance'), [
      'parallel current: I_B1 = I_R1 + I_S1: 1.00 A = 0.00 A + 1.00 A',
      'parallel resistance does not apply: Without a resistance, S1 takes the whole current.',
    ]);
  });

  it('take a meter with a resistance as a resistance', () => {
    const circuit = short('B1 p n 3; A1 p a 0.5; R1 a n 5.5');
    assert.deepEqual(said(circuit, 'series p.d.', 'series resistance', 'V = IR'), [
      'series p.d.: V_B1 = V_A1 + V_R1: 3.00 V = 0.25 V + 2.75 V',
      'series resistance: R_total = R_A1 + R_R1: 6.00 Ω = 0.50 Ω + 5.50 Ω',
      'V = IR: V_A1 = I_A1 × R_A1: 0.250 V = 0.500 A × 0.500 Ω',
      'V = IR: V_R1 = I_R1 × R_R1: 2.75 V = 0.500 A × 5.50 Ω',
      'V = IR does not apply: B1 is a supply, not a resistance.',
    ]);
  });

  it('write a question mark for a resistance that is kept back, or no numbers where they would tell it', () => {
    const circuit = hide(short('B1 p n 6; R1 p a 4; R2 a n 8'), 'R2');
    assert.deepEqual(said(circuit, 'series resistance', 'V = IR'), [
      'series resistance: R_total = R_R1 + R_R2: ? = 4.00 Ω + ?',
      'V = IR: V_R1 = I_R1 × R_R1: 2.00 V = 0.500 A × 4.00 Ω',
      'V = IR: V_R2 = I_R2 × R_R2: ',
      'V = IR does not apply: B1 is a supply, not a resistance.',
    ]);
  });

  it('name a large block by its first and last component', () => {
    const ladder = short(
      'B1 p n 6; R1 p a 1; R2 a n 3; R3 a b 1; R4 b c 1; R5 c d 1; R6 d e 1; R7 e f 1; R8 f n 1',
    );
    const [, inner] = said(ladder, 'series resistance');
    assert.match(inner ?? '', /^series resistance: R_R3…R8 = R_R3 \+ R_R4/);
  });

  it('are found at any depth', () => {
    const sections = Array.from(
      { length: 60 },
      (_, k) => `R${2 * k + 1} n${k} n${k + 1} 1; R${2 * k + 2} n${k + 1} e 1`,
    );
    const ladder = short(`B1 n0 e 6; ${sections.join('; ')}`);
    assert.equal(
      checkRules(ladder).filter(({ rule, status }) => rule === 'V = IR' && status === 'holds').length,
      120,
    );
  });
});
