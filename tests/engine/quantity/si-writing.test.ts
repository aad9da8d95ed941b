import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  quantity,
  writeQuantity,
  writeReading,
  type Prefix,
  type Unit,
} from '../../../src/engine/quantity/index.ts';

// Rules of the SI Brochure (BIPM; chapter and section of the 8th edition), of which the text was seen.
const units = fc.constantFrom<Unit>('V', 'A', 'Ω', 'W', 'F');
const prefixes = fc.constantFrom<Prefix>('p', 'n', 'µ', 'm', '', 'k', 'M', 'G');
const values = fc
  .tuple(fc.bigInt({ min: -(10n ** 12n), max: 10n ** 12n }), fc.integer({ min: 0, max: 15 }))
  .map(([digits, places]) => new Fraction(digits, 10n ** BigInt(places)));
const texts = fc
  .tuple(values, units, prefixes, fc.integer({ min: 1, max: 6 }))
  .map(([value, unit, prefix, figures]) => [
    writeReading(value, unit, { figures }).text,
    writeReading(value, unit, { figures, prefix }).text,
    writeQuantity(quantity(value, unit, prefix)).text,
  ]);

function always(rule: RegExp): void {
  fc.assert(
    fc.property(texts, (all) => {
      for (const text of all) assert.match(text, rule);
    }),
    { numRuns: 500 },
  );
}

void describe('a quantity is written as the SI Brochure asks', () => {
  void it('the number comes first, then one space, then one unit (5.3.3)', () => {
    always(/^[^\p{L}\s]+\s[\p{L}]+$/u);
  });

  void it('the unit is a symbol with at most one prefix, no space between and no full stop (5.1, 5.4)', () => {
    always(/\s[pnµmkMG]?[VAΩWF]$/u);
  });

  void it('a number between −1 and 1 has a zero before its point (a quotation of the Brochure, second-hand)', () => {
    always(/^−?\d/u);
  });

  void it('no comma or point divides the digits into groups (5.3.4, as the NPL gives it)', () => {
    always(/^−?\d+(\.\d+)?\s/u);
  });

  void it('the space is not one that a line may break at (common practice)', () => {
    always(/^\S+[\u00a0\u202f]\S+$/u);
  });

  void it('capitals as in the Brochure: k is kilo, M mega, m milli; V, A, W and F come from names', () => {
    const written = (value: number | string, unit: Unit): string =>
      writeReading(new Fraction(value), unit).text.replace(/\s/u, ' ');
    const table: [number | string, Unit, string][] = [
      [4700, 'Ω', '4.70 kΩ'],
      [4_700_000, 'Ω', '4.70 MΩ'],
      ['0.0047', 'A', '4.70 mA'],
      ['0.0000047', 'F', '4.70 µF'],
      ['0.0000000047', 'F', '4.70 nF'],
      ['0.0000000000047', 'F', '4.70 pF'],
      [4_700_000_000, 'W', '4.70 GW'],
      [4.7, 'V', '4.70 V'],
    ];
    for (const [value, unit, text] of table) assert.equal(written(value, unit), text);
  });
});
