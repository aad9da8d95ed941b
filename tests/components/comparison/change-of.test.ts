import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { Fraction, readCourse } from '../../../src/engine/index.ts';
import { changeOf } from '../../../src/components/comparison/change-of.ts';
import type { ChangeStyle } from '../../../src/components/link/index.ts';
import { momentIn, plain, storeOf } from '../moment.ts';

const quay = 'B1 6 V + A1 + R1 [4..40] 12 Ω';
const both = 'B1 [-6..6] 6 V + A1 + R1 12 Ω';
const pump = 'B1 6 V + S1 closed + A1 + R1 12 Ω';

/** What a quantity has done since it was held, when one thing has been set since: as it is seen, heard and marked. */
function change(
  line: string,
  [id, setting]: readonly [string, string],
  name: string,
  style: ChangeStyle = {},
  course = '',
): readonly string[] {
  const store = storeOf(line, { course });
  store.hold();
  store.set(id, setting);
  const made = changeOf(momentIn(store), name, style);
  return made ? [plain(made.text), plain(made.spoken), made.mark] : [];
}

describe('what a reading has done since it was held', () => {
  for (const [line, turn, name, text, spoken, mark] of [
    [quay, ['R1', '24'], 'I_A1', 'fell by 0.250 A, × 0.500', 'fell by 0.250 amperes, × 0.500', '▼'],
    [quay, ['R1', '24'], 'R_total', 'rose by 12.0 Ω, × 2.00', 'rose by 12.0 ohms, × 2.00', '▲'],
    [quay, ['R1', '24'], 'P_R1', 'fell by 1.50 W, × 0.500', 'fell by 1.50 watts, × 0.500', '▼'],
    [quay, ['R1', '24'], 'V_R1', 'the same', 'the same', '='],
    [pump, ['S1', 'open'], 'I_A1', 'fell by 0.500 A, × 0', 'fell by 0.500 amperes, × 0', '▼'],
    [pump, ['S1', 'open'], 'V_S1', 'rose by 6.00 V', 'rose by 6.00 volts', '▲'],
    [pump, ['S1', 'open'], 'R_total', 'was 12.0 Ω', 'was 12.0 ohms', ''],
    [both, ['B1', '-6'], 'I_A1', 'turned round', 'turned round', '='],
  ] as const)
    it(`${name}, ${turn.join(' set to ')}: ${text}`, () => {
      expect(change(line, turn, name)).to.deep.equal([text, spoken, mark]);
    });

  it('goes by signs where a meter shows them', () => {
    expect(change(both, ['B1', '-6'], 'I_A1', { as: 'signed' })).to.deep.equal([
      'turned round, fell by 1.00 A',
      'turned round, fell by 1.00 amperes',
      '▼',
    ]);
    expect(change(both, ['B1', '-3'], 'I_A1')[0]).to.equal('turned round, fell by 0.250 A, × 0.500');
  });

  it('is exact as a fraction, and so is how many times', () => {
    expect(change(quay, ['R1', '9'], 'I_A1', { as: 'fraction' })).to.deep.equal([
      'rose by 1/6 A, × 4/3',
      'rose by 1/6 amperes, × 4/3',
      '▲',
    ]);
  });

  it('is written as its reading is: figures, prefix, decimal sign', () => {
    expect(change(quay, ['R1', '24'], 'I_A1', { prefix: 'm', figures: 4 })[0]).to.equal(
      'fell by 250.0 mA, × 0.5000',
    );
    expect(change(quay, ['R1', '24'], 'I_A1', {}, '2 comma').slice(0, 2)).to.deep.equal([
      'fell by 0,25 A, × 0,50',
      'fell by 0,25 amperes, × 0,50',
    ]);
  });

  it('is nothing where nothing is held, where it is covered, and of what is hidden or never was read', () => {
    const store = storeOf('B1 6 V + S1 open + A1 + R1 [4..40] 12 Ω hidden');
    expect(changeOf(momentIn(store), 'I_A1')).to.equal(undefined);
    store.hold();
    store.set('R1', '24');
    for (const name of ['R_R1', 'R_total', 'I_A9'])
      expect(changeOf(momentIn(store), name), name).to.equal(undefined);
    expect(changeOf(momentIn(store), 'I_A1')?.text, 'no current then and now').to.equal('the same');
    store.show(readCourse('').course, true);
    expect(changeOf(momentIn(store), 'I_A1')).to.equal(undefined);
    store.show(readCourse('').course, false);
    store.release();
    expect(changeOf(momentIn(store), 'I_A1')).to.equal(undefined);
  });

  it('follows a slider while it moves, as it will be when that is let go', () => {
    const store = storeOf(quay);
    store.hold();
    store.move('R1', '24');
    const moving = changeOf(momentIn(store), 'I_A1');
    store.set('R1', '24');
    expect(moving).to.deep.equal(changeOf(momentIn(store), 'I_A1'));
    store.move('R1', '12');
    expect(changeOf(momentIn(store), 'R_R1')?.mark).to.equal('=');
  });

  it('says “rose” just where the reading is larger than it was, at any setting', () => {
    const ohms = fc.integer({ min: 4, max: 40 });
    fc.assert(
      fc.property(ohms, ohms, (was, is) => {
        const [text = '', , mark = ''] = change(quay.replace('12', `${was}`), ['R1', `${is}`], 'I_A1');
        const expected = is < was ? ['rose', '▲'] : is > was ? ['fell', '▼'] : ['the same', '='];
        expect([text.startsWith(expected[0] ?? '-'), mark]).to.deep.equal([true, expected[1]]);
      }),
      { numRuns: 40 },
    );
  });
});

describe('what an instrument that reads in steps of 0.1 A has done', () => {
  const step = new Fraction(1, 10);
  const style: ChangeStyle = {
    as: 'signed',
    instrument: {
      step,
      read: (value) => new Fraction(value).div(step).round().mul(step),
      write: (value) => ({ text: `${Number(value)} A`, spoken: `${Number(value)} amperes` }),
    },
  };

  it('is a difference of what it reads, and how many times that is', () => {
    // 0.5 A, then 6/19 A, of which it reads 0.3 A.
    expect(change(quay, ['R1', '19'], 'I_A1', style)).to.deep.equal([
      'fell by 0.2 A, × 0.600',
      'fell by 0.2 amperes, × 0.600',
      '▼',
    ]);
  });

  it('is less than a step where it reads the same of what is not', () => {
    // 0.5 A, then 6/13 A, of which it reads 0.5 A too.
    expect(change(quay, ['R1', '13'], 'I_A1', style)).to.deep.equal([
      'fell by less than 0.1 A',
      'fell by less than 0.1 amperes',
      '▼',
    ]);
    expect(change(quay, ['R1', '12'], 'I_A1', style)[0]).to.equal('the same');
  });
});
