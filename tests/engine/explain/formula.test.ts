import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain, formulaOf, heard, type Formula } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { sidesOf } from './equation.ts';
import { driven, told } from './random-circuit.ts';
import { web } from './random-web.ts';

/** A formula as text again, every group in brackets of its own kind. */
function shape(formula: Formula): string {
  switch (formula.kind) {
    case 'quantity':
      return formula.subscript ? `${formula.letter}_${formula.subscript}` : formula.letter;
    case 'number':
      return `${formula.number}${formula.unit}`;
    case 'sign':
      return formula.sign;
    case 'row':
      return formula.parts.map(shape).join('');
    case 'fraction':
      return `{${shape(formula.above)}|${shape(formula.below)}}`;
    case 'square':
      return `${shape(formula.of)}^2`;
    case 'root':
      return `root[${shape(formula.of)}]`;
    case 'brackets':
      return `(${shape(formula.of)})`;
  }
}
const shapes = (text: string): string => formulaOf(text).map(shape).join(' ');

void describe('an equation is set for the eye', () => {
  const rows = [
    ['V_R1 = I_R1 × R_R1', 'V_R1 = I_R1×R_R1'],
    ['I_R3 = 4.00\u202fV ÷ 8.00\u202fΩ', 'I_R3 = {4.00V|8.00Ω}'],
    ['1/R_(R1∥R2) = 1/R_R1 + 1/R_R2', '1 over'],
    ['R_total = R_R1 × R_R2 ÷ (R_R1 + R_R2)', 'R_total = {R_R1×R_R2|R_R1+R_R2}'],
    ['P_R1 = (10.7\u202fV)² ÷ 6.00\u202fΩ', 'P_R1 = {(10.7V)^2|6.00Ω}'],
    ['I_R1 = −√(P_R1 ÷ R_R1)', 'I_R1 = − root[{P_R1|R_R1}]'],
    ['I_R1 = I_B1 − (−0.5 A)', 'I_R1 = I_B1 − (−0.5A)'],
    ['W_R1 = P_R1 × t', 'W_R1 = P_R1×t'],
    ['V_L1 bridge = 0 V', 'V_L1 bridge = 0V'],
    ['a ÷ b ÷ c × d', '{{a|b}|c}×d'],
  ] as const;
  for (const [text, expected] of rows)
    void it(text, () => {
      const reciprocal = '{1|R_(R1∥R2)} = {1|R_R1} + {1|R_R2}';
      assert.equal(shapes(text), expected === '1 over' ? reciprocal : expected);
    });

  void it('whatever a derivation says, nothing of it is lost', () => {
    const circuit = parseCircuit('B1 12 V r 0.5 Ω + A1 + R1 4 Ω + (R2 6 Ω ∥ (R3 8 Ω + R4 4 Ω))');
    for (const find of ['I_R3', 'P_R2', 'V_B1', 'P_total', 'R_loop', 'Pr_B1'])
      for (const { equation, rearranged, substituted } of explain(circuit, { find }).steps)
        for (const text of [equation, rearranged, substituted]) {
          const letters = (some: string): string[] => (some.match(/[\p{L}\d]/gu) ?? []).sort();
          assert.deepEqual(letters(shapes(text).replace(/root/g, '')), letters(text.replace(/²/g, '2')));
        }
  });

  void it('and any text at all comes to an end', () => {
    const text = fc
      .array(fc.constantFrom(...Array.from('R_1(2)+−×÷/²√=∥ .,Ω<')), { maxLength: 60 })
      .map((signs) => signs.join(''));
    fc.assert(
      fc.property(fc.oneof(text, fc.string({ unit: 'grapheme' })), (any) => {
        const signs = (some: string, sign: string): number => some.split(sign).length;
        assert.equal(signs(shapes(any), '='), signs(any, '='));
      }),
    );
  });
});

void describe('an equation is read out', () => {
  const course = { wording: 'p.d.' } as const;
  void it('in the names of its quantities and signs', () => {
    assert.equal(
      heard('I_R3 = V_R3 ÷ R_R3', course),
      'current through R3 equals p.d. across R3 divided by resistance of R3',
    );
    assert.equal(
      heard('1/R_(R1∥R2) = 1/6.00\u202fΩ', course),
      '1 over resistance of R1 beside R2 equals 1 over 6.00 Ω',
    );
    assert.equal(heard('R_total = 4 Ω', course), 'total resistance equals 4 Ω');
  });
  void it('with its brackets, but for those round one number', () => {
    assert.equal(
      heard('t = (12 V − (−2 V)) ÷ (3 Ω + 4 Ω)', course),
      'time equals open bracket 12 V minus minus 2 V close bracket divided by open bracket 3 Ω plus 4 Ω close bracket',
    );
    assert.equal(heard('t = (6 V)² ÷ 2 Ω', course), 'time equals 6 V squared divided by 2 Ω');
    assert.match(heard('P = (−6 V)²', course), /open bracket minus 6 V close bracket squared$/);
    assert.match(heard('P = √(6 V × 2 A)', course), /the square root of open bracket 6 V times 2 A close/);
  });
  void it('so that what is heard can be worked out, and comes to what is written', () => {
    const signs = Array.from('=+−×÷/²√()', (sign) => [heard(sign, course), sign] as const);
    /** Words as signs again; a minus that follows something stands between blanks, like every sign that joins. */
    const back = (text: string): string =>
      signs
        .toSorted(([a], [b]) => b.length - a.length)
        .reduce((some, [word, sign]) => some.replaceAll(word, sign), text)
        .replaceAll(' ', '')
        .replace(/[=+×÷]|(?<=[\d)²])−/g, ' $& ');
    const numbered = (text: string): string => text.replace(/\u202f\p{L}+/gu, '');
    const value = (text: string): number[] =>
      sidesOf(text, () => ({ value: 7, error: 0 })).map((side) => side.value);
    fc.assert(
      fc.property(fc.oneof(driven, web), fc.nat(), (circuit, pick) => {
        const names = [...told(circuit).keys()];
        const { steps } = explain(circuit, { find: names[pick % names.length] ?? '' });
        for (const { substituted, unknowns } of steps) {
          const text = numbered(substituted).replace(/^[^=]* = /, '7 = ');
          if (unknowns || text.includes('_')) continue;
          assert.deepEqual(value(back(heard(text, course))), value(text), heard(text, course));
        }
      }),
    );
  });
  void it('in the words of the course, whatever its letter', () => {
    assert.equal(heard('U_R1 = 3 V', { wording: 'voltage' }), 'voltage across R1 equals 3 V');
  });
});
