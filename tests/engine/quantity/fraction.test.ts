import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import Reference from 'fraction.js';
import { Fraction } from '../../../src/engine/quantity/index.ts';

const whole = fc.oneof(
  fc.bigInt({ min: -40n, max: 40n }),
  fc.bigInt({ min: -(10n ** 40n), max: 10n ** 40n }),
);
const divisor = whole.filter((d) => d !== 0n);
const pair = fc.tuple(whole, divisor);

/** The same number as our fraction and as the one of fraction.js, which serves as the reference. */
const both = ([n, d]: readonly [bigint, bigint]): readonly [Fraction, Reference] => [
  new Fraction(n, d),
  new Reference(n, d),
];
const parts = ({ s, n, d }: Pick<Fraction, 's' | 'n' | 'd'>): string => `${s} · ${n} / ${d}`;

describe('a fraction', () => {
  it('does with another what the reference does', () => {
    fc.assert(
      fc.property(pair, pair, (one, other) => {
        const [a, theirs] = both(one);
        const [b, others] = both(other);
        assert.equal(parts(a.add(b)), parts(theirs.add(others)));
        assert.equal(parts(a.sub(b)), parts(theirs.sub(others)));
        assert.equal(parts(a.mul(b)), parts(theirs.mul(others)));
        assert.equal(a.compare(b), theirs.compare(others));
        assert.equal(a.equals(b), theirs.equals(others));
        if (b.n) assert.equal(parts(a.div(b)), parts(theirs.div(others)));
        if (a.n && b.n) assert.equal(parts(a.abs().lcm(b.abs())), parts(theirs.abs().lcm(others.abs())));
      }),
    );
  });

  it('does by itself what the reference does', () => {
    fc.assert(
      fc.property(pair, (one) => {
        const [a, theirs] = both(one);
        assert.equal(parts(a), parts(theirs));
        assert.equal(parts(a.abs()), parts(theirs.abs()));
        assert.equal(parts(a.neg()), parts(theirs.neg()));
        if (a.n) assert.equal(parts(a.inverse()), parts(theirs.inverse()));
        for (const way of ['floor', 'ceil', 'round'] as const)
          assert.equal(a[way]().toFraction(), theirs[way]().toFraction());
        assert.equal(a.toFraction(), theirs.toFraction());
        assert.equal(String(a), a.toFraction());
        assert.equal(Number(a), Number(theirs));
      }),
    );
  });

  it('rounds a half up, below 0 too', () => {
    assert.equal(new Fraction(5, 2).round().toFraction(), '3');
    assert.equal(new Fraction(-5, 2).round().toFraction(), '-2');
    assert.equal(new Fraction(-5, 2).floor().toFraction(), '-3');
    assert.equal(new Fraction(-5, 2).ceil().toFraction(), '-2');
  });

  it('is read back from its ratio, and from a decimal of any length', () => {
    fc.assert(
      fc.property(pair, fc.nat({ max: 30 }), (one, places) => {
        const [a] = both(one);
        assert.ok(new Fraction(a.toFraction()).equals(a));
        const digits = `${one[0] < 0n ? -one[0] : one[0]}`.padStart(places + 1, '0');
        const at = digits.length - places;
        const text = `-${digits.slice(0, at)}${places ? '.' : ''}${digits.slice(at)}`;
        assert.equal(new Fraction(text).toFraction(), new Reference(text).toFraction());
      }),
    );
    assert.equal(new Fraction('-4.70').toFraction(), '-47/10');
    assert.equal(new Fraction('2.5e-3').toFraction(), '1/400');
    assert.equal(new Fraction('2e3').toFraction(), '2000');
  });

  it('finds in a double the simple ratio that was meant', () => {
    fc.assert(
      fc.property(fc.integer({ min: -5000, max: 5000 }), fc.integer({ min: 1, max: 5000 }), (n, d) => {
        assert.equal(new Fraction(n / d).toFraction(), new Fraction(n, d).toFraction());
      }),
    );
    assert.equal(new Fraction(0.1 + 0.2).toFraction(), '3/10');
  });

  it('keeps every double to its last place, however small or large', () => {
    fc.assert(
      fc.property(fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e200, max: 1e200 }), (value) => {
        const back = Number(new Fraction(value).n) / Number(new Fraction(value).d);
        fc.pre(Number.isFinite(back));
        assert.ok(Math.abs(back - Math.abs(value)) <= 2e-15 * Math.abs(value), `${back}`);
      }),
    );
    assert.equal(new Fraction(1e-12).toFraction(), `1/${10n ** 12n}`);
    assert.equal(new Fraction(6.02214076e23).toFraction(), '602214076000000000000000');
  });

  it('is refused where there is no number, or a division by 0', () => {
    for (const value of ['', 'x', '1/x', '1.x', NaN, Infinity, -Infinity])
      assert.throws(() => new Fraction(value), `${value}`);
    assert.throws(() => new Fraction(1, 0.5), RangeError);
    assert.throws(() => new Fraction(1, 0), RangeError);
    assert.throws(() => new Fraction('1/0'), RangeError);
    assert.throws(() => new Fraction(3).div(0), RangeError);
    assert.throws(() => new Fraction(0).inverse(), RangeError);
  });
});
