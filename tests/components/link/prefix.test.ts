import { expect } from '@open-wc/testing';
import { Fraction } from '../../../src/engine/index.ts';
import { figuresOf, prefixFor, prefixIn, readingOf } from '../../../src/components/link/index.ts';
import { momentOf, plain } from '../moment.ts';

/** What a board reads of some quantities. */
function read(line: string, ...names: readonly string[]): readonly string[] {
  const moment = momentOf(line);
  return names.map((name) => plain(readingOf(moment, name).text));
}

describe('the prefix of a unit', () => {
  it('is found in all its forms, and in no other word', () => {
    for (const [unit, base, prefix] of [
      ['pA', 'A', 'p'],
      ['nA', 'A', 'n'],
      ['µA', 'A', 'µ'],
      ['mA', 'A', 'm'],
      ['A', 'A', ''],
      ['kΩ', 'Ω', 'k'],
      ['MΩ', 'Ω', 'M'],
      ['GW', 'W', 'G'],
      ['mA', 'V', undefined],
      ['m', 'A', undefined],
      ['Am', 'A', undefined],
      ['', 'A', undefined],
      ['KΩ', 'Ω', undefined],
    ] as const)
      expect(prefixIn(unit, base), unit).to.equal(prefix);
  });
});

describe('readings of one kind share their prefix', () => {
  it('currents among currents, p.d.s among p.d.s, powers among powers', () => {
    const line = 'B1 6 mV + A1 + (R1 2 Ω ∥ R2 200 Ω) + R3 10 Ω';
    expect(read(line, 'I_A1', 'I_R1', 'I_R2')).to.deep.equal(['501 µA', '496 µA', '4.96 µA']);
    expect(read(line, 'V_B1', 'V_R2', 'V_R3')).to.deep.equal(['6.00 mV', '0.992 mV', '5.01 mV']);
    expect(read(line, 'P_B1', 'P_R2')).to.deep.equal(['3.00 µW', '0.00492 µW']);
  });

  it('but resistances have each their own', () => {
    expect(read('B1 6 V + R1 4.7 Ω + R2 4.7 kΩ + R3 4.7 MΩ', 'R_R1', 'R_R2', 'R_R3')).to.deep.equal([
      '4.70 Ω',
      '4.70 kΩ',
      '4.70 MΩ',
    ]);
  });

  it('and what is a thousand times smaller than that suits has its own as well', () => {
    const quay = momentOf('B1 6 V + (R1 12 Ω ∥ R2 5.9 kΩ ∥ R3 6.1 kΩ)');
    const own = (amperes: number): string => prefixFor(quay, 'A', new Fraction(amperes), 3);
    expect([own(0.001), own(0.00099), own(-0.00099)]).to.deep.equal(['', 'µ', 'µ']);
  });

  it('whatever else has no reading at all', () => {
    expect(read('B1 6 mV + S1 open + R1 12 Ω; V1 across S1', 'V_S1', 'V_B1')).to.deep.equal([
      '6.00 mV',
      '6.00 mV',
    ]);
  });
});

describe('what cannot be read', () => {
  it('is said in the place of a number, where that is a reading in itself', () => {
    expect(read('B1 6 V + S1 open + R1 12 Ω', 'I_R1', 'R_total')).to.deep.equal([
      'no current',
      'no path for a current',
    ]);
    expect(read('B1 6 V + V1 + V2 + R1 3 Ω', 'V_V1')).to.deep.equal(['no steady reading']);
    expect(read('B1 6 V + A1', 'I_A1')).to.deep.equal(['—']);
  });

  it('has 0 as its value where no current flows, and none else', () => {
    const open = momentOf('B1 6 V + S1 open + R1 12 Ω');
    expect(readingOf(open, 'I_R1').value).to.equal(0);
    expect(readingOf(open, 'R_total')).to.not.have.property('value');
  });
});

describe('figures as given', () => {
  const figures = (line: string): number => figuresOf(momentOf(line, { course: 'as-given' }));

  it('are as many as the least of the values has, and at least two', () => {
    expect(figures('B1 6.00 V + R1 12.00 Ω + R2 4.700 kΩ')).to.equal(3);
    expect(figures('B1 6.000 V r 0.500 Ω + R1 12.0000 Ω')).to.equal(3);
    expect(figures('B1 6 V + R1 12.00 Ω')).to.equal(2);
  });
});
