import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { checkRules, type Equation, type RuleCheck } from '../../../src/engine/rules/index.ts';
import { solve, solveExact, type ExactSolution } from '../../../src/engine/solve/index.ts';
import { blockResistance } from './block-name.ts';
import { rules } from './pages.ts';
import { everySample } from './samples.ts';

const fraction = (value: number | Fraction): Fraction => new Fraction(value);

/** The value of a side, by the book. */
function side({ form, sides }: Equation, index: number): Fraction {
  const values = (sides[index] ?? []).map(({ value }) => fraction(value));
  if (form === 'product') return values.reduce((a, b) => a.mul(b));
  if (form === 'sum') return values.reduce((a, b) => a.add(b));
  return values.reduce((a, b) => a.add(b.inverse()), new Fraction(0));
}

const holding = (checks: readonly RuleCheck[]) =>
  checks.flatMap((check) => (check.substituted ? [{ ...check, equation: check.substituted }] : []));

/** What a term of one component, or of all, is by the solution; undefined for blocks. */
function reading(name: string, solution: ExactSolution): Fraction | undefined {
  return name.includes('(') ? undefined : solution.quantity(name);
}

describe('the rules of a random circuit', () => {
  it('each appear at least once, about components that there are, with a reason', () => {
    everySample(({ circuit, checks }) => {
      const ids = new Set(circuit.components.map(({ id }) => id));
      for (const rule of rules)
        assert.ok(
          checks.some((check) => check.rule === rule),
          rule,
        );
      for (const check of checks) {
        assert.ok(rules.includes(check.rule));
        assert.ok(
          check.about.every((id) => ids.has(id)),
          check.about.join(),
        );
        assert.equal(new Set(check.about).size, check.about.length, `${check.rule}: ${check.about.join()}`);
        assert.equal(check.status === 'holds', check.substituted !== undefined);
      }
    });
  });

  it('hold exactly on exact readings', () => {
    everySample(({ checks }) => {
      for (const { equation, rule, within } of holding(checks)) {
        assert.equal(within, 0, rule);
        const values = equation.sides.map((_, index) => side(equation, index));
        for (const value of values.slice(1)) {
          assert.ok(
            equation.relation === 'less' ? values[0]?.compare(value) === -1 : values[0]?.equals(value),
            rule,
          );
        }
      }
    });
  });

  it('have the readings of the solution as their numbers, and blocks the resistance that their names tell', () => {
    everySample(({ circuit, checks }) => {
      const solution = solveExact(circuit);
      for (const { equation } of holding(checks)) {
        for (const { name, value } of equation.sides.flat()) {
          const expected = name.startsWith('R_(') ? blockResistance(name, circuit) : reading(name, solution);
          if (expected) assert.ok(expected.abs().equals(fraction(value).abs()), name);
          else assert.match(name, /^[IV]_\(|…/);
        }
      }
    });
  });

  it('hold to 1e-14 on floats, in the same places', () => {
    everySample(({ circuit, checks }) => {
      const places = (found: readonly RuleCheck[]) =>
        found
          .map(({ rule, about, status, why }) => [rule, [...about].sort(), status, why.code].join())
          .sort();
      const live = checkRules(circuit, solve(circuit));
      for (const { within, rule } of holding(live)) assert.ok(within <= 1e-14, `${rule} ${within}`);
      assert.deepEqual(places(live), places(checks));
    });
  });

  it('say nothing twice', () => {
    everySample(({ checks }) => {
      const said = checks.map(({ rule, substituted, about, why }) =>
        substituted
          ? `${rule} ${substituted.form} ${substituted.relation} ${substituted.sides
              .map((one) =>
                one
                  .map(({ name }) => name)
                  .sort()
                  .join('+'),
              )
              .sort()
              .join('=')}`
          : `${rule} ${why.code} ${about.join()}`,
      );
      assert.equal(new Set(said).size, said.length, said.join('\n'));
    });
  });

  it('have nothing negative but what a parallel p.d. takes away', () => {
    everySample(({ checks }) => {
      for (const { equation, rule } of holding(checks)) {
        for (const terms of equation.sides) {
          assert.ok(terms.length > 0, rule);
          if (rule !== 'parallel p.d.')
            assert.ok(
              terms.every(({ value }) => Number(value) >= 0),
              rule,
            );
        }
      }
    });
  });
});
