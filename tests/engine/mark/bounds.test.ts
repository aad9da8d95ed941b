import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { agreement } from '../../../src/engine/mark/index.ts';
import { fixed, Fraction, powerOfTen } from '../../../src/engine/quantity/index.ts';

const hundred = { value: new Fraction(100), text: '100\u202fA' };
const small = { value: new Fraction('0.0045'), text: '4.50\u202fmA' };
const tenth = { value: new Fraction('0.1'), text: '0.100\u202fΩ' };

void describe('what is near is a matter of rounding, up to two in a hundred', () => {
  const rows = [
    ['102', hundred, 'rounding'],
    ['98', hundred, 'rounding'],
    ['102.1', hundred, 'other'],
    ['97.9', hundred, 'other'],
    // In the unit that is written, not in the base unit: 4.504 mA rounds to 4.50 mA, 4.506 mA does not.
    ['4.504', small, undefined],
    ['4.506', small, 'rounding'],
    ['4.494 mA', small, 'rounding'],
    ['0.004504 A', small, undefined],
    ['9.9', tenth, 'upside down'],
    ['9.7', tenth, 'other'],
  ] as const;
  for (const [typed, written, expected] of rows)
    void it(`“${typed}” for ${written.text} is ${expected ?? 'right'}`, () => {
      assert.equal(agreement(typed, written), expected);
    });
});

void describe('a power of ten', () => {
  const written = { value: new Fraction(37), text: '37.0\u202fV' };
  // The prefixes are three apart, a misplaced point is one to five, and two prefixes on make six and nine.
  for (const power of [1, 2, 3, 4, 5, 6, 9])
    void it(`is told ${power} places up and down`, () => {
      for (const one of [power, -power]) {
        const typed = written.value.mul(powerOfTen(one)).toString();
        assert.equal(agreement(typed, written), 'power of ten', typed);
      }
    });

  void it('is no longer told of seven, eight and ten places, nor of a value that is nought', () => {
    for (const power of [7, 8, 10, -7, -8, -10]) {
      const typed = written.value.mul(powerOfTen(power)).toString();
      assert.equal(agreement(typed, written), 'other', typed);
    }
    assert.equal(agreement('10', { value: new Fraction(0), text: '0\u202fV' }), 'other');
  });

  void it('with a figure wrong besides is another mistake', () => {
    assert.equal(agreement('371', written), 'other');
  });
});

void describe('what is read as a number', () => {
  const one = { value: new Fraction(1), text: '1.00\u202fA' };
  void it('has at most forty characters, its unit included, and thirty digits', () => {
    assert.equal(agreement(`1${' '.repeat(38)}A`, one), undefined);
    assert.equal(agreement(`1${' '.repeat(39)}A`, one), 'not a number');
    assert.equal(agreement(`1.${'0'.repeat(30)}`, one), undefined);
    assert.equal(agreement(`1.${'0'.repeat(31)}`, one), 'not a number');
  });

  void it('is the same with blanks round it, and between it and its unit', () => {
    for (const typed of [' 1', '1 ', '\t1 A', '1A', '1\u202fA', '1\u00a0A', '1   A'])
      assert.equal(agreement(typed, one), undefined, typed);
  });

  void it('has one sign, a hyphen or a dash, and perhaps a blank after it', () => {
    const negative = { value: new Fraction(-1), text: '−1.00\u202fA' };
    for (const sign of ['-', '–', '−', '- ', '− ']) {
      assert.equal(agreement(`${sign}1`, negative), undefined, sign);
      assert.equal(agreement(`${sign}1`, one), 'sign', sign);
    }
    assert.equal(agreement('1', negative), 'sign');
    assert.equal(agreement('--1', negative), 'not a number');
    assert.equal(agreement('+1', one), 'not a number');
  });

  const units = [
    ['V', 'V'],
    ['W', 'W'],
    ['J', 'J'],
    ['C', 'C'],
    ['s', 's'],
    ['Ω', 'Ω'],
    ['Ω', 'ohm'],
    ['Ω', 'ohms'],
    ['Ω', '\u2126'], // OHM SIGN, which Unicode keeps beside the Greek letter (Unicode 15, 2126)
  ] as const;
  for (const [unit, typed] of units)
    void it(`has its unit written ${typed}, and no other`, () => {
      const written = { value: new Fraction(2), text: `2.00\u202f${unit}` };
      assert.equal(agreement(`2 ${typed}`, written), undefined);
      assert.equal(agreement(`2000 m${typed}`, written), undefined);
      for (const [other] of units)
        if (other !== unit) assert.equal(agreement(`2 ${other}`, written), 'unit', other);
    });
});

const prefixes = { p: -12, n: -9, µ: -6, m: -3, '': 0, k: 3, M: 6, G: 9 } as const;
type Prefix = keyof typeof prefixes;
const prefix = fc.constantFrom<Prefix>('p', 'n', 'µ', 'm', '', 'k', 'M', 'G');

void describe('whatever was written', () => {
  void it('the verdict depends on what the number is, not on the prefix that it is written with', () => {
    const digits = fc.integer({ min: 1, max: 9999 });
    fc.assert(
      fc.property(digits, digits, prefix, prefix, (is, typed, at, to) => {
        const value = new Fraction(is, 100).mul(powerOfTen(prefixes[at]));
        const text = `${fixed(value, 2, -prefixes[at])}\u202f${at}V`;
        const plain = `${fixed(new Fraction(typed, 100), 2, 0)} ${at}V`;
        const moved = new Fraction(typed, 100).mul(powerOfTen(prefixes[at] - prefixes[to]));
        const places = Math.max(0, 2 + prefixes[to] - prefixes[at]);
        const other = `${fixed(moved, places, 0)} ${to}V`;
        fc.pre(other.length <= 30);
        assert.equal(agreement(other, { value, text }), agreement(plain, { value, text }), other);
      }),
    );
  });

  void it('the opposite number is a matter of its sign, and nothing is right and wrong at once', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 99_999 }), (is) => {
        const value = new Fraction(is, 100);
        const text = `${fixed(value, 2, 0)}\u202fA`;
        assert.equal(agreement(`-${fixed(value, 2, 0)}`, { value, text }), 'sign');
        assert.equal(
          agreement(fixed(value.add(new Fraction(1, 200)), 3, 0), { value, text }) === undefined,
          false,
        );
        assert.equal(agreement(fixed(value.add(new Fraction(1, 250)), 3, 0), { value, text }), undefined);
      }),
    );
  });
});
