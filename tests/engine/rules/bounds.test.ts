import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { checkRules, type Rule, type RuleCheck } from '../../../src/engine/rules/index.ts';
import { prose } from './prose.ts';

const checks = (line: string, ...rules: readonly Rule[]): readonly RuleCheck[] =>
  checkRules(parseCircuit(line)).filter(({ rule }) => rules.includes(rule));
const said = (line: string, ...rules: readonly Rule[]): readonly string[] =>
  checks(line, ...rules).map((check) => prose(check));

void describe('where a rule begins to apply', () => {
  void it('a loop needs a supply and one thing that drops its p.d.', () => {
    assert.deepEqual(said('B1 6 V + R1 12 Ω', 'loop law'), ['loop law: V_B1 = V_R1: 6.00 V = 6.00 V']);
    assert.deepEqual(said('B1 6 V + R1 12 Ω', 'power balance'), [
      'power balance: P_B1 = P_R1: 3.00 W = 3.00 W',
    ]);
  });

  void it('p.d.s add up from two parts on in a branch, and from two besides the supply in a closed path', () => {
    const [only] = checks('B1 6 V + R1 12 Ω', 'series p.d.');
    assert.equal(only?.status, 'does not apply');
    assert.deepEqual(said('B1 6 V + R1 4 Ω + R2 8 Ω', 'series p.d.'), [
      'series p.d.: V_B1 = V_R1 + V_R2: 6.00 V = 2.00 V + 4.00 V',
    ]);
  });

  void it('of several resistances side by side the whole is less than the least, wherever that stands', () => {
    for (const line of [
      'B1 6 V + (R1 3 Ω ∥ R2 6 Ω ∥ R3 9 Ω)',
      'B1 6 V + (R2 6 Ω ∥ R1 3 Ω ∥ R3 9 Ω)',
      'B1 6 V + (R3 9 Ω ∥ R2 6 Ω ∥ R1 3 Ω)',
    ])
      assert.ok(
        said(line, 'parallel resistance').some((each) => each.includes('R_total < R_R1:')),
        line,
      );
  });

  void it('only what has a resistance of its own is said to be taken out of V = IR', () => {
    const out = (line: string): readonly RuleCheck[] =>
      checks(line, 'V = IR').filter(({ about }) => about.some((id) => id === 'A1' || id === 'L1'));
    const lamp = 'B1 6 V + (R1 12 Ω ∥ (L1 6 Ω broken + A1))';
    assert.deepEqual(
      out(lamp).map(({ status, about }) => [status, about]),
      [['does not apply', ['L1']]],
    );
    assert.deepEqual(
      out('B1 6 V + (R1 12 Ω ∥ (R2 6 Ω + A1 broken))').map(({ about }) => about),
      [],
    );
  });
});

const ohms = fc.integer({ min: 1, max: 99 });
const row = fc.array(ohms, { minLength: 2, maxLength: 5 });

/** A line of resistors numbered from R1, one after another or side by side. */
const joined = (values: readonly number[], sign: ' + ' | ' ∥ '): string =>
  values.map((value, k) => `R${k + 1} ${value} Ω`).join(sign);

/** The values on each side of the equation of a rule that holds. */
function sides(line: string, rule: Rule, form: string): readonly (readonly Fraction[])[] {
  const check = checks(line, rule).find(({ substituted }) => substituted?.form === form);
  assert.ok(check?.substituted, `${rule} of ${line}`);
  return check.substituted.sides.map((side) => side.map(({ value }) => new Fraction(value)));
}

void describe('the numbers of a rule are those of a reckoning by hand', () => {
  void it('in series: resistances add, and the p.d.s are in their ratio', () => {
    fc.assert(
      fc.property(row, fc.integer({ min: 1, max: 24 }), (values, volts) => {
        const line = `B1 ${volts} V + ${joined(values, ' + ')}`;
        const sum = values.reduce((a, b) => a + b, 0);
        const [[whole] = [], parts = []] = sides(line, 'series resistance', 'sum');
        assert.equal(whole?.toFraction(), `${sum}`);
        assert.deepEqual(
          parts.map((part) => part.toFraction()),
          values.map(String),
        );
        const [, drops = []] = sides(line, 'series p.d.', 'sum');
        assert.deepEqual(
          drops.map((drop) => drop.toFraction()),
          values.map((value) => new Fraction(volts * value, sum).toFraction()),
        );
      }),
      { numRuns: 40 },
    );
  });

  void it('in parallel: reciprocals add, and the currents are in the ratio of the conductances', () => {
    fc.assert(
      fc.property(row, fc.integer({ min: 1, max: 24 }), (values, volts) => {
        const line = `B1 ${volts} V + (${joined(values, ' ∥ ')})`;
        const conductance = values.reduce((sum, value) => sum.add(new Fraction(1, value)), new Fraction(0));
        const [[whole] = []] = sides(line, 'parallel resistance', 'reciprocals');
        assert.equal(whole?.toFraction(), conductance.inverse().toFraction());
        const [[total] = [], branches = []] = sides(line, 'parallel current', 'sum');
        assert.equal(total?.toFraction(), conductance.mul(volts).toFraction());
        assert.deepEqual(
          branches.map((each) => each.toFraction()),
          values.map((value) => new Fraction(volts, value).toFraction()),
        );
      }),
      { numRuns: 40 },
    );
  });

  void it('power: the supply gives V²/R in all, less what is lost inside it', () => {
    fc.assert(
      fc.property(ohms, ohms, fc.integer({ min: 1, max: 24 }), (a, inside, volts) => {
        const line = `B1 ${volts} V r ${inside} Ω + R1 ${a} Ω`;
        const [[given] = [], [taken] = []] = sides(line, 'power balance', 'sum');
        const current = new Fraction(volts, a + inside);
        const power = current.mul(current).mul(a).toFraction();
        assert.deepEqual([given?.toFraction(), taken?.toFraction()], [power, power]);
      }),
      { numRuns: 40 },
    );
  });

  void it('the same rules hold with every e.m.f. tenfold, each p.d. and current tenfold, each resistance as it was', () => {
    fc.assert(
      fc.property(row, fc.integer({ min: 1, max: 9 }), (values, volts) => {
        const line = (emf: number): string => `B1 ${emf} V + R9 5 Ω + (${joined(values, ' ∥ ')})`;
        const at = (emf: number): readonly RuleCheck[] => checkRules(parseCircuit(line(emf)));
        const [one, ten] = [at(volts), at(10 * volts)];
        assert.deepEqual(
          one.map(({ rule, status, about }) => [rule, status, about]),
          ten.map(({ rule, status, about }) => [rule, status, about]),
        );
        one.forEach(({ substituted }, place) => {
          const other = ten[place]?.substituted?.sides.flat() ?? [];
          substituted?.sides.flat().forEach(({ name, value }, k) => {
            const factor = name.startsWith('R') ? 1 : name.startsWith('P') ? 100 : 10;
            assert.equal(
              new Fraction(other[k]?.value ?? 0).toFraction(),
              new Fraction(value).mul(factor).toFraction(),
              name,
            );
          });
        });
      }),
      { numRuns: 30 },
    );
  });
});
