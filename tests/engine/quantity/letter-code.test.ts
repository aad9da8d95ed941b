import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction, powerOfTen, preferred, scanCode } from '../../../src/engine/quantity/index.ts';

// IEC 60062:2016, marking codes for resistors, as accounts of it and of BS 1852 print them (seen second-hand): R stands for × 1,
// K for × 10³, M for × 10⁶, where the decimal point would stand.
const letters = [
  ['R', 0],
  ['K', 3],
  ['M', 6],
] as const;

/** The code of a two-figure value, by the rule of the standard: R47, 4R7, 47R, 470R, 4K7, … */
function codeOf(digits: number, power: number): string {
  const [letter, exponent] = letters.findLast(([, from]) => power + 1 >= from) ?? letters[0];
  const figures = `${digits}`;
  const point = power - exponent + 2;
  if (point <= 0) return `${letter}${figures.padStart(2 - point, '0')}`;
  const after = figures.slice(point).replace(/^0$/, point === 1 ? '0' : '');
  return `${figures.slice(0, point).padEnd(point, '0')}${letter}${after}`;
}

void describe('the letter code of IEC 60062', () => {
  void it('is written here as the accounts print it', () => {
    const printed = [
      ['R47', 47, -2],
      ['4R7', 47, -1],
      ['470R', 47, 1],
      ['4K7', 47, 2],
      ['47K', 47, 3],
      ['470K', 47, 4],
      ['4M7', 47, 5],
      ['2K2', 22, 2],
      ['1M0', 10, 5],
      ['33K', 33, 3],
    ] as const;
    for (const [code, digits, power] of printed) assert.equal(codeOf(digits, power), code);
  });

  void it('is read for every value of E12 and E24 (IEC 60063:2015) from 0.10 Ω to 91 MΩ', () => {
    for (const series of ['E12', 'E24'] as const) {
      const decade = series === 'E12' ? 12 : 24;
      for (let place = -decade; place < 8 * decade; place++) {
        const { digits, power } = preferred(series, place);
        const code = codeOf(digits, power);
        const value = scanCode(code, 0)?.quantity.value;
        assert.ok(value?.equals(powerOfTen(power).mul(new Fraction(digits))), code);
      }
    }
  });

  void it('with a letter of tolerance behind it is no code here: F, G, J and K could be taken for a value', () => {
    // G 2 %, J 5 %, K 10 % by an account of BS 1852 (seen second-hand); F 1 % from memory.
    for (const code of ['1R8J', '27KK', '4K7G', '470RF']) assert.equal(scanCode(code, 0), undefined, code);
  });
});
