import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { changeFrom, Fraction, writeRatio } from '../../../src/engine/index.ts';

/** What a value was, what it is, and what it has done: in decimals, where nine figures decide. */
const changes: readonly (readonly [was: number, is: number, direction: 'rose' | 'fell' | 'same'])[] = [
  [1, 1, 'same'],
  [0, 0, 'same'],
  [0, 1e-30, 'rose'],
  [1e-30, 0, 'fell'],
  [1, 1 + 2e-9, 'rose'],
  [1, 1 - 2e-9, 'fell'],
  [1, 1 + 5e-10, 'same'],
  [1e6, 1e6 + 2e-3, 'rose'],
  [1e6, 1e6 + 5e-4, 'same'],
  [1e-6, 1e-6 + 2e-15, 'rose'],
  [1e-6, 1e-6 + 5e-16, 'same'],
  // A larger value and a smaller one: the larger decides what noise is.
  [1e-12, 1, 'rose'],
  [1, 1e-12, 'fell'],
];

void describe('a change of decimals', () => {
  for (const [was, is, direction] of changes)
    void it(`from ${was} to ${is}: ${direction}`, () => {
      const change = changeFrom(was, is);
      assert.equal(change.direction, direction);
      assert.equal(change.by, direction === 'same' ? 0 : Math.abs(is - was));
      assert.equal(change.turned, false);
      // One of the two is exact: decimals decide all the same.
      if (Number.isInteger(was)) assert.equal(changeFrom(new Fraction(was), is).direction, direction);
      if (Number.isInteger(is)) assert.equal(changeFrom(was, new Fraction(is)).direction, direction);
    });

  void it('has a ratio whatever kind the two values are of', () => {
    const [two, three] = [new Fraction(2), new Fraction(3)];
    for (const [was, is] of [
      [2, 3],
      [two, 3],
      [2, three],
      [two, three],
    ] as const) {
      const { ratio = 0, by } = changeFrom(was, is);
      assert.equal(Number(ratio), 1.5);
      assert.equal(Number(by), 1);
    }
  });
});

/** Signed or not: from −2 A to 1 A a current is smaller, and a reading larger. */
const turns = [
  { was: -2, is: 1, sizes: ['fell', 1, -0.5], signs: ['rose', 3, undefined] },
  { was: 1, is: -2, sizes: ['rose', 1, -2], signs: ['fell', 3, undefined] },
  { was: -1, is: 1, sizes: ['same', 0, -1], signs: ['rose', 2, undefined] },
  { was: -2, is: -1, sizes: ['fell', 1, 0.5], signs: ['rose', 1, 0.5] },
  { was: -1, is: 0, sizes: ['fell', 1, 0], signs: ['rose', 1, 0] },
] as const;

void describe('a change of sign', () => {
  for (const { was, is, sizes, signs } of turns)
    void it(`from ${was} to ${is}`, () => {
      for (const [wasIt, isIt] of [
        [was, is],
        [new Fraction(was), new Fraction(is)],
      ] as const) {
        const [size, sign] = [changeFrom(wasIt, isIt), changeFrom(wasIt, isIt, { signed: true })];
        assert.deepEqual(
          [size.direction, Number(size.by), Math.abs(Number(size.ratio))],
          [sizes[0], sizes[1], Math.abs(sizes[2])],
        );
        assert.deepEqual([sign.direction, Number(sign.by)], [signs[0], signs[1]]);
        assert.equal(sign.ratio === undefined ? undefined : Math.abs(Number(sign.ratio)), signs[2]);
        assert.equal(size.turned, was * is < 0);
        assert.equal(sign.turned, was * is < 0);
      }
    });

  void it('is read by an instrument with its sign where signs are compared', () => {
    const read = (value: number | Fraction): number => Math.round(Number(value));
    const { by, ratio } = changeFrom(-1.6, -3.6, { signed: true, read });
    assert.deepEqual([by, ratio], [2, 2]);
    assert.equal(changeFrom(1.6, -3.6, { signed: true, read }).by, 6);
    assert.equal(changeFrom(1.6, -3.6, { read }).by, 2);
  });
});

/** Where a ratio is not written any more, and how many figures it gets at most. */
const ratios: readonly (readonly [ratio: string, figures: number, text: string])[] = [
  ['1000000', 3, '1000000'],
  ['1000001', 3, ''],
  ['1/1000000', 3, '0.00000100'],
  ['1/1000001', 3, ''],
  ['-3/2', 3, '−1.50'],
  ['-1000001', 3, ''],
  ['-1/1000001', 3, ''],
  ['0', 2, '0'],
  ['1', 5, '1.0000'],
  ['1.004', 3, '1.004'],
  ['1.04', 3, '1.04'],
  ['1.00000000000004', 3, '1.00000000000004'],
  ['1.000000000000001', 3, '1.00000000000000'],
];

void describe('a ratio at its limits', () => {
  for (const [ratio, figures, text] of ratios)
    void it(`of ${ratio} is “${text}”`, () => {
      assert.equal(writeRatio(new Fraction(ratio), figures), text);
    });
});
