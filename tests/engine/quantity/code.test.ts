import assert from 'node:assert/strict';
import { test } from 'node:test';
import { scanCode } from '../../../src/engine/quantity/index.ts';

// Codes and values as printed in accounts of IEC 60062:2016 (marking codes for resistors), its clause on the letter that
// stands where the decimal point would; a small k is common practice.
const printed: readonly (readonly [string, string, string, number])[] = [
  ['R47', '47/100', '', 2],
  ['4R7', '47/10', '', 1],
  ['470R', '470', '', 0],
  ['4K7', '4700', 'k', 1],
  ['4k7', '4700', 'k', 1],
  ['47K', '47000', 'k', 0],
  ['47K3', '47300', 'k', 1],
  ['470K', '470000', 'k', 0],
  ['4M7', '4700000', 'M', 1],
  ['2K2', '2200', 'k', 1],
  ['1M0', '1000000', 'M', 1],
  ['33K', '33000', 'k', 0],
];

test('the letter of IEC 60062 stands where the decimal point would', () => {
  for (const [code, value, prefix, decimals] of printed) {
    const reading = scanCode(code, 0);
    assert.equal(reading?.end, code.length, code);
    assert.equal(reading.quantity.value.toFraction(), value, code);
    assert.equal(reading.quantity.prefix, prefix, code);
    assert.equal(reading.quantity.decimals, decimals, code);
  }
});

test('an ohm sign may follow a code; no other letter or digit may', () => {
  for (const [text, end] of [
    ['4k7Ω', 4],
    ['4k7 \u2126', 5],
    ['470R+', 4],
    ['1k..', 2],
  ] as const) {
    assert.equal(scanCode(text, 0)?.end, end, text);
  }
  for (const text of ['4k7J', '4L7', '6V3', '4k7ΩV', '4.7k', 'R4', 'R', 'k47', '4m7', '4r7', '470 R']) {
    assert.equal(scanCode(text, 0), undefined, text);
  }
});
