import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { agreement } from '../../../src/engine/mark/index.ts';
import {
  Fraction,
  exponentOf,
  writeReading,
  type Prefix,
  type Unit,
} from '../../../src/engine/quantity/index.ts';

type Slip = ReturnType<typeof agreement>;

const written = (value: string, unit: Unit) => {
  const exact = new Fraction(value);
  return { value: exact, text: writeReading(exact, unit).text };
};

/** What a pupil did, the number that comes of it, and what is said of that number beside the right one. */
const slips: readonly (readonly [string, string, ReturnType<typeof written>, Slip])[] = [
  // 12 V across 470 Ω. Common practice.
  ['took kilohms for ohms', '25.5 A', written('12/470', 'A'), 'power of ten'],
  ['left milli away', '25.5', { value: new Fraction('12/470'), text: '0.0255 A' }, 'power of ten'],
  ['wrote the same in milliamperes', '25.5 mA', written('12/470', 'A'), undefined],
  ['wrote micro with the other sign for it', '25500 \u03bcA', written('12/470', 'A'), undefined],
  ['cut off instead of rounding up', '25.5 mA', written('0.02556', 'A'), 'rounding'],
  ['divided resistance by p.d.', '39.2 A', written('12/470', 'A'), 'upside down'],
  ['multiplied', '5640 A', written('12/470', 'A'), 'other'],
  ['gave the p.d. instead', '12.0 V', written('12/470', 'A'), 'unit'],
  // 6 Ω beside 12 Ω.
  ['forgot to turn the sum of reciprocals over', '0.25', written('4', 'Ω'), 'upside down'],
  ['forgot it, and rounded', '0.2', written('4', 'Ω'), 'other'],
  ['added as if in series', '18', written('4', 'Ω'), 'other'],
  ['took the product over the sum as it should be', '72/18 Ω', written('4', 'Ω'), undefined],
  ['wrote the unit in a word', '4 ohms', written('4', 'Ω'), undefined],
  ['wrote the sign of the ohm of old', '4 \u2126', written('4', 'Ω'), undefined],
  // 1/3 Ω, 2/3 A: what no decimal is.
  ['gave one figure too few', '0.33', written('1/3', 'Ω'), 'rounding'],
  ['cut off two thirds', '0.666 A', written('2/3', 'A'), 'rounding'],
  ['left it as a fraction', '2/3', written('2/3', 'A'), undefined],
  ['gave all that the calculator shows', '0.6666666667', written('2/3', 'A'), undefined],
  // A current that flows the other way.
  ['forgot that it flows backwards', '0.5 A', written('-0.5', 'A'), 'sign'],
  ['wrote a hyphen for the minus', '-0.5 A', written('-0.5', 'A'), undefined],
  ['wrote a dash for the minus, and a space', '– 0.50', written('-0.5', 'A'), undefined],
  [
    'has it backwards and the point in the wrong place, which are two slips',
    '5',
    written('-0.5', 'A'),
    'other',
  ],
  // Near and not near: up to a fiftieth away is a matter of rounding.
  ['is a fiftieth too high', '51', written('50', 'V'), 'rounding'],
  ['is a fiftieth too low', '49', written('50', 'V'), 'rounding'],
  ['is more than a fiftieth too high', '51.1', written('50', 'V'), 'other'],
  ['is more than a fiftieth too low', '48.9', written('50', 'V'), 'other'],
  ['is a fiftieth off below nothing', '-51', written('-50', 'V'), 'rounding'],
  ['is a fiftieth off the inverse', '0.0204', written('50', 'V'), 'upside down'],
  // Every power of ten that a prefix or a slip of the point makes.
  ['took pico for milli', '5 pC', { value: new Fraction('0.005'), text: '5.00 mC' }, 'power of ten'],
  [
    'took minutes for seconds, which is no power of ten',
    '2',
    { value: new Fraction(120), text: '120 s' },
    'other',
  ],
  ['took giga for nothing', '3 GW', written('3', 'W'), 'power of ten'],
  ['is ten million times too much', '30000000 W', written('3', 'W'), 'other'],
  ['is a millionth', '3 \u00b5W', written('3', 'W'), 'power of ten'],
  // Nothing at all.
  ['finds nothing where there is something', '0', written('0.5', 'A'), 'other'],
  ['finds a little where there is nothing', '0.001', written('0', 'A'), 'other'],
  ['finds what would round to nothing', '0.4', written('0', 'V'), 'other'],
  ['finds nothing, in another prefix', '0 mA', written('0', 'A'), undefined],
  ['finds less than nothing', '-0', written('0', 'A'), undefined],
  // What cannot be read.
  ['wrote the sum and not what comes out', '2 + 2', written('4', 'Ω'), 'unit'],
  ['wrote two points', '4.0.0', written('4', 'Ω'), 'unit'],
  ['wrote nothing but a unit', 'Ω', written('4', 'Ω'), 'not a number'],
  ['held a key down', `4${'0'.repeat(50)}`, written('4', 'Ω'), 'not a number'],
  ['wrote kilo as a large letter', '4.7 KΩ', written('4700', 'Ω'), 'unit'],
];

void describe('what a pupil did wrong', () => {
  for (const [what, typed, right, slip] of slips)
    void it(`${what}: ${typed.slice(0, 12)} for ${right.text} is ${slip ?? 'right'}`, () => {
      assert.equal(agreement(typed, right), slip);
      assert.equal(agreement(`  ${typed} `, right), slip, 'with spaces round it');
    });
});

const values = fc
  .tuple(fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: -4, max: 3 }), fc.boolean())
  .map(([digits, power, isBelow]) =>
    new Fraction(isBelow ? -digits : digits).mul(new Fraction(10).pow(power)),
  );
const figures = fc.integer({ min: 2, max: 4 });
const prefixes = fc.constantFrom<Prefix>('n', 'µ', 'm', '', 'k', 'M');

void describe('whatever is asked', () => {
  const right = fc.tuple(values, figures).map(([value, count]) => ({
    value,
    text: writeReading(value, 'A', { figures: count }).text,
  }));

  void it('an exact answer is right in any prefix', () => {
    fc.assert(
      fc.property(right, prefixes, (asked, prefix) => {
        const number = asked.value.div(new Fraction(10).pow(exponentOf(prefix)));
        const decimal = number.toString(25);
        if (/[(]/.test(decimal)) return;
        assert.equal(agreement(`${decimal} ${prefix}A`, asked), undefined);
      }),
    );
  });

  void it('the opposite is a slip of the sign, and the inverse one of turning over, if it is nothing worse', () => {
    fc.assert(
      fc.property(right, (asked) => {
        assert.equal(agreement(`${asked.value.neg().toFraction()} A`, asked), 'sign');
        const inverse = asked.value.inverse();
        const distance = Math.log10(Math.abs(Number(inverse.div(asked.value))));
        // A power of ten between the two would be the slip that is more likely.
        if (Math.abs(distance - Math.round(distance)) < 0.05) return;
        assert.equal(agreement(`${inverse.toFraction()} A`, asked), 'upside down');
      }),
    );
  });

  void it('thousand times too much or too little is a slip of the power of ten', () => {
    fc.assert(
      fc.property(right, fc.constantFrom('1000', '1/1000', '10', '1/10', '1000000000'), (asked, factor) => {
        const far = asked.value.mul(factor);
        assert.equal(agreement(`${far.toFraction()} A`, asked), 'power of ten');
      }),
    );
  });

  void it('another unit is told before all else', () => {
    fc.assert(
      fc.property(
        right,
        fc.constantFrom('V', 'Ω', 'W', 'J', 'C', 's', 'kg'),
        values,
        (asked, unit, other) => {
          assert.equal(agreement(`${other.toFraction()} ${unit}`, asked), 'unit');
        },
      ),
    );
  });
});
