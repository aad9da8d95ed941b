import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction, roundUp } from '../../../src/engine/quantity/index.ts';

/** Exact values from 10⁻⁶ to 10⁷ with three figures. */
const size = fc
  .tuple(fc.integer({ min: 100, max: 999 }), fc.integer({ min: -8, max: 4 }))
  .map(([digits, power]) => new Fraction(digits).mul(new Fraction(10).pow(power)));

describe('the next round number', () => {
  it('is 1, 2 or 5 × 10ⁿ, and no smaller one would do', () => {
    fc.assert(
      fc.property(size, (value) => {
        const next = roundUp(Number(value));
        const digits = Number(next).toExponential();
        assert.match(digits, /^[125]e/);
        assert.ok(next.compare(value) >= 0);
        assert.ok(next.div(digits.startsWith('5') ? 2.5 : 2).compare(value) < 0, 'a smaller one');
      }),
    );
  });

  it('of a round number is itself, however a float has it', () => {
    for (const exact of ['0.1', '0.2', '0.5', '1', '2', '5', '1000', '0.000002'])
      assert.equal(roundUp(Number(exact)).compare(exact), 0);
    assert.equal(roundUp(0.1 + 0.1).compare('0.2'), 0);
    assert.equal(roundUp(3 * 0.1).compare('0.5'), 0);
  });
});
