import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { parseCircuit, readQuantity } from '../../../src/engine/notation/index.ts';

/** The value in ohms, or the code of what is wrong. */
function read(text: string): string {
  const found = readQuantity(text, 'Ω');
  return 'value' in found ? found.value.toFraction() : found.code;
}

// Rules of the SI Brochure (BIPM, 8th edition: 5.1, 5.3.3, 5.4) and, for digits, the NPL's account of it (seen); the names of
// units and what pupils write against the rules are ours.
describe('What the SI Brochure allows is read', () => {
  const allowed: readonly (readonly [text: string, value: string, rule: string])[] = [
    ['12 Ω', '12', 'a space between number and symbol'],
    ['12\u00a0Ω', '12', 'a space that does not break'],
    ['12\u202fΩ', '12', 'a thin space'],
    ['4.7 kΩ', '4700', 'k for kilo, in lower case'],
    ['4.7 MΩ', '4700000', 'M for mega'],
    ['4.7 mΩ', '47/10000', 'm for milli'],
    ['4,7 Ω', '47/10', 'a comma on the line for the decimal marker'],
    ['0.5 Ω', '1/2', 'a zero before the marker'],
    ['12\u202f000 Ω', '12000', 'digits in threes, by a thin space'],
    ['1200 Ω', '1200', 'four digits together'],
    ['12 ohms', '12', 'a name in lower case, with its plural'],
    ['4.7 × 10³ Ω', '4700', 'a power of ten'],
  ];
  for (const [text, value, rule] of allowed) {
    it(`${rule}: ${text}`, () => {
      assert.equal(read(text), value);
    });
  }
});

describe('What it does not allow is refused, with what to write', () => {
  const refused: readonly (readonly [text: string, code: string, rule: string])[] = [
    ['4.7 k', 'write instead', 'a prefix never stands alone'],
    ['4.7 KΩ', 'write instead', 'kilo is in lower case'],
    ['4.7 kkΩ', 'expected', 'no two prefixes together'],
    ['4.7 mkΩ', 'expected', 'no two prefixes together'],
    ['12 Ohm', 'write instead', 'the name of a unit has no capital'],
    ['1,200 Ω', 'two readings', 'no comma between groups of digits'],
    ['.5 Ω', 'write instead', 'a zero before the marker'],
    ['Ω 12', 'expected', 'the number first'],
  ];
  for (const [text, code, rule] of refused) {
    it(`${rule}: ${text}`, () => {
      assert.equal(read(text), code);
    });
  }

  it('a unit is in capitals only where it is a symbol: 6 v and 300 ma are not', () => {
    assert.throws(() => parseCircuit('B1 6 v + R1 5 Ω'), { suggestion: '6 V' });
    assert.throws(() => parseCircuit('B1 6 V + L1 6 V 300 ma'), { suggestion: '300 mA' });
    assert.throws(() => parseCircuit('B1 6 V + L1 6 V 0.3 amps'), { suggestion: '0.3 A' });
  });
});

it('The canonical form writes number, space, one prefix and symbol', () => {
  const written = formatCircuit(
    parseCircuit('B1 6V r 0,5ohm + R1 4k7 2W + L1 2.5V 300mA + R2 12\u202f000ohms'),
  );
  assert.equal(written, 'B1 6 V r 0.5 Ω + R1 4.7 kΩ 2 W + L1 2.5 V 300 mA + R2 12000 Ω');
});
