import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { agreement } from '../../../src/engine/mark/index.ts';
import { Fraction, writeReading } from '../../../src/engine/quantity/index.ts';

const third = { value: new Fraction(20, 3), text: '6.67\u202fΩ' };
const small = { value: new Fraction('0.0045'), text: '4.50\u202fmA' };

void describe('a number that a pupil fills in', () => {
  const rows = [
    // Common practice: an answer with more figures is right where it rounds to the written one.
    ['6.67', third, undefined],
    ['6,67', third, undefined],
    ['6.6667 Ω', third, undefined],
    ['20/3', third, undefined],
    ['0.00667 kΩ', third, undefined],
    ['6.67 ohm', third, undefined],
    ['6.7', third, 'rounding'],
    ['6.66', third, 'rounding'],
    ['-6.67', third, 'sign'],
    ['−6.67', third, 'sign'],
    ['66.7', third, 'power of ten'],
    ['0.15', third, 'upside down'],
    ['5', third, 'other'],
    ['0', third, 'other'],
    ['6.67 V', third, 'unit'],
    ['6.67 apples', third, 'unit'],
    ['', third, 'not a number'],
    ['six', third, 'not a number'],
    ['6,667', third, undefined],
    ['1/0', third, 'not a number'],
    ['4.5', small, undefined],
    ['0.0045 A', small, undefined],
    ['4500 µA', small, undefined],
    ['4500 uA', small, undefined],
    ['0.0045', small, 'power of ten'],
    ['4.5 mV', small, 'unit'],
    ['0', { value: new Fraction(0), text: '0\u202fA' }, undefined],
    ['3', { value: new Fraction(0), text: '0\u202fA' }, 'other'],
    ['10', { value: new Fraction(10), text: '10.0\u202fJ' }, undefined],
  ] as const;
  for (const [typed, written, expected] of rows)
    void it(`“${typed}” for ${written.text} is ${expected ?? 'right'}`, () => {
      assert.equal(agreement(typed, written), expected);
    });

  void it('is right as it stands written, whatever the value and the figures', () => {
    const value = fc.tuple(fc.bigInt(-(10n ** 9n), 10n ** 9n), fc.bigInt(1n, 10n ** 6n));
    fc.assert(
      fc.property(
        value,
        fc.integer({ min: 2, max: 6 }),
        fc.constantFrom<'.' | ','>('.', ','),
        ([n, d], figures, sign) => {
          const exact = new Fraction(n, d);
          const { text } = writeReading(exact, 'A', { figures, decimalSign: sign });
          assert.equal(agreement(text, { value: exact, text }), undefined, text);
        },
      ),
    );
  });
});
