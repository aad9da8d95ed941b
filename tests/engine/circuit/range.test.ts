import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { Fraction, quantity } from '../../../src/engine/quantity/index.ts';
import {
  defaultStep,
  lastSetting,
  nearestSetting,
  settingAt,
  type Range,
} from '../../../src/engine/circuit/index.ts';

const range = (min: number, max: number, rest: Partial<Range>): Range => ({
  min: quantity(min, 'Ω'),
  max: quantity(max, 'Ω'),
  ...rest,
});
const all = (of: Range): number[] =>
  Array.from({ length: lastSetting(of) + 1 }, (_, setting) => settingAt(of, setting).valueOf());

void describe('the step that is understood', () => {
  const steps: [number | string, number | string, number | string, string][] = [
    [2, 40, 8, '1'],
    [4, 40, 12, '1'],
    [0, 100, 50, '5'],
    [0, 100, 3, '1'],
    [1, 2, '1.5', '1/20'],
    [0, '0.1', '0.03', '1/200'],
    [10, 1000, 470, '10'],
  ];
  for (const [min, max, value, step] of steps) {
    void it(`from ${min} to ${max} through ${value} is ${step}`, () => {
      const found = defaultStep(new Fraction(min), new Fraction(max), new Fraction(value));
      assert.equal(found?.toFraction(), step);
    });
  }

  void it('is none where no decimal step leads through a third', () => {
    assert.equal(defaultStep(new Fraction(0), new Fraction(1), new Fraction(1, 3)), undefined);
  });

  void it('leads from end to end in at least 20 steps, and no larger one of 1, 2, 5 × 10ⁿ does', () => {
    const tenths = fc.integer({ min: 0, max: 5000 });
    fc.assert(
      fc.property(tenths, tenths, tenths, (a, b, c) => {
        const [min, value, max] = [a, b, c].sort((x, y) => x - y).map((n) => new Fraction(n, 10));
        if (!min || !max || !value || min.equals(max)) return;
        const step = defaultStep(min, max, value);
        assert.ok(step);
        const fits = (candidate: Fraction): boolean =>
          max.sub(min).div(candidate).d === 1n &&
          value.sub(min).div(candidate).d === 1n &&
          max.sub(min).div(candidate).compare(20) >= 0;
        assert.ok(fits(step));
        for (const factor of [2, '5/2', 4, 5, 10, 20, 25, 50, 100])
          assert.ok(isRound(step) && !(fits(step.mul(factor)) && isRound(step.mul(factor))));
      }),
      { numRuns: 500 },
    );
  });
});

/** Whether a fraction is 1, 2 or 5 times a power of ten. */
function isRound(value: Fraction): boolean {
  return /^[125]0*$/.test(value.mul(new Fraction(10n ** 30n)).toFraction());
}

void describe('the settings of a slider', () => {
  void it('are every step from end to end', () => {
    assert.deepEqual(all(range(2, 10, { step: quantity(2, 'Ω') })), [2, 4, 6, 8, 10]);
  });

  void it('are the preferred values of IEC 60063 between the ends', () => {
    assert.deepEqual(
      all(range(10, 100, { scale: 'E12' })),
      [10, 12, 15, 18, 22, 27, 33, 39, 47, 56, 68, 82, 100],
    );
    assert.deepEqual(all(range(11, 34, { scale: 'E12' })), [12, 15, 18, 22, 27, 33]);
  });

  void it('grow by one ratio on a logarithmic scale, to three figures, and meet both ends', () => {
    const values = all(range(1, 1e6, { scale: 'log' }));
    assert.equal(values.length, 101);
    assert.equal(values[0], 1);
    assert.equal(values[100], 1e6);
    values.forEach((value, index) => {
      assert.ok(Math.abs(value / 10 ** (index * 0.06) - 1) < 0.005);
    });
  });

  void it('are each the nearest setting to themselves', () => {
    const ranges = [
      range(2, 40, { step: quantity('0.5', 'Ω') }),
      range(0, 10, { step: quantity('0.1', 'Ω') }),
      range(10, 1e5, { scale: 'E24' }),
      range(3, 7e4, { scale: 'E12' }),
      range(1, 1e6, { scale: 'log' }),
    ];
    for (const each of ranges) {
      for (let setting = 0; setting <= lastSetting(each); setting++) {
        assert.equal(nearestSetting(each, settingAt(each, setting)), setting);
      }
      assert.equal(nearestSetting(each, new Fraction(0)), 0);
      assert.equal(nearestSetting(each, new Fraction(1e9)), lastSetting(each));
    }
  });
});
