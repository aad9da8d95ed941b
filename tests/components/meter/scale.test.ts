import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { Fraction } from '../../../src/engine/index.ts';
import {
  asksForInstrument,
  fetchInstruments,
  instruments,
} from '../../../src/components/meter/instruments.ts';
import { angleOf, multiples, scaleOf, sweep } from '../../../src/components/meter/instrument/scale.ts';

/** Exact values from 10⁻⁶ to 10⁷ with three figures. */
const size = fc
  .tuple(fc.integer({ min: 100, max: 999 }), fc.integer({ min: -8, max: 4 }))
  .map(([digits, power]) => new Fraction(digits).mul(new Fraction(10).pow(power)));
const limits = fc
  .tuple(size, fc.option(fc.integer({ min: 1, max: 4 }), { nil: undefined }))
  .map(([max, share]) => ({
    min: share === undefined ? new Fraction(0) : max.mul(share, 4).neg(),
    max,
    prefix: '' as const,
  }));

const isRound = (value: Fraction): boolean => /^[125]e/.test(Number(value).toExponential());

describe('a scale is divided as real ones are', () => {
  // Common practice: school meters of 0.6 A have 30 divisions of 0.02 A, of 3 V 30 of 0.1 V, of 5 A 50 of 0.1 A.
  const rows = [
    ['0', '0.6', '0.1', '0.02'],
    ['0', '3', '0.5', '0.1'],
    ['0', '1', '0.2', '0.02'],
    ['0', '5', '1', '0.1'],
    ['0', '15', '5', '0.5'],
    ['0', '300', '50', '10'],
    ['-1', '1', '0.5', '0.05'],
  ] as const;
  for (const [min, max, major, minor] of rows)
    it(`from ${min} to ${max}: numerals every ${major}, marks every ${minor}`, () => {
      const scale = scaleOf({ min: new Fraction(min), max: new Fraction(max), prefix: '' });
      expect(scale.major.toString()).to.equal(major);
      expect(scale.minor.toString()).to.equal(minor);
    });

  it('marks are round, at most 50 and at least 12 of them, some whole number between two numerals', () => {
    fc.assert(
      fc.property(limits, (each) => {
        const scale = scaleOf(each);
        const span = each.max.sub(each.min);
        expect(isRound(scale.major) && isRound(scale.minor)).to.equal(true);
        expect(scale.major.div(scale.minor).d).to.equal(1n);
        expect(Number(span.div(scale.minor))).to.be.within(12, 50);
        expect(Number(span.div(scale.major))).to.be.within(2.4, 6);
      }),
    );
  });

  it('every mark lies on the scale, and one more at either end would not', () => {
    fc.assert(
      fc.property(limits, (each) => {
        const { minor, min, max } = scaleOf(each);
        const marks = multiples(minor, each).map((times) => minor.mul(times));
        const [first, last] = [marks[0]!, marks.at(-1)!];
        expect(first.compare(min)).to.be.at.least(0);
        expect(first.sub(minor).compare(min)).to.be.below(0);
        expect(last.compare(max)).to.be.at.most(0);
        expect(last.add(minor).compare(max)).to.be.above(0);
        expect(marks.some((mark) => mark.equals(0))).to.equal(true);
      }),
    );
  });
});

describe('a needle turns', () => {
  const share = fc.double({ min: -2, max: 3, noNaN: true });

  it('from one end of the scale to the other', () => {
    fc.assert(
      fc.property(limits, (each) => {
        expect(angleOf(Number(each.min), each)).to.be.closeTo(-sweep.scale, 1e-9);
        expect(angleOf(Number(each.max), each)).to.be.closeTo(sweep.scale, 1e-9);
      }),
    );
  });

  it('by equal angles for equal steps, as long as it is between its stops', () => {
    fc.assert(
      fc.property(limits, fc.double({ min: 0, max: 1, noNaN: true }), (each, at) => {
        const [low, high] = [Number(each.min), Number(each.max)];
        const angle = angleOf(low + at * (high - low), each);
        expect(angle).to.be.closeTo(-sweep.scale + at * 2 * sweep.scale, 1e-6);
      }),
    );
  });

  it('never back when the value rises, and never beyond its stops', () => {
    fc.assert(
      fc.property(limits, share, share, (each, a, b) => {
        const max = Number(each.max);
        const [less, more] = [angleOf(Math.min(a, b) * max, each), angleOf(Math.max(a, b) * max, each)];
        expect(less).to.be.at.most(more);
        expect(less).to.be.at.least(-sweep.stop);
        expect(more).to.be.at.most(sweep.stop);
      }),
    );
  });

  it('against a stop for any value far beyond an end', () => {
    const each = { min: new Fraction(0), max: new Fraction(3), prefix: '' } as const;
    expect(angleOf(1e9, each)).to.equal(sweep.stop);
    expect(angleOf(-1e9, each)).to.equal(-sweep.stop);
  });
});

describe('what shows as a real instrument does', () => {
  it('is fetched once, by whichever meter asks first', async () => {
    const first = fetchInstruments();
    expect(fetchInstruments()).to.equal(first);
    await first;
    expect(instruments()?.indicationOn).to.be.a('function');
    expect(fetchInstruments(), 'also when it has come').to.equal(first);
  });

  it('is asked for by a range, by steps, and by any face, a misspelt one too', () => {
    const plain = { range: '', resolution: '', face: '' };
    expect(asksForInstrument(plain)).to.equal(false);
    for (const wish of [{ range: '1 A' }, { resolution: '0.1 A' }, { face: 'needel' }])
      expect(asksForInstrument({ ...plain, ...wish })).to.equal(true);
  });
});
