import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { evaluate, exactly } from '../../../src/engine/claims/expression.ts';
import { Mistaken, readClaim, type Claim } from '../../../src/engine/claims/read-claim.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

/** A side of a claim as it is written, with what it is worth, worked out here; `rank` is how tightly its last operation binds. */
interface Written {
  readonly text: string;
  readonly value: Fraction;
  readonly rank: 'sum' | 'term' | 'product' | 'value';
  /** Quantities and numbers, a square counted twice. */
  readonly size: number;
}

const ranks = ['sum', 'term', 'product', 'value'] as const;
const bracketed = (each: Written, least: Written['rank']): string =>
  ranks.indexOf(each.rank) < ranks.indexOf(least) ? `(${each.text})` : each.text;

const number: fc.Arbitrary<Written> = fc.integer({ min: 1, max: 99 }).map((tenths) => ({
  text: `${tenths / 10}`,
  value: new Fraction(tenths, 10),
  rank: 'value',
  size: 1,
}));

/** Sums, products, quotients and squares of numbers, with the brackets that they need and no others, signs and spaces as people write them. */
const { side } = fc.letrec<{ side: Written }>((tie) => ({
  side: fc.oneof(
    { maxDepth: 4, withCrossShrink: true },
    number,
    fc
      .tuple(tie('side'), tie('side'), fc.constantFrom(' + ', '+', ' − ', '-', ' – '))
      .map(([a, b, sign]) => ({
        text: `${a.text}${sign}${bracketed(b, 'term')}`,
        value: sign.includes('+') ? a.value.add(b.value) : a.value.sub(b.value),
        rank: 'sum' as const,
        size: a.size + b.size,
      })),
    fc
      .tuple(tie('side'), tie('side'), fc.constantFrom(' * ', ' × ', '·', ' / ', ' ÷ ', ' : '))
      .filter(([, b, sign]) => b.value.n !== 0n || !/[/÷:]/.test(sign))
      .map(([a, b, sign]) => ({
        text: `${bracketed(a, 'term')}${sign}${bracketed(b, 'product')}`,
        value: /[/÷:]/.test(sign) ? a.value.div(b.value) : a.value.mul(b.value),
        rank: 'term' as const,
        size: a.size + b.size,
      })),
    // Side by side: two brackets, which bind tighter than a sign.
    fc.tuple(tie('side'), tie('side')).map(([a, b]) => ({
      text: `(${a.text}) (${b.text})`,
      value: a.value.mul(b.value),
      rank: 'product' as const,
      size: a.size + b.size,
    })),
    fc.tuple(tie('side'), fc.constantFrom('²', '^2', ' ^ 2')).map(([a, square]) => ({
      text: `(${a.text})${square}`,
      value: a.value.mul(a.value),
      rank: 'value' as const,
      size: 2 * a.size,
    })),
  ),
}));

const worth = (expression: Claim['left'], names: Readonly<Record<string, number>> = {}): string | undefined =>
  evaluate(
    expression,
    exactly((name) => (names[name] === undefined ? undefined : new Fraction(names[name]))),
  )?.toFraction();

/** How a text is mistaken; '' where it can be read. */
function wrong(text: string, names: readonly string[] = []): string {
  try {
    readClaim(text, names);
    return '';
  } catch (error) {
    assert.ok(error instanceof Mistaken);
    return error.mistake.wrong.code;
  }
}

describe('a claim', () => {
  it('is worth what its operations are, with brackets only where they must be', () => {
    let read = 0;
    fc.assert(
      fc.property(side, side, (left, right) => {
        fc.pre(left.text.length + right.text.length < 450);
        const text = `${left.text} = ${right.text}`;
        if (left.size + right.size > 24) {
          assert.equal(wrong(text), 'claim too large', text);
          return;
        }
        const claim = readClaim(text, []);
        assert.equal(worth(claim.left), left.value.toFraction(), text);
        assert.equal(worth(claim.right), right.value.toFraction(), text);
        assert.equal(worth(claim.difference), left.value.sub(right.value).toFraction(), text);
        read += 1;
      }),
      { numRuns: 1000 },
    );
    assert.ok(read > 400, `${read}`);
  });

  const names = ['V_R1', 'V_R2', 'I_R1', 'R_R1', 'P_R1', 'E_B1', 'r_B1'];
  const values = { V_R1: 6, V_R2: 3, I_R1: 2, R_R1: 5, P_R1: 12, E_B1: 9, r_B1: 4 };

  for (const [text, left] of [
    ['2 V_R2 = V_R1', '6'],
    ['2V_R2 = V_R1', '6'],
    ['-V_R2 = V_R1', '-3'],
    ['−V_R1² = 3', '-36'],
    ['(−V_R1)² = 3', '36'],
    // Side by side binds tighter than a sign (common practice): E²/(4 r).
    ['E_B1² / 4 r_B1 = P_R1', '81/16'],
    ['E_B1² / 4 * r_B1 = 3', '81'],
    ['V_R1 / 2 / 3 = 1', '1'],
    ['V_R1 − 2 − 3 = 1', '1'],
    ['V_R1 - -2 = 1', '8'],
    ['I_R1 R_R1 = V_R1', '10'],
    ['I_R1² R_R1 = P_R1', '20'],
    ['5 mV = V_R1', '1/200'],
    ['0,5 V = V_R1', '1/2'],
    ['3 kΩ = R_R1', '3000'],
    ['V_R1 (1 + 2) = 3', '18'],
  ] as const)
    it(`${text}: its left side is ${left}`, () => {
      assert.equal(worth(readClaim(text, names).left, values), left);
    });

  it('has the signs of its comparison, however that is spelled', () => {
    for (const [spellings, signs] of [
      [['<'], [-1]],
      [['>'], [1]],
      [['=', '=='], [0]],
      [
        ['<=', '=<', '≤', '⩽'],
        [-1, 0],
      ],
      [
        ['>=', '=>', '≥', '⩾'],
        [0, 1],
      ],
      [
        ['!=', '≠'],
        [-1, 1],
      ],
    ] as const)
      for (const spelling of spellings)
        for (const space of ['', ' '])
          assert.deepEqual(readClaim(`V_R1${space}${spelling}${space}3`, names).signs, signs, spelling);
  });

  it('has the unit of both sides, which must be one, unless a side is a bare number', () => {
    for (const [text, unit] of [
      ['V_R1 = 3', 'V'],
      ['3 = V_R1', 'V'],
      ['V_R1 I_R1 = P_R1', 'W'],
      ['V_R1 / I_R1 = 5', 'Ω'],
      ['V_R1 / V_R2 = 2', ''],
      ['3 = 2 + 1', ''],
      ['V_R1 V_R2 = 3', 'V²'],
      ['V_R1² V_R2² / I_R1² = 3', 'V⁴/A²'],
    ] as const)
      assert.equal(readClaim(text, names).unit, unit, text);
    for (const text of ['V_R1 = I_R1', 'V_R1 + I_R1 = 3', 'R_R1 = 3 V', 'V_R1 / V_R2 = 3 V', 'P_R1 = V_R1'])
      assert.equal(wrong(text, names), 'units differ', text);
  });

  it('that is too much says so, and one just within can be read', () => {
    const terms = (count: number): string => Array.from({ length: count }, () => '1').join('+');
    assert.equal(wrong(`${terms(23)} = 1`), '');
    assert.equal(wrong(`${terms(24)} = 1`), 'claim too large');
    assert.equal(wrong(`${'('.repeat(30)}1${')'.repeat(30)} = 1`), '');
    assert.equal(wrong(`${'('.repeat(31)}1${')'.repeat(31)} = 1`), 'too deep');
    assert.equal(wrong(`1 = 1${' '.repeat(495)}`), '');
    assert.equal(wrong(`1 = 1${' '.repeat(496)}`), 'text too long');
    // A power is a product of two quantities, and a square of twelve is as much as there may be.
    assert.equal(
      wrong(`${Array.from({ length: 12 }, () => 'P_R1').join('+')} = V_R1²`, names),
      'claim too large',
    );
  });
});
