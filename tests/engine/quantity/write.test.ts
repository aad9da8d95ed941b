import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  exponentOf,
  figuresWritten,
  prefixFor,
  quantity,
  sharedPrefix,
  significant,
  thinSpace,
  writeQuantity,
  writeReading,
  type Prefix,
  type Unit,
} from '../../../src/engine/quantity/index.ts';

const text = (value: number | string, unit: Unit, figures?: number): string =>
  writeReading(new Fraction(value), unit, figures === undefined ? {} : { figures }).text.replace(
    thinSpace,
    ' ',
  );

void describe('prefixes', () => {
  void it('stand for the powers of ten of the SI Brochure (9th edition, table 7)', () => {
    const table: [Prefix, number][] = [
      ['p', -12],
      ['n', -9],
      ['µ', -6],
      ['m', -3],
      ['', 0],
      ['k', 3],
      ['M', 6],
      ['G', 9],
    ];
    for (const [prefix, power] of table) {
      assert.equal(exponentOf(prefix), power);
      assert.equal(prefixFor(power), prefix);
      assert.equal(prefixFor(power + 2), prefix);
    }
  });

  void it('end at pico and giga, whatever the power', () => {
    assert.equal(prefixFor(-40), 'p');
    assert.equal(prefixFor(40), 'G');
  });
});

void describe('a reading', () => {
  const readings: [number | string, Unit, string][] = [
    ['0.45', 'A', '0.450 A'],
    ['0.01', 'A', '0.0100 A'],
    ['0.00999', 'A', '9.99 mA'],
    ['0.009996', 'A', '0.0100 A'],
    ['999.4', 'V', '999 V'],
    ['999.6', 'V', '1.00 kV'],
    ['0.1', 'Ω', '0.100 Ω'],
    ['0.0999', 'Ω', '99.9 mΩ'],
    ['4700', 'Ω', '4.70 kΩ'],
    ['1/3', 'Ω', '0.333 Ω'],
    ['2/3', 'A', '0.667 A'],
    ['0.000001', 'F', '1.00 µF'],
    ['-0.5', 'A', '−0.500 A'],
    [0, 'A', '0 A'],
    [1e12, 'Ω', '1000 GΩ'],
    [new Fraction(1n, 10n ** 15n).toFraction(), 'W', '0.00100 pW'],
  ];
  for (const [value, unit, expected] of readings) {
    void it(`of ${value} ${unit} is written ${expected}`, () => {
      assert.equal(text(value, unit), expected);
    });
  }

  void it('of 0.1 + 0.2 is 0.3 to any number of figures, since the sum is exact', () => {
    assert.equal(text(new Fraction('0.1').add('0.2').toFraction(), 'V', 15), '0.300000000000000 V');
  });

  void it('rounds half up, as textbooks do (common practice)', () => {
    assert.equal(text('0.125', 'A', 2), '0.13 A');
    assert.equal(text('2.5', 'V', 1), '3 V');
    assert.equal(text('-2.5', 'V', 1), '−3 V');
  });

  void it('takes the decimal sign of the reader', () => {
    assert.equal(writeReading(0.45, 'A', { decimalSign: ',' }).number, '0,450');
  });

  void it('keeps a prefix shared by all readings, the one that suits the largest', () => {
    const prefix = sharedPrefix([0.002, new Fraction('0.0005')], 'A');
    assert.equal(prefix, 'm');
    assert.equal(writeReading(new Fraction('0.0005'), 'A', { prefix }).text, `0.500${thinSpace}mA`);
    assert.equal(sharedPrefix([], 'A'), '');
  });

  void it('is a plain number between 1 and 1000 of its prefix, or a small one without, never an exponent', () => {
    fc.assert(
      fc.property(
        fc.bigInt({ min: 1n, max: 10n ** 15n }),
        fc.bigInt({ min: 1n, max: 10n ** 12n }),
        fc.integer({ min: 1, max: 6 }),
        (n, d, figures) => {
          const value = new Fraction(n, d);
          const { number, unit } = writeReading(value, 'A', { figures });
          assert.match(number, /^\d+(\.\d+)?$/);
          const prefix = unit.slice(0, -1) as Prefix;
          const back = new Fraction(number).mul(new Fraction(10).pow(exponentOf(prefix)));
          const error = back.sub(value).abs().div(value);
          assert.ok(
            error.compare(new Fraction(1, 2n * 10n ** BigInt(figures - 1))) <= 0,
            `${number} ${unit}`,
          );
        },
      ),
      { numRuns: 2000 },
    );
  });

  void it('is the same from a float as from the exact value of that float', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -999_999, max: 999_999 }),
        fc.integer({ min: 1, max: 5 }),
        (n, figures) => {
          const value = n / 1024;
          assert.equal(significant(value, figures), significant(new Fraction(n, 1024), figures));
        },
      ),
    );
  });
});

void describe('a value as written', () => {
  void it('keeps its prefix and its decimals', () => {
    assert.equal(writeQuantity(quantity('4700', 'Ω', 'k')).text, `4.7${thinSpace}kΩ`);
    assert.equal(writeQuantity(quantity('12', 'V', '', 1)).text, `12.0${thinSpace}V`);
    assert.equal(writeQuantity(quantity('0.0047', 'A', 'm')).number, '4.7');
    assert.equal(writeQuantity(quantity('123400', 'Ω', 'M')).number, '0.1234');
    assert.equal(writeQuantity(quantity('-1.5', 'V')).number, '−1.5');
  });

  void it('is a fraction where no decimal is exact', () => {
    assert.equal(writeQuantity(quantity('1/3', 'Ω')).text, `1/3${thinSpace}Ω`);
  });

  void it('has the figures it was written with', () => {
    assert.equal(figuresWritten(quantity('12', 'V', '', 1)), 3);
    assert.equal(figuresWritten(quantity('0.05', 'A')), 1);
    assert.equal(figuresWritten(quantity('4700', 'Ω', 'k')), 2);
    assert.equal(figuresWritten(quantity('100', 'Ω')), 3);
  });

  void it('is read back exactly from what is written', () => {
    const prefixes = fc.constantFrom<Prefix>('p', 'n', 'µ', 'm', '', 'k', 'M', 'G');
    fc.assert(
      fc.property(
        fc.bigInt({ min: 0n, max: 10n ** 20n }),
        fc.integer({ min: 0, max: 20 }),
        prefixes,
        (n, places, prefix) => {
          const value = new Fraction(n, 10n ** BigInt(places));
          const { number } = writeQuantity(quantity(value, 'Ω', prefix));
          const power = exponentOf(prefix);
          const factor =
            power < 0 ? new Fraction(1n, 10n ** BigInt(-power)) : new Fraction(10n ** BigInt(power));
          assert.ok(new Fraction(number).mul(factor).equals(value));
        },
      ),
      { numRuns: 1000 },
    );
  });
});
