import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { changeFrom, Fraction, type Measured } from '../../../src/engine/index.ts';

const fraction = fc
  .tuple(fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 9n }))
  .map(([n, d]) => new Fraction(n, d));
const decimal = fc.double({ min: -1e6, max: 1e6, noNaN: true, noDefaultInfinity: true });
const exact = (value: Measured | undefined): string => new Fraction(value ?? NaN).toFraction();

describe('a change', () => {
  it('leads from what was to what is, exactly: as a difference and as a ratio', () => {
    fc.assert(
      fc.property(fraction, fraction, (was, is) => {
        const { direction, by, ratio } = changeFrom(was, is, { signed: true });
        const step = new Fraction(by).mul(direction === 'fell' ? -1 : 1);
        assert.equal(exact(was.add(step)), exact(is));
        assert.ok(Number(by) >= 0);
        assert.equal(direction === 'same', was.equals(is));
        if (ratio !== undefined) assert.equal(exact(was.mul(new Fraction(ratio))), exact(is));
        else assert.ok(was.equals(0) || was.mul(is).compare(0) < 0);
      }),
    );
  });

  it('of sizes does not mind the direction, but tells where it is the other one', () => {
    fc.assert(
      fc.property(fraction, fraction, (was, is) => {
        const straight = changeFrom(was.abs(), is.abs(), { signed: true });
        const sizes = changeFrom(was, is);
        assert.deepEqual(
          [sizes.direction, exact(sizes.by), sizes.ratio && exact(sizes.ratio)],
          [straight.direction, exact(straight.by), straight.ratio && exact(straight.ratio)],
        );
        assert.equal(sizes.turned, was.mul(is).compare(0) < 0);
      }),
    );
  });

  it('undone is the other way round, in decimals too', () => {
    const back = { rose: 'fell', fell: 'rose', same: 'same' };
    fc.assert(
      fc.property(decimal, decimal, fc.boolean(), (was, is, signed) => {
        const [there, home] = [changeFrom(was, is, { signed }), changeFrom(is, was, { signed })];
        assert.equal(home.direction, back[there.direction]);
        assert.equal(home.by, there.by);
      }),
    );
  });

  it('of 1 part in a million million is one, where the values are exact', () => {
    const was = new Fraction(1, 2);
    const is = was.add(new Fraction(1n, 10n ** 12n));
    assert.equal(changeFrom(was, is).direction, 'rose');
    assert.equal(changeFrom(is, was).direction, 'fell');
    assert.equal(changeFrom(was, new Fraction('0.1').add('0.4')).direction, 'same');
  });

  it('of decimals is none where only their last places differ', () => {
    assert.deepEqual(changeFrom(0.3, 0.1 + 0.2), {
      direction: 'same',
      by: 0,
      ratio: (0.1 + 0.2) / 0.3,
      turned: false,
    });
    assert.equal(changeFrom(0.3, 0.3 + 1e-8).direction, 'rose');
    assert.equal(changeFrom(new Fraction(3, 10), 0.1 + 0.2).direction, 'same');
  });

  it('from nothing has no ratio, to nothing it is 0', () => {
    assert.equal(changeFrom(new Fraction(0), new Fraction(2)).ratio, undefined);
    assert.equal(exact(changeFrom(new Fraction(2), new Fraction(0)).ratio), '0');
  });

  it('read in steps is by whole steps, but its direction is that of the values', () => {
    const read = (value: Measured): Fraction => new Fraction(Math.round(Number(value) * 50), 50);
    const small = changeFrom(new Fraction('0.500'), new Fraction('0.505'), { read });
    assert.deepEqual([small.direction, exact(small.by)], ['rose', '0']);
    const larger = changeFrom(new Fraction('0.500'), new Fraction('0.612'), { read });
    assert.deepEqual([larger.direction, exact(larger.by), exact(larger.ratio)], ['rose', '3/25', '31/25']);
  });
});
