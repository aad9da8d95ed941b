import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { evaluate, exactly, type Expression } from '../../../src/engine/claims/expression.ts';
import {
  constant,
  derivative,
  inRatios,
  product,
  sum,
  through,
  valueAt,
  type Polynomial,
  type Ratio,
} from '../../../src/engine/claims/ratio.ts';
import { signPlaces } from '../../../src/engine/claims/sign-places.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';

const small = fc.integer({ min: -9, max: 9 });
const value = fc.tuple(small, fc.integer({ min: 1, max: 5 })).map(([n, d]) => new Fraction(n, d));
const zero = new Fraction(0);

/** Polynomials to the fourth degree, as they are kept: the last coefficient is not 0. */
const polynomial: fc.Arbitrary<Polynomial> = fc
  .array(value, { maxLength: 5 })
  .map((terms) => terms.slice(0, terms.findLastIndex(({ n }) => n > 0n) + 1));
const ratio: fc.Arbitrary<Ratio> = fc
  .tuple(polynomial, polynomial)
  .filter(([, under]) => under.length > 0)
  .map(([over, under]) => ({ over, under }));

/** The value of a ratio; undefined where it divides by nothing. */
function at({ over, under }: Ratio, x: Fraction): Fraction | undefined {
  const below = valueAt(under, x);
  return below.n ? valueAt(over, x).div(below) : undefined;
}

/** The value of a polynomial by powers, without Horner's brackets. */
const byPowers = (terms: Polynomial, x: Fraction): Fraction =>
  terms.reduce((whole, term, power) => whole.add(term.mul(x.pow(power))), zero);

describe('a polynomial', () => {
  it('has the value of its powers', () => {
    fc.assert(
      fc.property(polynomial, value, (terms, x) => {
        assert.ok(valueAt(terms, x).equals(byPowers(terms, x)));
      }),
    );
  });

  it('has the slope that its values at five places give, which is exact to the fourth degree', () => {
    fc.assert(
      fc.property(polynomial, value, (terms, x) => {
        const chord = (h: number): Fraction => valueAt(terms, x.add(h)).sub(valueAt(terms, x.sub(h)));
        assert.ok(valueAt(derivative(terms), x).equals(chord(1).mul(8).sub(chord(2)).div(12)));
        assert.equal(derivative(terms).length, Math.max(0, terms.length - 1));
      }),
    );
  });
});

describe('ratios of polynomials', () => {
  it('add and multiply as their values do', () => {
    fc.assert(
      fc.property(ratio, ratio, value, (a, b, x) => {
        const [p, q] = [at(a, x), at(b, x)];
        fc.pre(p !== undefined && q !== undefined);
        assert.ok(at(sum(a, b), x)?.equals(p.add(q)));
        assert.ok(at(product(a, b), x)?.equals(p.mul(q)));
      }),
    );
  });

  it('keep a denominator that both have', () => {
    fc.assert(
      fc.property(ratio, polynomial, (a, over) => {
        assert.equal(sum(a, { over, under: a.under }).under, a.under);
      }),
    );
  });

  it('of constants are constants', () => {
    fc.assert(
      fc.property(value, value, value, (a, b, x) => {
        assert.ok(at(sum(constant(a), constant(b)), x)?.equals(a.add(b)));
        assert.ok(sum(constant(a), constant(a.neg())).over.length === 0);
      }),
    );
  });

  it('through three points of a ratio of straight lines is that ratio, at every other point', () => {
    fc.assert(
      fc.property(
        value,
        value,
        value,
        value,
        fc.array(value, { minLength: 4, maxLength: 4 }),
        (a, b, c, d, xs) => {
          const lines = { over: [a, b], under: [c, d] };
          const values = xs.map((x) => at(lines, x));
          const distinct = new Set(xs.map((x) => x.toFraction())).size === 4;
          fc.pre(distinct && values.every((each) => each !== undefined));
          const [x, y, z, w] = xs;
          const [f, g, h, wanted] = values;
          assert.ok(x && y && z && w && f && g && h && wanted);
          const found = through([x, y, z], [f, g, h]);
          assert.ok(
            at(found, w)?.equals(wanted),
            `${at(found, w)?.toFraction()}, not ${wanted.toFraction()}`,
          );
          const { under } = found;
          if (found.over.length > 1 || under.length > 1) assert.ok(under.at(-1)?.equals(1));
        },
      ),
      { numRuns: 500 },
    );
  });
});

/** Expressions over x, numbers and the four operations. */
const { expression } = fc.letrec<{ expression: Expression }>((tie) => ({
  expression: fc.oneof(
    { maxDepth: 4 },
    value.map((each): Expression => ({ kind: 'number', value: each })),
    fc.constant<Expression>({ kind: 'name', name: 'x' }),
    fc.record({
      kind: fc.constantFrom('+', '-', '*', '/'),
      left: tie('expression'),
      right: tie('expression'),
    }),
  ),
}));

describe('an expression', () => {
  it('worked out in ratios, and then at a value, is what it is worked out at that value', () => {
    fc.assert(
      fc.property(expression, value, (each, x) => {
        const inX = evaluate(
          each,
          inRatios((name) =>
            name === 'x' ? { over: [zero, new Fraction(1)], under: [new Fraction(1)] } : undefined,
          ),
        );
        const exact = evaluate(
          each,
          exactly(() => x),
        );
        // A ratio that is 0 under everywhere has no value; at single values it may divide by nothing where the whole does not.
        if (exact && inX && valueAt(inX.under, x).n) assert.ok(at(inX, x)?.equals(exact));
        if (!inX) assert.equal(exact, undefined);
      }),
      { numRuns: 1000 },
    );
  });

  it('without a value of its own name has none', () => {
    assert.equal(
      evaluate(
        { kind: 'name', name: 'y' },
        exactly(() => undefined),
      ),
      undefined,
    );
  });
});

describe('the places of signs on a slider', () => {
  it('tell the sign at every place: between two that are no neighbours it is the same throughout', () => {
    fc.assert(
      fc.property(polynomial, fc.integer({ min: 1, max: 60 }), value, (terms, last, shift) => {
        const settingAt = (place: number): Fraction => new Fraction(place, 7).add(shift);
        const signAt = (place: number): number => valueAt(terms, settingAt(place)).compare(0);
        const places = signPlaces(terms, settingAt, last);
        assert.deepEqual([places[0], places.at(-1)], [0, last]);
        assert.deepEqual(
          [...places].sort((a, b) => a - b),
          [...places],
        );
        for (const [k, low] of places.entries()) {
          const high = places[k + 1];
          if (high === undefined) continue;
          const inside = Array.from({ length: high - low - 1 }, (_, step) => signAt(low + step + 1));
          if (inside.length === 0) continue;
          assert.equal(new Set(inside).size, 1, `between ${low} and ${high}`);
          assert.ok(terms.length === 0 || inside[0] !== 0, `no root between ${low} and ${high}`);
          // What changes just at a place is told by that place.
          for (const end of [signAt(low), signAt(high)]) assert.ok(end === 0 || end === inside[0]);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('are few, however many settings there are', () => {
    // (x − 1)(x − 2)(x − 3) over a million settings from 0 to 4.
    const terms = [-6, 11, -6, 1].map((each) => new Fraction(each));
    let asked = 0;
    const places = signPlaces(
      terms,
      (place) => {
        asked += 1;
        return new Fraction(place, 250_000);
      },
      1_000_000,
    );
    assert.ok(places.length < 20, `${places.length}`);
    assert.ok(asked < 400, `${asked}`);
    for (const root of [250_000, 500_000, 750_000]) assert.ok(places.includes(root), `${root}`);
  });
});
