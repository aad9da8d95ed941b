import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { claimNow, testClaim } from '../../../src/engine/claims/index.ts';
import { failsText, nowText, verdictText } from '../../../src/components/claim/finding.ts';
import { sidesText } from '../../../src/components/claim/sides.ts';
import { momentOf, plain } from '../moment.ts';

const quay = 'B1 6 V + A3 + S1 closed + ((A1 + R1 [2..40] 12 Ω) ∥ (A2 + R2 12 Ω))';

/** Both sides of a claim as they are written. */
function sides(line: string, claim: string, course = ''): readonly string[] {
  const moment = momentOf(line, { course });
  const now = claimNow(moment.circuit, claim);
  if (!now) throw new Error(claim);
  const { left, right } = sidesText(moment, now);
  return [left, right].map(plain);
}

describe('both sides of a claim', () => {
  for (const [claim, left, right] of [
    ['V_R1 = 3 V_R2', '6.00 V', '18.0 V'],
    ['R_total < 7', '6.00 Ω', '7.00 Ω'],
    ['I_A1 / I_A2 = 1', '1.00', '1.00'],
    ['V_R1 I_A1 = P_R1', '3.00 W', '3.00 W'],
    ['V_R1² = 36', '36.0 V²', '36.0 V²'],
    ['I_A1 R_R1 I_A1 R_R1 V_R1 = 1', '216 V³', '1.00 V³'],
    ['P_R1 I_A1 = 0.5', '1.50 V A²', '0.500 V A²'],
    ['I_A1 / V_R1 = 1', '0.0833 A/V', '1.00 A/V'],
    ['2 > 3', '2.00', '3.00'],
  ] as const)
    it(`of ${claim} are ${left} and ${right}`, () => {
      expect(sides(quay, claim)).to.deep.equal([left, right]);
    });

  it('share their prefix, so that they can be compared, but where a unit has no name', () => {
    const tiny = 'B1 6 mV + A1 + R1 12 Ω';
    expect(sides(tiny, 'I_A1 = V_R1 / R_R1')).to.deep.equal(['500 µA', '500 µA']);
    expect(sides('B1 6 V + R1 2 kΩ + R2 1 Ω', 'R_R1 > R_R2')).to.deep.equal(['2.00 kΩ', '0.00100 kΩ']);
    expect(sides(tiny, 'V_R1² = 1')).to.deep.equal(['0.0000360 V²', '1.00 V²']);
  });

  it('are written with the figures and the decimal sign of the course', () => {
    expect(sides(quay, 'I_A1 = 0.123', '2 comma')).to.deep.equal(['0,50 A', '0,12 A']);
    expect(sides(quay, 'V_R1² = 1', '2 comma')).to.deep.equal(['36 V²', '1,0 V²']);
  });
});

describe('what holds as a board stands', () => {
  it('is said with both sides, and that they differ where they are written alike', () => {
    expect(plain(nowText(momentOf(quay), 'I_A1 = I_A2'))).to.equal(
      'As the board stands now it holds: the left side is 0.500 A, the right side 0.500 A.',
    );
    expect(plain(nowText(momentOf('B1 6 V + R1 333 Ω + R2 333.1 Ω'), 'V_R1 = V_R2'))).to.equal(
      'As the board stands now it fails: the left side is 3.00 V, the right side 3.00 V; they differ in later figures.',
    );
  });

  it('is not said on a covered board, nor of what is not understood or has no value', () => {
    expect(nowText(momentOf(quay, { covered: true }), 'I_A1 = I_A2')).to.equal('');
    for (const claim of ['I_A1', 'I_A1 = I_A9', 'V_R1 = I_A1', 'I_A1 = 1 / (I_A1 − I_A2)'])
      expect(nowText(momentOf(quay), claim), claim).to.equal('');
  });

  it('gives no number away that the pupil is to find, whatever stands beside it', () => {
    const rows = [
      ['B1 6 V + A1 + R1 12 Ω hidden', 'R_R1 = 12', 'I_A1 = V_R1 / R_R1', '1 = 2 R_R1 / R_R1'],
      ['B1 6 V hidden + R1 3 Ω', 'E_B1 = V_R1', 'V_R1 < 2 E_B1'],
      ['B1 6 V r 1 Ω hidden + R1 3 Ω', 'r_B1 < 6', 'V_B1 = E_B1 − I_B1 r_B1'],
      ['I1 2 A hidden + R1 3 Ω', 'I_I1 = I_R1'],
    ] as const;
    for (const [line, ...claims] of rows)
      for (const claim of claims) expect(nowText(momentOf(line), claim), claim).to.equal('');
  });

  it('says what a pupil may measure of a component whose value is hidden, and of one with a longer label', () => {
    const rows = [
      ['B1 6 V + A1 + R1 12 Ω hidden', 'I_R1 = I_A1'],
      ['B1 6 V + R1 12 Ω hidden + R12 5 Ω', 'R_R12 = 5'],
      ['B1 6 V hidden + R1 3 Ω', 'V_B1 = V_R1'],
      ['I1 2 A hidden + R1 3 Ω', 'V_I1 = V_R1'],
    ] as const;
    for (const [line, claim] of rows)
      expect(nowText(momentOf(line), claim), claim).to.match(/^As the board stands now it holds/);
  });
});

describe('what was found out of a claim', () => {
  it('is one sentence, and none where it was not understood', () => {
    const verdict = (line: string, claim: string): string => {
      const moment = momentOf(line);
      return verdictText(moment, testClaim(moment.circuit, claim));
    };
    expect(verdict(quay, 'I_A3 ≥ I_A1')).to.match(/^Always true/);
    expect(verdict(quay, 'V_R1 = 2 V_R2 + 1')).to.equal(
      'Never true: it fails at every setting of S1 and R1.',
    );
    expect(verdict(quay, 'I_A1 = I_A2')).to.equal('Only sometimes true.');
    expect(verdict('B1 6 V + R1 12 Ω', 'V_R1 = 6')).to.equal(
      'Always true: it holds here, where nothing can be turned.',
    );
    expect(verdict(quay, 'I_A1 = ')).to.equal('');
  });

  it('names what is set otherwise where it fails, in the words of the circuit', () => {
    const moment = momentOf('B1 [0..12] 6 V + S1 open + R1 [2..40] 12 Ω + L1 4 Ω');
    expect(plain(failsText(moment, { S1: 'closed', R1: '2' }))).to.equal(
      'It fails with S1 closed and R1 at 2 Ω.',
    );
    expect(plain(failsText(moment, { B1: '9', R1: '40', L1: 'broken' }))).to.equal(
      'It fails with the e.m.f. of B1 at 9 V, R1 at 40 Ω and L1 broken.',
    );
    expect(failsText(moment, { R1: '12', S1: 'open' }), 'as it is').to.equal(
      'It fails as the board stands now.',
    );
  });

  it('does not tell where a hidden slider stands, but that a hidden switch is closed', () => {
    const moment = momentOf('B1 6 V + S1 open + R1 [2..40] 12 Ω hidden + L1 4 Ω');
    const text = plain(failsText(moment, { S1: 'closed', R1: '2' }));
    expect(text).to.equal('It fails with S1 closed and R1 at ?.');
  });

  it('is what the board reads, at any setting of the slider', () => {
    const ohms = fc.integer({ min: 2, max: 40 });
    fc.assert(
      fc.property(ohms, ohms, (a, b) => {
        const moment = momentOf(quay.replace('12 Ω) ∥', `${a} Ω) ∥`).replace('R2 12', `R2 ${b}`));
        expect(nowText(moment, 'I_A1 < I_A2').includes('it holds')).to.equal(a > b);
      }),
      { numRuns: 10 },
    );
  });
});
