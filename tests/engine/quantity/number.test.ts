import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  inUnit,
  numberText,
  powerOfTen,
  quantity,
  scanNumber,
  type NumberReading,
} from '../../../src/engine/quantity/index.ts';

/** The whole text as one number. */
function whole(text: string): NumberReading {
  const reading = scanNumber(text, 0);
  assert(reading, text);
  assert.equal(reading.end, text.length, text);
  return reading;
}

test('a number is read exactly in every spelling that schools use', () => {
  const spellings: readonly (readonly [string, string, number])[] = [
    ['12', '12', 0],
    ['007', '7', 0],
    ['4.7', '47/10', 1],
    ['4,7', '47/10', 1],
    ['12.0', '12', 1],
    ['0,450', '9/20', 3],
    ['1.000', '1', 3],
    ['1000,125', '8001/8', 3],
    ['12 000', '12000', 0],
    ['1 234 567.5', '2469135/2', 1],
    ['12\u202f000', '12000', 0],
    ['12\u2009000', '12000', 0],
    ['12\u00a0000,500', '24001/2', 3],
    ['1/3', '1/3', 0],
    ['9/20', '9/20', 0],
    ['2e3', '2000', 0],
    ['2E-3', '1/500', 3],
    ['1.50e-1', '3/20', 3],
    ['1.25e1', '25/2', 1],
    ['2×10^3', '2000', 0],
    ['2 × 10^-3', '1/500', 3],
    ['2x10^−3', '1/500', 3],
    ['2×10³', '2000', 0],
    ['4.7 × 10⁻²', '47/1000', 3],
    ['1×10¹²', '1000000000000', 0],
    ['1e30', `1${'0'.repeat(30)}`, 0],
  ];
  for (const [text, exact, decimals] of spellings) {
    const reading = whole(text);
    assert.equal(reading.value.toFraction(), exact, text);
    assert.equal(reading.decimals, decimals, text);
    assert.equal(reading.trouble, undefined, text);
  }
});

test('one to three digits, a comma and three digits have two readings and are refused', () => {
  for (const text of ['1,000', '12,000', '120,500', '4,700'])
    assert.equal(whole(text).trouble, 'thousands', text);
  for (const text of ['0,500', '1,00', '1,0000', '1234,567', '1.000', '012,345']) {
    assert.equal(whole(text).trouble, undefined, text);
  }
});

test('thirty digits and powers of ten from −30 to 30 are read, no more', () => {
  const nines = '9'.repeat(30);
  assert.equal(whole(nines).value.toFraction(), nines);
  assert.equal(whole(`0.${nines}`).value.d, 10n ** 30n);
  for (const text of [
    `${nines}9`,
    `0.${nines}9`,
    `1/${nines}9`,
    '1e31',
    '1e-31',
    '1×10^31',
    '1×10⁻³¹',
    `1e${nines}`,
  ]) {
    assert.equal(whole(text).trouble, 'too long', text);
  }
  assert.equal(whole('1/0').trouble, 'zero below');
});

test('a number ends where the longest reading ends', () => {
  const ends: readonly (readonly [string, number])[] = [
    ['2..40', 1],
    ['2…40', 1],
    ['3 × 1.5', 1],
    ['3 × 10 V', 1],
    ['12 00', 2],
    ['12 0000', 2],
    ['1 000 0000', 5],
    ['1234 567', 4],
    ['2e', 1],
    ['2e+3', 1],
    ['2^3', 1],
    ['1/', 1],
    ['1//2', 1],
    ['5.', 1],
    ['5,Ω', 1],
  ];
  for (const [text, end] of ends) assert.equal(scanNumber(text, 0)?.end, end, text);
  for (const text of ['', 'R1', '.5', '-5', '×10^3', '①', '٣'])
    assert.equal(scanNumber(text, 0), undefined, text);
});

test('a written number is read back as it was, decimals included', () => {
  const digits = fc.bigInt({ min: 0n, max: 10n ** 30n - 1n });
  fc.assert(
    fc.property(
      digits,
      fc.integer({ min: 0, max: 30 }),
      fc.integer({ min: -30, max: 30 }),
      (n, places, power) => {
        const padded = n.toString().padStart(places + 1, '0');
        const cut = padded.length - places;
        const text = `${padded.slice(0, cut)}${places ? '.' : ''}${padded.slice(cut)}e${power}`;
        const read = inUnit(whole(text), 'Ω', '');
        assert(read.value.equals(powerOfTen(power - places).mul(n)), text);
        const again = inUnit(whole(numberText(read.value, read.decimals)), 'Ω', '');
        assert.deepEqual(again, read, text);
      },
    ),
    { numRuns: 2000 },
  );
});

test('a written fraction is read back as it was', () => {
  const part = fc.bigInt({ min: 1n, max: 10n ** 30n - 1n });
  fc.assert(
    fc.property(part, part, (above, below) => {
      const read = quantity(new Fraction(above, below), 'Ω');
      assert.deepEqual(inUnit(whole(numberText(read.value, read.decimals)), 'Ω', ''), read);
    }),
    { numRuns: 1000 },
  );
});

test('numbers are written in full while they are short, with a power of ten beyond', () => {
  const text = (value: string, decimals?: number): string => numberText(new Fraction(value), decimals);
  assert.equal(text('12', 1), '12.0');
  assert.equal(text('0.05', 2), '0.05');
  assert.equal(text('-1.5', 1), '-1.5');
  assert.equal(text('1/3'), '1/3');
  assert.equal(text('1000000', 0), '1000000');
  assert.equal(text(`1${'0'.repeat(20)}`, 0), '1e20');
  assert.equal(text(`0.${'0'.repeat(19)}1`, 20), '1e-20');
});
