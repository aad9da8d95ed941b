import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { Fraction, usualCourse } from '../../../src/engine/index.ts';
import type { Instrument } from '../../../src/components/meter/instrument/instrument.ts';
import { readLimits, readResolution } from '../../../src/components/meter/instrument/limits.ts';
import { measure, stepsOf } from '../../../src/components/meter/instrument/measure.ts';
import { scaleOf } from '../../../src/components/meter/instrument/scale.ts';

const exact = fc
  .tuple(fc.integer({ min: -(10 ** 6), max: 10 ** 6 }), fc.integer({ min: 1, max: 10 ** 6 }))
  .map(([n, d]) => new Fraction(n, d));
const step = fc
  .tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 0, max: 4 }))
  .map(([n, decimals]) => new Fraction(n, 10 ** decimals));

function instrument(range: string, face = 'digits'): Instrument {
  const limits = readLimits(range, 'A');
  const scale = face === 'needle' && limits ? scaleOf(limits) : undefined;
  return { prefix: limits?.prefix, limits, scale, resolution: undefined, chosen: false, mistake: undefined };
}

function shown(value: Fraction | number, smallest: Fraction, made: Instrument): string {
  return measure(value, smallest, made, 'A', usualCourse).text.replace(/\s/g, ' ');
}
const heard = (value: Fraction, made: Instrument): string =>
  measure(value, new Fraction('0.02'), made, 'A', usualCourse).spoken;

describe('a meter reads in steps', () => {
  it('never more than half a step off, exactly', () => {
    fc.assert(
      fc.property(exact, step, (value, smallest) => {
        const off = smallest.mul(stepsOf(value, smallest)).sub(value).abs();
        expect(off.compare(smallest.div(2))).to.be.at.most(0);
      }),
    );
  });

  it('the same for a value and its opposite, but for the sign: halves go away from 0', () => {
    fc.assert(
      fc.property(exact, step, (value, smallest) => {
        expect(stepsOf(value.neg(), smallest)).to.equal(-stepsOf(value, smallest));
      }),
    );
    expect(stepsOf(new Fraction('0.45'), new Fraction('0.02'))).to.equal(23n);
    expect(stepsOf(new Fraction('-0.45'), new Fraction('0.02'))).to.equal(-23n);
  });

  it('the same from a float as from a fraction, unless that is half-way', () => {
    fc.assert(
      fc.property(exact, step, (value, smallest) => {
        const rest = value.div(smallest).mod(1).abs().sub('1/2').abs();
        fc.pre(rest.compare(1e-6) > 0);
        expect(stepsOf(Number(value), smallest)).to.equal(stepsOf(value, smallest));
      }),
    );
  });

  it('with the decimals of a step, whatever it reads', () => {
    const made = instrument('0.6 A');
    for (const [value, text] of [
      ['0', '0.00 A'],
      ['1/3', '0.34 A'],
      ['0.5', '0.50 A'],
      ['-0.009', '0.00 A'],
      ['-0.011', '−0.02 A'],
    ] as const)
      expect(shown(new Fraction(value), new Fraction('0.02'), made)).to.equal(text);
    expect(shown(new Fraction('0.45'), new Fraction('0.02'), instrument('600 mA'))).to.equal('460 mA');
  });
});

describe('a meter has a range', () => {
  const tiny = new Fraction(1, 10n ** 20n);
  const smallest = new Fraction('0.02');

  it('and shows “overload” just beyond it, either way', () => {
    fc.assert(
      fc.property(step, (max) => {
        const made = instrument(`${max.toString(6)} A`);
        for (const end of [max, max.neg()]) {
          const beyond = end.add(tiny.mul(end.s));
          expect(shown(end, max, made)).to.not.equal('overload');
          expect(shown(beyond, max, made)).to.equal('overload');
        }
      }),
    );
  });

  it('which a float reaches without a flicker', () => {
    const made = instrument('0.6 A');
    expect(shown(0.6 + 1e-16, smallest, made)).to.equal('0.60 A');
    expect(shown(0.2 * 3, smallest, made)).to.equal('0.60 A');
    expect(shown(0.6001, smallest, made)).to.equal('overload');
  });

  it('and says beyond which end a reading lies', () => {
    expect(heard(new Fraction(2), instrument('0.6 A'))).to.equal('more than 0.6 amperes');
    expect(heard(new Fraction(-2), instrument('600 mA'))).to.equal(
      'less than -600 milliamperes'.replace('-', '−'),
    );
    expect(heard(new Fraction(-2), instrument('0.6 A', 'needle'))).to.equal('less than 0 amperes');
    expect(heard(new Fraction(-2), instrument('-0.5..1 A', 'needle'))).to.equal('less than −0.5 amperes');
  });
});

describe('a range is read', () => {
  const ends = (text: string): unknown => {
    const read = readLimits(text, 'A');
    return read && [Number(read.min), Number(read.max), read.prefix];
  };
  const rows = [
    ['0.6 A', [0, 0.6, '']],
    ['600mA', [0, 0.6, 'm']],
    ['0,6 A', [0, 0.6, '']],
    ['3', [0, 3, '']],
    ['-0.6..0.6 A', [-0.6, 0.6, '']],
    ['−600…600 mA', [-0.6, 0.6, 'm']],
    ['-50 mA .. 0.1 A', [-0.05, 0.1, '']],
    ['0..5 A', [0, 5, '']],
  ] as const;
  for (const [text, read] of rows) it(text, () => expect(ends(text)).to.deep.equal(read));

  for (const text of ['3 V', '-3 A', '0 A', 'A', '1..2..3 A', '1..2 A', '-2..-1 A', '..', '-1..1 V', '0.6 B'])
    it(`but not “${text}”`, () => expect(ends(text)).to.equal(undefined));

  it('and a resolution is a step above 0 that fits into it', () => {
    const limits = readLimits('600 mA', 'A');
    const read = (text: string): number | undefined =>
      Number(readResolution(text, 'A', limits)?.value ?? NaN) || undefined;
    expect(read('0.02 A')).to.equal(0.02);
    expect(read('20'), 'in the unit of the range').to.equal(0.02);
    for (const text of ['0', '-1 mA', '0.7 A', '1/3', '20 mV', 'fine'])
      expect(read(text), text).to.equal(undefined);
  });

  it('and nothing that anybody may write there throws', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme' }), (text) => {
        const read = readLimits(text, 'V');
        if (read) expect(read.max.compare(0)).to.be.above(0);
        readResolution(text, 'V', read);
      }),
    );
  });
});
