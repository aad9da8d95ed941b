import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import {
  Fraction,
  figuresWritten,
  fixed,
  leadingPower,
  numberText,
  preferred,
  preferredPlace,
  quantity,
  roundUp,
  significant,
  suitablePrefix,
  type Prefix,
  type Unit,
} from '../../../src/engine/quantity/index.ts';

/** Significant figures: a value, how many, the power of ten it is moved by, and how it is written. Halves are rounded up (common practice). */
const figures: readonly (readonly [value: string, figures: number, shift: number, text: string])[] = [
  ['0', 3, 0, '0'],
  ['0', 1, 3, '0'],
  ['0.5', 3, 0, '0.500'],
  ['-0.05', 3, 0, '−0.0500'],
  ['999.4', 3, 0, '999'],
  ['999.6', 3, 0, '1000'],
  ['-999.6', 3, 0, '−1000'],
  ['99.96', 3, 0, '100'],
  ['9.996', 3, 0, '10.0'],
  ['0.09996', 3, 0, '0.100'],
  ['0.0009994', 3, 0, '0.000999'],
  ['1', 1, 0, '1'],
  ['10', 1, 0, '10'],
  ['10', 2, 0, '10'],
  ['10', 3, 0, '10.0'],
  ['0.001', 1, 0, '0.001'],
  ['9.5', 1, 0, '10'],
  ['9.4', 1, 0, '9'],
  ['0.5', 1, 0, '0.5'],
  ['123456', 2, 0, '120000'],
  ['125', 2, 0, '130'],
  ['0.0123', 3, 3, '12.3'],
  ['12300', 2, -3, '12'],
  ['12300', 3, -6, '0.0123'],
  ['4700', 2, -3, '4.7'],
];

/** Decimals: the same with so many places behind the point. Never "−0". */
const decimals: readonly (readonly [value: string, decimals: number, shift: number, text: string])[] = [
  ['0', 0, 0, '0'],
  ['0', 2, 0, '0.00'],
  ['0.5', 2, 0, '0.50'],
  ['-0.5', 1, 0, '−0.5'],
  ['-0.004', 2, 0, '0.00'],
  ['0.004', 2, 0, '0.00'],
  ['0.006', 2, 0, '0.01'],
  ['-0.006', 2, 0, '−0.01'],
  ['999.996', 2, 0, '1000.00'],
  ['1234.5', 0, 0, '1235'],
  ['-1234.5', 0, 0, '−1235'],
  ['7', 3, 0, '7.000'],
  ['10', 0, 0, '10'],
  ['0.0123', 1, 3, '12.3'],
  ['1500', 1, -3, '1.5'],
  ['1500', 0, -3, '2'],
  ['1499', 0, -3, '1'],
];

void describe('a value in figures', () => {
  for (const [value, count, shift, text] of figures)
    void it(`of ${value} × 10^${shift} to ${count} is ${text}, from a fraction and from a float`, () => {
      assert.equal(significant(new Fraction(value), count, shift), text);
      assert.equal(significant(Number(value), count, shift), text);
    });

  for (const [value, places, shift, text] of decimals)
    void it(`of ${value} × 10^${shift} with ${places} decimals is ${text}, from a fraction and from a float`, () => {
      assert.equal(fixed(new Fraction(value), places, shift), text);
      assert.equal(fixed(Number(value), places, shift), text);
    });

  void it('is rounded half away from zero where it is a fraction, on either side of it', () => {
    for (const [value, text] of [
      ['0.125', '0.13'],
      ['-0.125', '−0.13'],
      ['1.005', '1.01'],
      ['-1.005', '−1.01'],
      ['2/3', '0.67'],
      ['1/3', '0.33'],
      ['-2/3', '−0.67'],
    ] as const)
      assert.equal(fixed(new Fraction(value), 2), text, value);
  });

  void it('has the power of ten of its leading digit once it is rounded', () => {
    for (const [value, count, power] of [
      ['0', 3, 0],
      ['1', 1, 0],
      ['9.99', 3, 0],
      ['9.996', 3, 1],
      ['10', 1, 1],
      ['450', 3, 2],
      ['999.4', 3, 2],
      ['999.7', 3, 3],
      ['0.2', 3, -1],
      ['0.0996', 3, -2],
      ['0.09996', 3, -1],
      ['-0.09996', 3, -1],
      ['1000000', 3, 6],
    ] as const) {
      assert.equal(leadingPower(new Fraction(value), count), power, value);
      assert.equal(leadingPower(Number(value), count), power, value);
    }
  });
});

/** Where the prefix changes: the last value before and the first value after, to three figures. */
const steps: readonly (readonly [unit: Unit, value: string, prefix: Prefix])[] = [
  ['A', '999.4', ''],
  ['A', '999.5', 'k'],
  ['A', '0.009994', 'm'],
  ['A', '0.009995', ''],
  ['V', '0.01', ''],
  ['W', '999499', 'k'],
  ['W', '999500', 'M'],
  ['Ω', '0.1', ''],
  ['Ω', '0.09994', 'm'],
  ['Ω', '0.09995', ''],
  ['Ω', '999.4', ''],
  ['Ω', '1000', 'k'],
  ['F', '1', ''],
  ['F', '0.9994', 'm'],
  ['F', '0.0000022', 'µ'],
  ['F', '0.000000047', 'n'],
  ['F', '0.0000000001', 'p'],
];

void describe('the prefix', () => {
  for (const [unit, value, prefix] of steps)
    void it(`of ${value} ${unit} is ${prefix || 'none'}`, () => {
      assert.equal(suitablePrefix(new Fraction(value), unit), prefix);
      assert.equal(suitablePrefix(new Fraction(value).neg(), unit), prefix);
    });
});

/** A number as it is written so that it can be read back, to the decimals that it has. */
const texts: readonly (readonly [value: string, decimals: number, text: string])[] = [
  ['0', 0, '0'],
  ['0', 2, '0.00'],
  ['-0.5', 1, '-0.5'],
  ['123456789012345', 0, '123456789012345'],
  [`1${'0'.repeat(14)}`, 0, `1${'0'.repeat(14)}`],
  [`1${'0'.repeat(15)}`, 0, '1e15'],
  [`-25${'0'.repeat(15)}`, 0, '-25e15'],
  ['1234567890123456', 0, '1234567890123456'],
  [`0.${'0'.repeat(14)}1`, 15, `0.${'0'.repeat(14)}1`],
  [`0.${'0'.repeat(15)}1`, 16, '1e-16'],
  ['1.5', 3, '1.500'],
  ['1/3', 2, '1/3'],
];

void describe('a number as text', () => {
  for (const [value, places, text] of texts)
    void it(`of ${value} with ${places} decimals is ${text}`, () => {
      assert.equal(numberText(new Fraction(value), places), text);
    });
});

void describe('the figures that a value was written with', () => {
  for (const [value, prefix, places, count] of [
    ['12', '', 1, 3],
    ['12', '', 0, 2],
    ['0.05', '', 2, 1],
    ['0.05', '', 3, 2],
    ['0.05', 'm', 0, 2],
    ['4700', 'k', 1, 2],
    ['4700', 'k', 2, 3],
    ['0', '', 0, 1],
    ['0', '', 2, 3],
    ['1000000', '', 0, 7],
    ['1/3', '', 0, 3],
  ] as const)
    void it(`are ${count} of ${value} with the prefix “${prefix}” and ${places} decimals`, () => {
      assert.equal(figuresWritten(quantity(value, 'Ω', prefix, places)), count);
    });
});

void describe('round values', () => {
  void it('are the next of 1, 2 and 5', () => {
    for (const [value, next] of [
      [1, '1'],
      [1.01, '2'],
      [2, '2'],
      [2.01, '5'],
      [5, '5'],
      [5.01, '10'],
      [9.99, '10'],
      [10, '10'],
      [11, '20'],
      [0.3, '1/2'],
      [0.051, '1/10'],
      [999, '1000'],
      [1000, '1000'],
    ] as const)
      assert.equal(roundUp(value).toFraction(), next, `${value}`);
  });

  void it('of a series are found from either side', () => {
    for (const [value, digits, power] of [
      [10, 10, 0],
      [11.99, 10, 0],
      [12, 12, 0],
      [82, 82, 0],
      [99.9, 82, 0],
      [100, 10, 1],
      [4700, 47, 2],
      [0.99, 82, -2],
      [1, 10, -1],
    ] as const)
      assert.deepEqual(preferred('E12', preferredPlace('E12', value)), { digits, power }, `${value}`);
    assert.deepEqual(preferred('E24', preferredPlace('E24', 11.99)), { digits: 11, power: 0 });
    assert.deepEqual(preferred('E24', preferredPlace('E24', 99.9)), { digits: 91, power: 0 });
  });
});
