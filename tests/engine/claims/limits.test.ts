import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { parseCircuit, say, testClaim } from '../../../src/engine/index.ts';

const circuit = parseCircuit('B1 6 V + R1 12 Ω + (R2 4 Ω ∥ R3 5 Ω)');

/** The sentence that a claim is refused with; '' where it is understood. */
function refusal(text: string): string {
  const { mistake } = testClaim(circuit, text);
  return mistake ? say(mistake.wrong) : '';
}
const sum = (count: number, part = 'V_R1'): string => Array.from({ length: count }, () => part).join(' + ');
const tooMany = /at most 24 quantities/;

void describe('the size of a claim', () => {
  void it('is at most 24 quantities and numbers', () => {
    assert.equal(refusal(`${sum(23)} > 0`), '');
    assert.match(refusal(`${sum(24)} > 0`), tooMany);
    assert.equal(refusal(`${sum(12)} > ${sum(12)}`), '');
    assert.match(refusal(`${sum(12)} > ${sum(13)}`), tooMany);
  });

  void it('counts a square, and a power, which is a product, twice', () => {
    for (const part of ['I_R1²', 'I_R1^2', 'P_R1']) {
      assert.equal(refusal(`${sum(11, part)} > 0`), '', part);
      assert.match(refusal(`${sum(12, part)} > 0`), tooMany, part);
    }
    assert.equal(refusal(`(${sum(11, 'I_R1')})² > 0`), '');
    assert.match(refusal(`(${sum(12, 'I_R1')})² > 0`), tooMany);
    // Squared twice: four times.
    assert.equal(refusal(`${sum(5, '(I_R1²)²')} > 0`), '');
    assert.match(refusal(`${sum(6, '(I_R1²)²')} > 0`), tooMany);
  });

  void it('is at most 30 brackets deep, however many stand side by side', () => {
    const deep = (depth: number): string => `${'('.repeat(depth)}V_R1${')'.repeat(depth)} > 0`;
    assert.equal(refusal(deep(30)), '');
    assert.match(refusal(deep(31)), /30 deep, no deeper/);
    assert.equal(refusal(`${sum(16, '((V_R1))')} > 0`), '');
  });

  void it('is at most 500 characters', () => {
    const long = (length: number): string => 'V_R1 > 0'.padEnd(length);
    assert.equal(refusal(long(500)), '');
    assert.match(refusal(long(501)), /At most 500 characters/);
  });

  void it('has numbers of at most 30 digits', () => {
    assert.equal(refusal(`V_R1 < ${'9'.repeat(30)}`), '');
    assert.match(refusal(`V_R1 < ${'9'.repeat(31)}`), /^A number has at most 30 digits in a row/);
  });
});

/** What is compared that cannot be, and the two units that are named. */
const mixtures: readonly (readonly [claim: string, left: string, right: string])[] = [
  ['V_R1 = I_R1', 'V', 'A'],
  ['V_R1 = R_R1', 'V', 'Ω'],
  ['V_R1 + I_R1 > 0', 'V', 'A'],
  ['V_R1 I_R1 = V_R1', 'W', 'V'],
  ['V_R1 / I_R1 = P_R1', 'Ω', 'W'],
  ['V_R1² = P_R1', 'V²', 'W'],
  ['V_R1² I_R1 = P_R1', 'V² A', 'W'],
  ['I_R1 / V_R1 = R_R1', 'A/V', 'Ω'],
  ['1 / R_R1 = R_R1', 'A/V', 'Ω'],
  ['1 / V_R1 = V_R1', '1/V', 'V'],
  ['V_R1 / V_R2 = V_R1', 'a number', 'V'],
  ['I_R1² R_R1 = V_R1', 'W', 'V'],
  ['2 A × 3 Ω = I_R1', 'V', 'A'],
  ['6 W / 2 A = I_R1', 'V', 'A'],
];

void describe('the units of a claim', () => {
  for (const [claim, left, right] of mixtures)
    void it(`${claim} compares ${left} with ${right}`, () => {
      assert.equal(
        refusal(claim),
        `Only quantities of one kind can be added or compared, not ${left} and ${right}.`,
      );
    });

  void it('agree where they are the same in the end, and a bare number goes with any', () => {
    for (const claim of [
      'V_R1 I_R1 = P_R1',
      'I_R1² R_R1 = P_R1',
      'V_R1² / R_R1 = P_R1',
      'P_R1 / I_R1 = V_R1',
      'V_R1 = 2',
      '2 V_R1 = 3 × V_R2',
      'V_R1 = 2 × 3',
      'V_R1 / V_R2 = 2',
      '1 / R_R1 = I_R1 / V_R1',
      'R_R1 = 12 ohm',
      'R_R1 = 0.012 kΩ',
      'I_R1 < 5e5 µA',
      'I_R1 < 5e5 uA',
    ])
      assert.equal(refusal(claim), '', claim);
  });

  void it('take their prefixes: one quantity in five ways', () => {
    for (const amount of ['0.5 A', '500 mA', '500000 µA', '500000 μA', '0,0005 kA'])
      assert.equal(testClaim(parseCircuit('B1 6 V + R1 12 Ω'), `I_R1 = ${amount}`).verdict, 'always', amount);
  });
});

void describe('a label alone', () => {
  for (const [label, meant] of [
    ['R1', 'R_R1'],
    ['B1', 'E_B1'],
  ] as const)
    void it(`${label} is taken for ${meant}`, () => {
      const { mistake } = testClaim(circuit, `${label} > 1`);
      assert.equal(mistake?.suggestion, meant);
      assert.equal(
        refusal(`${label} > 1`),
        `“${label}” is not a quantity of this circuit. Did you mean ${meant}?`,
      );
    });
});
