import assert from 'node:assert/strict';
import { test } from 'node:test';
import { readQuantity } from '../../../src/engine/notation/index.ts';
import type { Prefix, Unit } from '../../../src/engine/quantity/index.ts';

/** The value in SI units, or the code of what is wrong. */
function typed(text: string, unit: Unit = 'Ω', prefix?: Prefix): string {
  const read = readQuantity(text, unit, prefix);
  return 'value' in read ? read.value.toFraction() : read.code;
}

test('a typed value is read in every spelling of the notation', () => {
  for (const text of ['20', '20 Ω', '20Ω', ' 20 ohms ', '20,0', '20.00', '0.02 kΩ', '2e1', '20R', '40/2']) {
    assert.equal(typed(text), '20', text);
  }
  assert.equal(typed('4k7'), '4700');
  assert.equal(typed('R47'), '47/100');
  assert.equal(typed('1.2kΩ'), '1200');
  assert.equal(typed('0,45 A', 'A'), '9/20');
  assert.equal(typed('450mA', 'A'), '9/20');
  assert.equal(typed('-3 V', 'V'), '-3');
  assert.equal(typed('−3', 'V'), '-3');
});

test('a bare number has the prefix of the value that it replaces', () => {
  assert.equal(typed('20', 'Ω', 'k'), '20000');
  assert.equal(typed('20 Ω', 'Ω', 'k'), '20');
  assert.equal(typed('4k7', 'Ω', 'M'), '4700');
});

test('what cannot be read as the value is refused with its reason', () => {
  const refused: readonly (readonly [text: string, unit: Unit, code: string])[] = [
    ['', 'Ω', 'expected'],
    ['many', 'Ω', 'expected'],
    ['5 5', 'Ω', 'expected'],
    ['5 V', 'Ω', 'write instead'],
    ['4k7', 'V', 'write instead'],
    ['5 ohm', 'A', 'write instead'],
    ['5 v', 'V', 'write instead'],
    ['1,000', 'Ω', 'two readings'],
    ['1/0', 'Ω', 'zero below'],
    ['1e99', 'Ω', 'number too long'],
    ['5'.repeat(101), 'Ω', 'text too long'],
    ['R1', 'Ω', 'expected'],
  ];
  for (const [text, unit, code] of refused) assert.equal(typed(text, unit), code, text);
});
