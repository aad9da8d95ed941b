import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  amount,
  constant,
  equationText,
  inAmperes,
  negated,
  plus,
  replaced,
  scaled,
  upright,
  type Linear,
} from '../../../src/engine/explain/kirchhoff/linear.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

const style = { letter: 'V', decimalSign: '.', figures: 3 } as const;
const writing = { style, name: (one: string): string => one };
const plain = (text: string): string => text.replaceAll('\u202f', ' ');
const fraction = fc
  .tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 9 }))
  .map(([n, d]) => new Fraction(n, d));
const names = ['I_R1', 'I_R2', 'I_R3'];
const linear: fc.Arbitrary<Linear> = fc
  .tuple(fraction, fc.array(fraction, { maxLength: 3 }))
  .map(([number, factors]) =>
    factors.map((factor, k) => scaled(amount(names[k] ?? ''), factor)).reduce(plus, constant(number)),
  );
const values = new Map(names.map((one, k) => [one, new Fraction(2 * k + 1, 3)]));
const worth = ({ number, of }: Linear): Fraction =>
  [...of].reduce((sum, [one, factor]) => sum.add(factor.mul(values.get(one) ?? 0)), number);

describe('a linear expression', () => {
  it('is worth the same however it is put together', () => {
    fc.assert(
      fc.property(linear, linear, fraction, (a, b, by) => {
        assert.ok(worth(plus(a, b)).equals(worth(a).add(worth(b))));
        assert.ok(worth(scaled(a, by)).equals(worth(a).mul(by)));
      }),
    );
  });
  it('with a quantity replaced has it no longer, and is worth what it would be with that value', () => {
    fc.assert(
      fc.property(linear, linear, (whole, by) => {
        const others = { ...by, of: new Map([...by.of].filter(([one]) => one !== 'I_R1')) };
        const next = replaced(whole, 'I_R1', others);
        assert.ok(!next.of.has('I_R1'));
        const factor = whole.of.get('I_R1') ?? new Fraction(0);
        const change = worth(others).sub(values.get('I_R1') ?? 0);
        assert.ok(worth(next).equals(worth(whole).add(factor.mul(change))));
      }),
    );
  });
  it('keeps nothing that cancels', () => {
    assert.equal(plus(amount('I_R1'), negated(amount('I_R1'))).of.size, 0);
  });
  it('is written with its signs, pure numbers without a unit, and 1 not at all', () => {
    const of = new Map([
      ['I_R1', new Fraction(1)],
      ['I_R2', new Fraction(-2, 3)],
    ]);
    assert.equal(plain(inAmperes({ number: new Fraction(0), of }, writing)), 'I_R1 − 0.667 × I_R2');
    assert.equal(
      plain(inAmperes({ number: new Fraction(-1, 2), of }, writing)),
      '−0.500 A + I_R1 − 0.667 × I_R2',
    );
    assert.equal(plain(inAmperes(constant(new Fraction(0)), writing)), '0 A');
  });
});

describe('an equation in volts', () => {
  const says: Linear = { number: new Fraction(-6), of: new Map([['I_R1', new Fraction(-3, 2)]]) };
  it('is turned so that it does not begin with a minus', () => {
    assert.equal(plain(equationText(upright(says), writing)), '6.00 V = 1.50 Ω × I_R1');
    const level = upright({ ...says, number: new Fraction(0) });
    assert.equal(plain(equationText(level, writing)), '0 V = 1.50 Ω × I_R1');
  });
  it('has each unit’s prefix', () => {
    const large = { number: new Fraction(1, 1000), of: new Map([['I_R1', new Fraction(4700)]]) };
    assert.equal(plain(equationText(large, writing)), '1.00 mV = 4.70 kΩ × I_R1');
  });
});
