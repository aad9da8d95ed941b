import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { evaluate } from '../../../src/engine/explain/evaluate.ts';
import { Heap } from '../../../src/engine/explain/heap.ts';
import { exact, inverse, read, root, type Interval } from '../../../src/engine/explain/interval.ts';
import {
  rearranged,
  relation,
  term,
  type Relation,
  type Sign,
} from '../../../src/engine/explain/relation.ts';
import { written } from '../../../src/engine/explain/write.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { sidesOf } from './equation.ts';

const sign: fc.Arbitrary<Sign> = fc.constantFrom<Sign>(1, -1);
const names = ['I_R1', 'V_(R1+R2)', 'R_total'];
/** As the engine makes them: reciprocals and what is over a sum without a sign, and no product that starts with a division. */
const relations: fc.Arbitrary<Relation> = fc
  .tuple(
    fc.constantFrom('sum', 'product', 'reciprocals', 'product over sum'),
    fc.array(fc.tuple(sign, fc.constantFrom(1, -1)), { minLength: 2, maxLength: 3 }),
  )
  .map(([form, drawn]) => {
    const right = drawn.slice(0, form === 'product over sum' ? 2 : 3).map(([way, power], index) => {
      const signed = form === 'sum' || form === 'product' ? way : 1;
      return term(names[index] ?? '', signed, form === 'product' && index > 0 ? power : 1);
    });
    return relation('power', form, [], 'P_R1', ...right);
  });
const value = fc
  .tuple(fc.integer({ min: 1, max: 40 }), fc.integer({ min: 1, max: 9 }), sign)
  .map(([n, d, way]) => new Fraction(n * way, d));

describe('a relation turned round', () => {
  it('says the same, in values and in writing', () => {
    fc.assert(
      fc.property(relations, fc.tuple(value, value, value), fc.nat(), (plain, drawn, pick) => {
        const known = new Map(names.map((name, index) => [name, drawn[index] ?? new Fraction(1)]));
        const of = (name: string): Interval => exact(known.get(name) ?? new Fraction(0));
        const left = evaluate(plain, of);
        if (!left || left.value.equals(0)) return;
        known.set('P_R1', left.value);
        const find = plain.right[pick % plain.right.length]?.name ?? '';
        const turned = rearranged(plain, find);
        assert.ok(turned);
        assert.equal(turned.left, find);
        const again = evaluate(turned, of);
        if (again)
          assert.ok(again.value.equals(known.get(find) ?? 0), `${find} is ${again.value.toFraction()}`);
        const about = (name: string) => {
          const exactly = (known.get(name) ?? new Fraction(0)).valueOf();
          return { value: exactly, error: 1e-9 * Math.abs(exactly) };
        };
        for (const one of [plain, turned]) {
          const [a, b] = sidesOf(
            written(one, (name) => name),
            about,
          );
          if (Number.isFinite(b.error)) assert.ok(Math.abs(a.value - b.value) <= a.error + b.error + 1e-9);
        }
      }),
      { numRuns: 1000 },
    );
  });

  it('has no root where the sign of what is squared is not known', () => {
    const power = relation('power', 'product', [], 'P_R1', term('I_R1', 1, 2), term('R_R1'));
    assert.equal(rearranged(power, 'I_R1'), undefined);
    const turned = rearranged({ ...power, squared: -1 }, 'I_R1');
    assert.equal(turned && written(turned, (name) => name), 'I_R1 = −√(P_R1 ÷ R_R1)');
    const found = turned && evaluate(turned, (name) => exact(new Fraction(name === 'P_R1' ? 12 : 3)));
    assert.equal(found?.value.toFraction(), '-2');
  });
});

describe('an interval', () => {
  it('of a decimal is all that rounds to it', () => {
    const of = (given: string | number | Fraction): string =>
      [read(given).low, read(given).high].map((end) => end.toFraction()).join(' to ');
    assert.equal(of('0.33'), '13/40 to 67/200');
    assert.equal(of('-1.5'), '-31/20 to -29/20');
    assert.equal(of('6.0'), '119/20 to 121/20');
    assert.equal(of(0.5), '9/20 to 11/20');
    assert.equal(of('6'), '6 to 6');
    assert.equal(of('1/3'), '1/3 to 1/3');
    assert.equal(of(new Fraction(1, 4)), '1/4 to 1/4');
  });
  it('has no inverse where it may be 0', () => {
    assert.equal(inverse(exact(new Fraction(0))), undefined);
    assert.equal(inverse(read('0.0')), undefined);
    assert.equal(inverse(exact(new Fraction(4)))?.value.toFraction(), '1/4');
  });
  it('holds the root of what is no square, to forty places', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 10n ** 12n }), fc.bigInt({ min: 1n, max: 10n ** 9n }), (n, d) => {
        const square = new Fraction(n, d);
        const found = root(exact(square));
        assert.ok(found && found.low.pow(2).compare(square) <= 0 && found.high.pow(2).compare(square) >= 0);
        assert.ok(found.high.sub(found.low).compare(new Fraction(1n, 10n ** 40n)) <= 0);
        assert.equal(root(exact(square.pow(2)))?.value.toFraction(), square.toFraction());
      }),
      { numRuns: 200 },
    );
    assert.equal(root(exact(new Fraction(-4))), undefined);
  });
});

describe('a heap', () => {
  it('gives the least first, and of equals the one that came first', () => {
    fc.assert(
      fc.property(fc.array(fc.nat({ max: 9 })), (costs) => {
        const heap = new Heap<number>();
        costs.forEach((cost, turn) => {
          heap.push(turn, cost);
        });
        const order = costs.map((_, turn) => turn).sort((a, b) => (costs[a] ?? 0) - (costs[b] ?? 0));
        assert.deepEqual(
          costs.map(() => heap.pop()),
          order,
        );
        assert.equal(heap.pop(), undefined);
      }),
    );
  });
});
