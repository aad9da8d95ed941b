import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  Fraction,
  parseCircuit,
  solveExact,
  testClaim,
  withValue,
  type Circuit,
} from '../../../src/engine/index.ts';

/** Whether numbers stand to each other as a sign says. */
const relations: Readonly<Record<string, (order: number) => boolean>> = {
  '=': (order) => order === 0,
  '<': (order) => order < 0,
  '>': (order) => order > 0,
  '≤': (order) => order <= 0,
  '≥': (order) => order >= 0,
  '≠': (order) => order !== 0,
};

/** Two currents or two p.d.s, one of them as a multiple: compared, they are in one unit. */
interface Pair {
  readonly left: string;
  readonly times: number;
  readonly right: string;
}

/** A control, a switch and two more resistors: few settings, all of which can be gone through. */
interface Small {
  readonly line: string;
  readonly settings: readonly Readonly<Record<string, string>>[];
}

const ohms = fc.integer({ min: 1, max: 12 });

const small: fc.Arbitrary<Small> = fc
  .tuple(ohms, ohms, ohms, fc.integer({ min: 2, max: 8 }), fc.integer({ min: 2, max: 5 }), fc.boolean())
  .map(([a, b, c, most, other, parallel]) => {
    const [first, second] = [Math.min(a, most), Math.min(b, other)];
    const pair = `R1 [1..${most} step 1] ${first} Ω ${parallel ? '∥' : '+'} R2 [1..${other} step 1] ${second} Ω`;
    return {
      line: `B1 6 V r 1 Ω + (${pair}) + (R3 ${c} Ω ∥ (S1 closed + R4 6 Ω))`,
      settings: Array.from({ length: most }, (_, k) => k + 1).flatMap((one) =>
        Array.from({ length: other }, (_, k) => k + 1).flatMap((two) =>
          ['open', 'closed'].map((S1) => ({ R1: `${one}`, R2: `${two}`, S1 })),
        ),
      ),
    };
  });

const names = (letter: string): fc.Arbitrary<string> =>
  fc.constantFrom('R1', 'R2', 'R3', 'B1').map((id) => `${letter}_${id}`);
const pair: fc.Arbitrary<Pair> = fc
  .constantFrom('I', 'V', 'P')
  .chain((letter) =>
    fc.record({ left: names(letter), times: fc.integer({ min: 1, max: 4 }), right: names(letter) }),
  );

const at = (circuit: Circuit, settings: Readonly<Record<string, string>>): Circuit =>
  Object.entries(settings).reduce((set, [id, value]) => withValue(set, id, value), circuit);

/** Whether a claim holds at a setting, as the exact solution has it. */
function holds(circuit: Circuit, { left, times, right }: Pair, sign: string): boolean {
  const solution = solveExact(circuit);
  const [one, other] = [left, right].map((name) => solution.quantity(name) ?? new Fraction(0));
  return relations[sign]?.((one ?? new Fraction(0)).compare((other ?? new Fraction(0)).mul(times))) ?? false;
}

const sign = fc.constantFrom(...Object.keys(relations));

describe('a claim over two sliders and a switch', () => {
  it('has the verdict of going through every setting, and fails where it says so', () => {
    const seen = new Set<string>();
    fc.assert(
      fc.property(small, pair, sign, ({ line, settings }, claim, relation) => {
        const circuit = parseCircuit(line);
        const { left, times, right } = claim;
        const found = testClaim(circuit, `${left} ${relation} ${times} ${right}`);
        const true_ = settings.filter((setting) => holds(at(circuit, setting), claim, relation)).length;
        const wanted = true_ === settings.length ? 'always' : true_ === 0 ? 'never' : 'sometimes';
        assert.equal(found.verdict, wanted, `${left} ${relation} ${times} ${right} in ${line}`);
        assert.equal(found.proved, true);
        seen.add(wanted);
        if (wanted !== 'sometimes') return;
        assert.equal(holds(at(circuit, found.counterexample ?? {}), claim, relation), false);
      }),
      { numRuns: 150 },
    );
    assert.deepEqual([...seen].sort(), ['always', 'never', 'sometimes']);
  });

  it('where it fails as the board stands, nothing is turned', () => {
    fc.assert(
      fc.property(small, pair, sign, ({ line }, claim, relation) => {
        const circuit = parseCircuit(line);
        const { left, times, right } = claim;
        fc.pre(!holds(circuit, claim, relation));
        const { verdict, counterexample } = testClaim(circuit, `${left} ${relation} ${times} ${right}`);
        assert.notEqual(verdict, 'always');
        if (verdict === 'sometimes')
          assert.deepEqual(at(circuit, counterexample ?? {}).components, circuit.components);
      }),
      { numRuns: 60 },
    );
  });
});

describe('what two claims have to do with each other', () => {
  const opposite: Readonly<Record<string, string>> = {
    '=': '≠',
    '<': '≥',
    '>': '≤',
    '≤': '>',
    '≥': '<',
    '≠': '=',
  };
  const turned: Readonly<Record<string, string>> = {
    '=': '=',
    '<': '>',
    '>': '<',
    '≤': '≥',
    '≥': '≤',
    '≠': '≠',
  };
  const against: Readonly<Record<string, string>> = {
    always: 'never',
    never: 'always',
    sometimes: 'sometimes',
  };

  const both = (law: (circuit: Circuit, claim: Pair, relation: string) => void): void =>
    fc.assert(
      fc.property(small, pair, sign, ({ line }, claim, relation) => law(parseCircuit(line), claim, relation)),
      { numRuns: 60 },
    );
  const verdict = (circuit: Circuit, text: string): string => testClaim(circuit, text).verdict;

  it('the opposite of what is always true is never true', () => {
    both((circuit, { left, times, right }, relation) => {
      const one = verdict(circuit, `${left} ${relation} ${times} ${right}`);
      assert.equal(verdict(circuit, `${left} ${opposite[relation] ?? ''} ${times} ${right}`), against[one]);
    });
  });

  it('read from right to left it is the same claim', () => {
    both((circuit, { left, times, right }, relation) => {
      const one = verdict(circuit, `${left} ${relation} ${times} ${right}`);
      assert.equal(verdict(circuit, `${times} ${right} ${turned[relation] ?? ''} ${left}`), one);
    });
  });

  it('as it is with the same added to both sides, or both sides three times as large', () => {
    both((circuit, { left, times, right }, relation) => {
      const one = verdict(circuit, `${left} ${relation} ${times} ${right}`);
      assert.equal(verdict(circuit, `${left} + ${right} ${relation} ${times + 1} ${right}`), one);
      assert.equal(verdict(circuit, `3 ${left} ${relation} ${3 * times} ${right}`), one);
    });
  });

  it('or with its signs spelled on a keyboard', () => {
    const typed: Readonly<Record<string, string>> = { '≤': '<=', '≥': '>=', '≠': '!=' };
    both((circuit, { left, times, right }, relation) => {
      const one = verdict(circuit, `${left} ${relation} ${times} ${right}`);
      assert.equal(verdict(circuit, `${left}${typed[relation] ?? relation}${times}*${right}`), one);
    });
  });
});
