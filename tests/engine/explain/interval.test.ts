import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  add,
  exact,
  inverse,
  multiply,
  read,
  root,
  type Interval,
} from '../../../src/engine/explain/interval.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

const fraction = fc
  .tuple(fc.integer({ min: -60, max: 60 }), fc.integer({ min: 1, max: 12 }))
  .map(([n, d]) => new Fraction(n, d));

/** Three numbers in order: the ends, and a value between them. */
const interval = fc.tuple(fraction, fraction, fraction).map((three): Interval => {
  const [low, value, high] = three.toSorted((a, b) => a.compare(b));
  assert.ok(low && value && high);
  return { low, value, high };
});
/** Somewhere between the ends: so many twelfths of the way. */
const place = fc.integer({ min: 0, max: 12 });
const within = ({ low, high }: Interval, twelfths: number): Fraction =>
  low.add(high.sub(low).mul(new Fraction(twelfths, 12)));

const holds = ({ low, high }: Interval, truth: Fraction): boolean =>
  low.compare(truth) <= 0 && truth.compare(high) <= 0;
const ends = ({ low, value, high }: Interval): readonly string[] =>
  [low, value, high].map((each) => each.toFraction());

describe('a value as it was given', () => {
  for (const [given, ...expected] of [
    ['0.45', '89/200', '9/20', '91/200'],
    ['12.0', '239/20', '12', '241/20'],
    ['-0.5', '-11/20', '-1/2', '-9/20'],
    ['.5', '9/20', '1/2', '11/20'],
    [0.25, '49/200', '1/4', '51/200'],
    ['12', '12', '12', '12'],
    [12, '12', '12', '12'],
    ['1/3', '1/3', '1/3', '1/3'],
    [new Fraction(9, 20), '9/20', '9/20', '9/20'],
  ] as const)
    it(`${typeof given === 'object' ? 'a fraction' : JSON.stringify(given)} stands for ${expected.join(', ')}`, () => {
      assert.deepEqual(ends(read(given)), expected);
    });

  it('stands for every number that rounds to it, and for none that does not', () => {
    fc.assert(
      fc.property(fc.integer({ min: -9999, max: 9999 }), fc.integer({ min: 1, max: 4 }), (digits, places) => {
        const text = (digits / 10 ** places).toFixed(places);
        const { low, value, high } = read(text);
        assert.ok(value.equals(new Fraction(digits, 10 ** places)));
        assert.ok(high.sub(low).equals(new Fraction(1, 10 ** places)));
        assert.ok(high.add(low).equals(value.mul(2)));
      }),
    );
  });
});

// R. E. Moore, Interval Analysis (1966), from memory: what is computed of intervals holds whatever is computed of numbers in them.
describe('what is computed of two values', () => {
  for (const [name, ofIntervals, ofNumbers] of [
    ['their sum', add, (a: Fraction, b: Fraction) => a.add(b)],
    ['their product', multiply, (a: Fraction, b: Fraction) => a.mul(b)],
  ] as const)
    it(`${name} lies between the ends of ${name}, wherever the true ones lie, and reaches both`, () => {
      fc.assert(
        fc.property(interval, interval, place, place, (a, b, at, by) => {
          const found = ofIntervals(a, b);
          assert.ok(holds(found, ofNumbers(within(a, at), within(b, by))));
          assert.ok(found.value.equals(ofNumbers(a.value, b.value)));
          const corners = [a.low, a.high].flatMap((one) =>
            [b.low, b.high].map((other) => ofNumbers(one, other)),
          );
          for (const end of [found.low, found.high]) assert.ok(corners.some((corner) => corner.equals(end)));
        }),
        { numRuns: 500 },
      );
    });

  it('is exact of what is exact: its ends are one and the same', () => {
    fc.assert(
      fc.property(fraction, fraction, (a, b) => {
        for (const { low, value, high } of [add(exact(a), exact(b)), multiply(exact(a), exact(b))]) {
          assert.equal(low, value);
          assert.equal(high, value);
        }
      }),
    );
  });
});

describe('one over a value', () => {
  it('lies between its ends, wherever the true one lies; there is none where that may be 0', () => {
    fc.assert(
      fc.property(interval, place, (a, at) => {
        const found = inverse(a);
        if (holds(a, new Fraction(0))) {
          assert.equal(found, undefined);
          return;
        }
        assert.ok(found && holds(found, within(a, at).inverse()));
        assert.ok(found.low.equals(a.high.inverse()) && found.high.equals(a.low.inverse()));
        assert.ok(found.value.equals(a.value.inverse()));
      }),
      { numRuns: 500 },
    );
  });
});

describe('the root of a value', () => {
  it('lies between its ends, to 40 places; there is none of what is negative', () => {
    fc.assert(
      fc.property(interval, place, (a, at) => {
        const found = root(a);
        if (a.value.compare(0) < 0) {
          assert.equal(found, undefined);
          return;
        }
        assert.ok(found);
        const truth = within(a, at);
        if (truth.compare(0) < 0) return;
        assert.ok(found.low.mul(found.low).compare(truth) <= 0);
        assert.ok(found.high.mul(found.high).compare(truth) >= 0);
        const off = found.value.mul(found.value).sub(a.value).abs();
        assert.ok(off.compare(new Fraction(1n, 10n ** 37n)) < 0, off.toFraction());
      }),
      { numRuns: 500 },
    );
  });

  it('is exact of a square, and just beside of what is none', () => {
    fc.assert(
      fc.property(fraction, (a) => {
        assert.deepEqual(ends(root(exact(a.mul(a))) ?? exact(a)), Array(3).fill(a.abs().toFraction()));
      }),
    );
    const two = root(exact(new Fraction(2)));
    assert.ok(two && two.low.compare(two.high) < 0);
    // The digits of √2 (OEIS A002193).
    assert.ok(two.low.equals(new Fraction(14142135623730950488016887242096980785696n, 10n ** 40n)));
  });
});
