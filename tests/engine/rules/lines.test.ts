import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { exponentOf, Fraction, powerOfTen, type Prefix } from '../../../src/engine/quantity/index.ts';
import { checkRules, ruleLine, type RuleCheck, type Token } from '../../../src/engine/rules/index.ts';
import { solve } from '../../../src/engine/solve/index.ts';
import { en, say } from '../../../src/engine/words/index.ts';
import { short } from '../solve/short.ts';
import { plain, prose } from './prose.ts';
import { everySample } from './samples.ts';

/** Two to five figures, point or comma, by turns. */
const styleOf = ({ length }: readonly RuleCheck[]): { figures: number; decimalSign: '.' | ',' } => ({
  figures: 2 + (length % 4),
  decimalSign: length % 8 < 4 ? '.' : ',',
});
type Number = Extract<Token, { kind: 'number' }>;

/** The value that a reader sees. */
function seen({ number, unit }: Number): Fraction {
  const prefix = unit.length > 1 ? (unit.slice(0, 1) as Prefix) : '';
  return new Fraction(number.replace(',', '.').replace('−', '-')).mul(powerOfTen(exponentOf(prefix)));
}

/** The sides of an equation as a reader sees them, and the numbers in them. */
function sidesOf(check: RuleCheck, tokens: readonly Token[]): readonly (readonly Fraction[])[] {
  const sides: Fraction[][] = [[]];
  let isTaken = false;
  for (const token of tokens) {
    if (token.kind === 'number') {
      sides.at(-1)?.push(isTaken ? seen(token).neg() : seen(token));
      isTaken = false;
    } else if (token.kind === 'operator') {
      isTaken = token.sign === '−';
      if (token.sign === '=' || token.sign === '<') sides.push([]);
    }
  }
  assert.equal(sides.length, check.substituted?.sides.length);
  return sides;
}

const sum = (side: readonly Fraction[]): Fraction => side.reduce((a, b) => a.add(b), new Fraction(0));

/** The operators of an equation, and where they stand. */
const signs = (tokens: readonly Token[]) =>
  tokens.map((token) => (token.kind === 'operator' ? token.sign : ''));

/** The distance of two neighbours in the last place that a number is written to. */
function lastPlace({ number, unit }: Number): Fraction {
  const decimals = number.split(/[.,]/)[1]?.length ?? 0;
  return powerOfTen(exponentOf(unit.length > 1 ? (unit.slice(0, 1) as Prefix) : '') - decimals);
}

describe('the line of a rule', () => {
  it('closes as it stands written, or says that it is rounded', () => {
    everySample(({ checks }) => {
      const { figures, decimalSign } = styleOf(checks);
      for (const check of checks) {
        const { numbers, rounded } = ruleLine(check, { figures, decimalSign });
        if (numbers.length === 0 || numbers.some(({ kind }) => kind === 'unknown')) continue;
        const { form, relation } = check.substituted ?? {};
        const [left = [], ...others] = sidesOf(check, numbers);
        const first = numbers.find((token) => token.kind === 'number');
        assert.ok(first);
        const half = lastPlace(first).div(2);
        const closes = others.every((side) => {
          if (relation === 'less') return sum(left).compare(sum(side)) < 0;
          if (form === 'sum') return sum(left).equals(sum(side));
          const product = form === 'product';
          if (!product && side.some((one) => one.n === 0n)) return left.every((one) => one.n === 0n);
          const right = product
            ? side.reduce((a, b) => a.mul(b))
            : sum(side.map((one) => one.inverse())).inverse();
          // Rounded half away from zero to the last place that the left side has.
          const away = right.sub(left[0] ?? 0);
          return away.compare(half) < 0 && away.compare(half.neg()) >= 0;
        });
        if (rounded === closes) assert.fail(prose(check, { figures, decimalSign }));
      }
    });
  });

  it('has one unit throughout but for a product, and equal decimals in a sum', () => {
    everySample(({ checks }) => {
      const course = styleOf(checks);
      for (const check of checks) {
        if (check.substituted?.form === 'product') continue;
        const numbers = ruleLine(check, course).numbers.filter((token) => token.kind === 'number');
        const marks = numbers.map(({ number, unit }) =>
          check.substituted?.form === 'sum'
            ? `${number.split(course.decimalSign)[1]?.length ?? 0} ${unit}`
            : unit,
        );
        if (new Set(marks).size > 1) assert.fail(prose(check, course));
        assert.ok(numbers.every(({ number }) => !number.includes(course.decimalSign === '.' ? ',' : '.')));
      }
    });
  });

  it('writes each number within half of its last place, and nothing as 0 that counts', () => {
    everySample(({ checks }) => {
      const course = styleOf(checks);
      for (const check of checks) {
        const terms = check.substituted?.sides.flat() ?? [];
        const largest = Math.max(...terms.map(({ value }) => Math.abs(Number(value))));
        const operands = ruleLine(check, course).numbers.filter(({ kind }) => kind !== 'operator');
        operands.forEach((token, index) => {
          if (token.kind !== 'number') return;
          const value = new Fraction(terms[index]?.value ?? 0).abs();
          const off = seen(token).sub(value).abs();
          if (off.mul(2).compare(lastPlace(token)) > 0) assert.fail(prose(check, course));
          if (check.substituted?.form === 'sum' && Number(value) > largest / 1e4)
            assert.notEqual(Number(seen(token)), 0);
        });
      }
    });
  });

  it('never writes −0, NaN, Infinity or an exponent, on exact readings or on floats', () => {
    everySample(({ circuit, checks }) => {
      for (const check of [...checks, ...checkRules(circuit, solve(circuit))]) {
        assert.doesNotMatch(prose(check), /−0(\D|$)|NaN|Infinity|undefined|\de/);
      }
    });
  });

  it('has as many numbers as symbols, with the same signs between', () => {
    everySample(({ checks }) => {
      for (const check of checks) {
        const { symbols, numbers, spoken, why } = ruleLine(check);
        if (numbers.length > 0) assert.deepEqual(signs(numbers), signs(symbols));
        assert.ok(spoken.length > 0 && why.endsWith('.'));
        assert.equal(check.status === 'holds', symbols.length > 0);
      }
    });
  });
});

describe('what a class may choose', () => {
  const circuit = short('B1 p n 6; R1 p a 4; R2 a n 8');
  const [voltage] = checkRules(circuit).filter(({ rule }) => rule === 'series p.d.');
  assert.ok(voltage);

  it('is the word and the letter for p.d., the figures and the decimal sign', () => {
    const { rule, symbols, numbers } = ruleLine(voltage, {
      wording: 'voltage',
      letter: 'U',
      figures: 2,
      decimalSign: ',',
    });
    assert.equal(rule, 'In series: the voltages add up.');
    assert.equal(plain(symbols), 'U_B1 = U_R1 + U_R2');
    assert.equal(plain(numbers), '6,0 V = 2,0 V + 4,0 V');
    assert.equal(ruleLine(voltage).rule, 'In series: the p.d.s add up.');
  });

  it('is read out as it is written', () => {
    assert.equal(
      ruleLine(voltage, { figures: 2 }).spoken.replaceAll('\u202f', ' '),
      '6.0 V equals 2.0 V plus 4.0 V',
    );
    const spoken = (rule: string, text: string) =>
      checkRules(short(text))
        .filter((check) => check.rule === rule)
        .map((check) => ruleLine(check).spoken.replaceAll('\u202f', ' '));
    assert.deepEqual(spoken('V = IR', 'B1 p n 6; R1 p n 12'), [
      '6.00 V equals 0.500 A times 12.0 Ω',
      'B1 is a supply, not a resistance.',
    ]);
    assert.deepEqual(spoken('parallel resistance', 'B1 p n 6; R1 p n 12; R2 p n 12'), [
      '1 over 6.00 Ω equals 1 over 12.0 Ω plus 1 over 12.0 Ω',
      '6.0 Ω is less than 12.0 Ω',
    ]);
  });

  it('is said in any language that has the sentences', () => {
    const loud = {
      tag: 'en',
      sentences: { ...en.sentences, operator: ({ sign }: { sign: string }) => ` ${sign} ` },
    };
    assert.equal(say({ code: 'operator', data: { sign: '=' } }), 'equals');
    assert.match(ruleLine(voltage, { language: loud }).spoken, / = .* \+ /);
  });
});
