import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  agree,
  bare,
  dimensionOf,
  scanUnit,
  unitOf,
  type Dimension,
} from '../../../src/engine/claims/units.ts';

const powers = fc.integer({ min: -3, max: 3 });
const dimension: fc.Arbitrary<Dimension> = fc.record({ volts: powers, amperes: powers });

/** Reads a unit as it is written: V and A with powers, over each other. */
function read(unit: string): Dimension {
  const known: Readonly<Record<string, Dimension>> = {
    '': { volts: 0, amperes: 0 },
    Ω: { volts: 1, amperes: -1 },
    W: { volts: 1, amperes: 1 },
  };
  const [over = '', under = ''] = unit.split('/');
  const power = (side: string, letter: string): number => {
    const [all, raised] = new RegExp(`${letter}([²³⁴⁵⁶⁷⁸⁹])?`).exec(side) ?? [];
    return all ? (raised ? '⁰¹²³⁴⁵⁶⁷⁸⁹'.indexOf(raised) : 1) : 0;
  };
  return (
    known[unit] ?? {
      volts: power(over, 'V') - power(under, 'V'),
      amperes: power(over, 'A') - power(under, 'A'),
    }
  );
}

describe('a dimension', () => {
  it('is read back from the unit that it is written as', () => {
    fc.assert(fc.property(dimension, (each) => assert.deepEqual(read(unitOf(each)), { ...each })));
  });

  it('is that of the letter of a quantity', () => {
    for (const [name, unit] of [
      ['V_R1', 'V'],
      ['E_B1', 'V'],
      ['V_a_b', 'V'],
      ['I_total', 'A'],
      ['R_R1', 'Ω'],
      ['r_B1', 'Ω'],
      ['P_R1', 'W'],
      ['Pemf_B1', 'W'],
      ['Pr_B1', 'W'],
    ] as const)
      assert.equal(unitOf(dimensionOf(name)), unit, name);
  });

  it('agrees with itself and with bare numbers, and with no other', () => {
    fc.assert(
      fc.property(dimension, dimension, (a, b) => {
        assert.ok(agree(a, a) && agree(a, bare) && agree(bare, b));
        assert.equal(agree(a, b), unitOf(a) === unitOf(b));
      }),
    );
  });
});

describe('a unit in a text', () => {
  const prefixes = { p: 1e-12, n: 1e-9, u: 1e-6, µ: 1e-6, μ: 1e-6, m: 1e-3, '': 1, k: 1e3, M: 1e6, G: 1e9 };
  const units = { V: 'V', A: 'A', W: 'W', Ω: 'Ω', '\u2126': 'Ω', ohm: 'Ω', ohms: 'Ω' };

  it('is found with any prefix, after spaces or none, and ends where it ends', () => {
    for (const [prefix, times] of Object.entries(prefixes))
      for (const [unit, means] of Object.entries(units))
        for (const space of ['', ' ', '\u202f']) {
          const text = `12${space}${prefix}${unit}`;
          for (const rest of ['', ' + 3', ')', '²']) {
            const found = scanUnit(text + rest, 2);
            assert.ok(found, text);
            assert.ok(Math.abs(Number(found.times) / times - 1) < 1e-12, text);
            assert.equal(unitOf(found.dimension), means, text);
            assert.equal(found.end, text.length, text);
          }
        }
  });

  it('is none in a name, in another letter, or in nothing', () => {
    for (const text of ['', ' ', 'V_R1', 'Vx', 'mm', 'kk V', 'volts', 'A1', '²', 'ohmic', '+ 3 V'])
      assert.equal(scanUnit(text, 0), undefined, text);
  });
});
