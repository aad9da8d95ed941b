import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction, writeRatio } from '../../../src/engine/index.ts';

describe('a ratio', () => {
  for (const [ratio, figures, text] of [
    ['3/2', 3, '1.50'],
    ['1/2', 3, '0.500'],
    ['2', 2, '2.0'],
    ['1', 3, '1.00'],
    ['1.0004', 3, '1.0004'],
    ['0.99996', 3, '0.99996'],
    ['0.9996', 3, '0.9996'],
    ['1.0000000004', 3, '1.0000000004'],
    ['0', 3, '0'],
    ['12345', 3, '12300'],
    ['2000000', 3, ''],
    ['1/2000000', 3, ''],
  ] as const)
    it(`of ${ratio} is written “${text}” to ${figures} figures`, () => {
      assert.equal(writeRatio(new Fraction(ratio), figures), text);
    });

  it('reads as 1 only where it is 1, to a part in a million million', () => {
    const near = fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n });
    fc.assert(
      fc.property(near, fc.integer({ min: 2, max: 6 }), (parts, figures) => {
        const ratio = new Fraction(1).add(new Fraction(parts, 10n ** 13n));
        const text = writeRatio(ratio, figures);
        assert.equal(Number(text) === 1, parts === 0n);
        assert.ok(Math.abs(Number(text) - Number(ratio)) <= 0.5 * 10 ** (1 - figures));
      }),
    );
  });
});
