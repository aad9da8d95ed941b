import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { parseCircuit, quantities, usualCourse } from '../../../src/engine/core.ts';
import { asRead, calledQuantity, inLetters, partsOf } from '../../../src/components/link/index.ts';

const circuit = parseCircuit('B1 6 V r 1 Ω + A1 + (R1 4 Ω ∥ (R12 6 Ω + L1 2 Ω))');
const names = fc.constantFrom(...quantities(circuit));
const letters = { ...usualCourse, letter: 'U' } as const;

describe('the parts of a quantity’s name', () => {
  const rows = [
    ['I_A1', 'I', 'A1'],
    ['R_total', 'R', 'total'],
    ['V_p_q', 'V', 'p_q'],
    ['Pemf_B1', 'Pemf', 'B1'],
    ['temperature', 'temperature', ''],
    ['', '', ''],
  ] as const;
  for (const [name, letter, of] of rows)
    it(name || 'none', () => {
      expect(partsOf(name)).to.deep.equal({ letter, of });
    });
});

describe('what a quantity is called', () => {
  const rows = [
    ['I_A1', 'current through A1'],
    ['V_R1', 'p.d. across R1'],
    ['U_R1', 'p.d. across R1'],
    ['V_p_q', 'p.d. between p and q'],
    ['R_total', 'total resistance'],
    ['P_L1', 'power of L1'],
    ['E_B1', 'e.m.f. of B1'],
    ['r_B1', 'internal resistance of B1'],
  ] as const;
  for (const [name, said] of rows)
    it(name, () => {
      expect(calledQuantity(name, usualCourse)).to.equal(said);
    });

  it('in the class’s own word', () => {
    expect(calledQuantity('V_R1', { ...usualCourse, wording: 'voltage' })).to.equal('voltage across R1');
  });

  it('tells every quantity of a circuit from every other', () => {
    const called = quantities(circuit).map((name) => calledQuantity(name, usualCourse));
    expect(new Set(called).size).to.equal(called.length);
  });
});

describe('the letters of a course', () => {
  it('are those of the p.d. alone', () => {
    expect(inLetters('V_R1 = 6 V', letters)).to.equal('U_R1 = 6 V');
    expect(inLetters('U_R1 = 6 V', usualCourse)).to.equal('V_R1 = 6 V');
    expect(inLetters('I_R1 R_R1 Pemf_B1', letters)).to.equal('I_R1 R_R1 Pemf_B1');
    expect(asRead('U_R1 + U_R2 = V_B1')).to.equal('V_R1 + V_R2 = V_B1');
  });

  it('leave every place of a statement where it is', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 80 }), names, (text, name) => {
        const whole = `${name} ${text} ${name}`;
        expect(asRead(inLetters(whole, letters)).length).to.equal(whole.length);
        expect(asRead(inLetters(name, letters))).to.equal(name);
      }),
    );
  });
});
