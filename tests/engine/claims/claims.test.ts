import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import {
  parseCircuit,
  say,
  solveExact,
  testClaim,
  withValue,
  type Circuit,
  type Component,
  type Fraction,
} from '../../../src/engine/index.ts';
import { table } from './verdicts.ts';

/** The circuit at settings by id. */
const set = (circuit: Circuit, settings: Readonly<Record<string, string>>): Circuit =>
  Object.entries(settings).reduce((at, [id, setting]) => withValue(at, id, setting), circuit);

/** The component with nothing left to turn. */
function nailed(component: Component): Component {
  const { id, kind, from, to } = component;
  if (kind === 'switch') return component.closed ? { id, kind: 'wire', from, to } : broken(id, from, to);
  if (kind === 'potentiometer') return { id, kind: 'resistor', from, to, resistance: component.resistance };
  if (kind === 'supply') {
    const { range, internalRange, ...fixed } = component;
    return range || internalRange ? fixed : component;
  }
  if (kind !== 'resistor' && kind !== 'source') return component;
  const { range, ...fixed } = component;
  return range ? fixed : component;
}

const broken = (id: string, from: string, to: string): Component => ({
  id,
  kind: 'wire',
  from,
  to,
  condition: 'broken',
});

describe('the verdict on a claim', () => {
  it('is known for more than sixty', () => {
    assert.ok(Object.values(table).flat().length >= 60);
  });

  for (const [line, claims] of Object.entries(table)) {
    for (const [text, verdict] of claims) {
      it(`${text} is ${verdict} so in ${line}`, () => {
        const circuit = parseCircuit(line);
        const found = testClaim(circuit, text);
        assert.equal(found.verdict, verdict);
        assert.equal(found.proved, true);
        if (verdict !== 'sometimes') return;
        // It fails there: with every range taken away, nothing else is left to try.
        const there = set(circuit, found.counterexample ?? {});
        const fails = testClaim({ ...there, components: there.components.map(nailed) }, text);
        assert.equal(fails.verdict, 'never');
      });
    }
  }

  it('finds the one setting of ten thousand at which a claim fails', () => {
    const circuit = parseCircuit('B1 10 V + R1 [0..1000 step 0.1] 500 Ω + R2 1234.5 Ω');
    const { verdict, counterexample, tried } = testClaim(circuit, 'R_R1 ≠ 617.3');
    assert.deepEqual([verdict, counterexample, tried], ['sometimes', { R1: '617.3' }, 10_001]);
    assert.equal(testClaim(circuit, '(R_R1 − 617.25)² > 0').verdict, 'always');
    assert.equal(testClaim(circuit, '(R_R1 − 617.3) (R_R1 − 617.4) ≥ 0').verdict, 'always');
    assert.equal(testClaim(circuit, '(R_R1 − 617.3) (R_R1 − 617.5) ≥ 0').counterexample?.['R1'], '617.4');
  });

  it('takes a switch both ways, and leaves out the settings with a fault', () => {
    const circuit = parseCircuit('B1 6 V + S1 open + R1 12 Ω');
    assert.deepEqual(testClaim(circuit, 'I_R1 = 0.5').counterexample, { S1: 'open' });
    assert.equal(testClaim(circuit, 'V_R1 + V_S1 = V_B1').verdict, 'always');
    const shorted = parseCircuit('B1 6 V + (R1 12 Ω ∥ S1 open)');
    assert.equal(testClaim(shorted, 'I_R1 = 0.5').verdict, 'always');
  });

  it('goes through both contacts of a changeover switch, and no others of its settings', () => {
    const steps = '((changeover S1a closed + changeover S2a) ∥ (changeover S1b + changeover S2b closed))';
    const circuit = parseCircuit(`B1 6 V + ${steps} + R1 8 Ω`);
    const { verdict, counterexample, tried } = testClaim(circuit, 'I_R1 = 0');
    assert.deepEqual([verdict, counterexample, tried], ['sometimes', { S1a: 'open', S2a: 'open' }, 2]);
    assert.equal(testClaim(circuit, 'V_S1a + V_S2a = V_S1b + V_S2b').verdict, 'always');
  });

  it('turns the e.m.f. and what is inside a supply', () => {
    const circuit = parseCircuit('B1 [0..12] 6 V r [0..2] 1 Ω + R1 12 Ω');
    assert.equal(testClaim(circuit, 'V_B1 = E_B1 − I_B1 r_B1').verdict, 'always');
    const { verdict, counterexample } = testClaim(circuit, 'V_R1 < 12 V');
    assert.deepEqual([verdict, counterexample], ['sometimes', { B1: '12 r 0' }]);
  });

  it('proves an identity of more settings than can be gone through, and says so where it only has found nothing', () => {
    const circuit = parseCircuit('B1 6 V + R1 [1..100] 5 Ω + (R2 [1..100] 12 Ω ∥ R3 [1..100] 8 Ω)');
    const same = testClaim(circuit, 'I_R2 + I_R3 = I_R1');
    assert.deepEqual([same.verdict, same.proved], ['always', true]);
    assert.equal(testClaim(circuit, 'I_R2 + I_R3 < I_R1').proved, true);
    const less = testClaim(circuit, 'V_R1 < 6 V');
    assert.deepEqual([less.verdict, less.proved], ['always', false]);
    assert.ok(less.tried > 1000);
    assert.equal(testClaim(circuit, 'V_R1 < V_R2').verdict, 'sometimes');
  });

  it('with a curve is what was found at the settings', () => {
    const circuit = parseCircuit('B1 6 V + LED1 + R1 [100..1000 step 10] 150 Ω');
    assert.equal(testClaim(circuit, 'V_R1 + V_LED1 = 6 V').verdict, 'always');
    assert.equal(testClaim(circuit, 'I_R1 > 20 mA').verdict, 'sometimes');
  });
});

const quantity = fc.constantFrom(
  'I_R1',
  'I_R2',
  'I_R3',
  'I_B1',
  'I_R1',
  'V_R1',
  'V_R2',
  'P_R1',
  'P_R2',
  'R_total',
);
const side = fc.tuple(
  quantity,
  fc.integer({ min: 1, max: 4 }),
  quantity,
  fc.constantFrom('+', '-', '*', '/'),
);
const relation = fc.constantFrom('=', '<', '>', '<=', '>=', '!=');

describe('a claim about numbers of any kind', () => {
  it('has the verdict of trying every setting', () => {
    const ohms = fc.integer({ min: 1, max: 12 });
    fc.assert(
      fc.property(
        fc.tuple(ohms, ohms, ohms, fc.boolean()),
        side,
        relation,
        side,
        ([a, b, c, isZero], left, sign, right) => {
          const low = isZero ? 0 : 1;
          const circuit = parseCircuit(
            `B1 6 V r 1 Ω + R1 [${low}..25 step 1] ${a} Ω + (R2 ${b} Ω ∥ R3 ${c} Ω)`,
          );
          // Factors that make all units one, so that anything may be compared.
          const unit: Readonly<Record<string, string>> = { I: '1 A', V: '1 V', P: '1 W', R: '1 Ω' };
          const bare = (name: string): string => `(${name} / ${unit[name.charAt(0)] ?? ''})`;
          const written = ([one, k, other, join]: typeof left): string =>
            `${bare(one)} ${join} ${k} ${bare(other)}`;
          const text = `${written(left)} ${sign} ${written(right)}`;
          const found = testClaim(circuit, text);

          const seen = new Set<boolean>();
          for (let setting = low; setting <= 25; setting++) {
            const solution = solveExact(withValue(circuit, 'R1', setting));
            const value = ([one, k, other, join]: typeof left): Fraction | undefined => {
              const [x, y] = [solution.quantity(one), solution.quantity(other)];
              if (!x || !y) return undefined;
              if (join === '+') return x.add(y.mul(k));
              if (join === '-') return x.sub(y.mul(k));
              if (join === '*') return x.mul(k).mul(y);
              return y.n ? x.div(y.mul(k)) : undefined;
            };
            const [x, y] = [value(left), value(right)];
            if (!x || !y) continue;
            const order = x.compare(y);
            seen.add(
              {
                '=': order === 0,
                '<': order < 0,
                '>': order > 0,
                '<=': order <= 0,
                '>=': order >= 0,
                '!=': order !== 0,
              }[sign],
            );
          }
          const wanted =
            seen.size === 2
              ? 'sometimes'
              : seen.has(true)
                ? 'always'
                : seen.has(false)
                  ? 'never'
                  : 'not understood';
          assert.equal(found.verdict, wanted, text);
          assert.equal(found.proved, true);
        },
      ),
      { numRuns: 400 },
    );
  });
});

describe('what is not understood', () => {
  const circuit = parseCircuit('B1 6 V + R1 12 Ω + (R2 4 Ω ∥ R3 5 Ω)');
  const mistakes: readonly (readonly [text: string, piece: string, suggestion: string, sentence: RegExp])[] =
    [
      ['V_R1 = V_R9', 'V_R9', 'V_R1', /“V_R9” is not a quantity of this circuit. Did you mean V_R1\?/],
      ['R_totl < R_R2', 'R_totl', 'R_total', /Did you mean R_total/],
      ['R1 > R2', 'R1', 'R_R1', /Did you mean R_R1/],
      ['B1 = 6 V', 'B1', 'E_B1', /Did you mean E_B1/],
      ['voltage = 6 V', 'voltage', '', /“voltage” is not a quantity of this circuit.$/],
      ['V_R1', '', '', /Expected a comparison .* here\.$/],
      ['V_R1 =', '', '', /Expected a quantity or a number .* here\.$/],
      ['', '', '', /Expected a quantity/],
      ['= V_R1', '=', '', /not “=”/],
      ['(V_R1 = 2 V', '=', '', /Expected a closing bracket, not “=”/],
      ['V_R1 = 2 V < 3 V', '<', '', /Expected the end of the statement, not “<”/],
      ['V_R1 = 2 $', '$', '', /Expected the end of the statement, not “\$”/],
      ['V_R1 = I_R1', 'V_R1 = I_R1', '', /not V and A\./],
      ['V_R1 / V_R2 = R_R1', 'V_R1 / V_R2 = R_R1', '', /not a number and Ω\./],
      ['I_R1 < 1,000', '1,000', '1000', /two ways: write 1000 or 1\.000/],
      ['I_R1 < 1/0', '1/0', '', /divides by 0/],
      [`${'('.repeat(40)}V_R1${')'.repeat(40)} = 2 V`, '', '', /30 deep/],
      [`V_R1 = 2 V${' '.repeat(600)}`, ' '.repeat(110), '', /At most 500 characters/],
      [`V_R1 = ${'V_R1 + '.repeat(30)}V_R1`, '', '', /at most 24 quantities/],
    ];
  for (const [text, piece, suggestion, sentence] of mistakes) {
    it(`“${text.trim().slice(0, 40)}” has its place and what to write`, () => {
      const { verdict, mistake } = testClaim(circuit, text);
      assert.equal(verdict, 'not understood');
      assert.ok(mistake);
      assert.equal(text.slice(mistake.at, mistake.end), piece);
      assert.equal(mistake.suggestion, suggestion);
      assert.match(say(mistake.wrong), sentence);
    });
  }

  it('is the label of a meter alone, which is short for what it reads', () => {
    const metered = parseCircuit('B1 6 V + A1 + R1 12 Ω; V1 across R1');
    assert.equal(testClaim(metered, 'A1 = 0.5 A').mistake?.suggestion, 'I_A1');
    assert.equal(testClaim(metered, '6 V = V1').mistake?.suggestion, 'V_V1');
    assert.equal(testClaim(metered, 'U_R1 = 6 V').mistake?.suggestion, 'V_R1');
  });

  it('is what divides by nothing everywhere', () => {
    const { verdict, mistake } = testClaim(circuit, 'V_R1 / (V_R1 − V_R1) = 1');
    assert.equal(verdict, 'not understood');
    assert.equal(mistake?.wrong.code, 'claim has no value');
  });

  it('never throws, and places every mistake inside the text', () => {
    const piece = fc.constantFrom(
      'V_R1',
      'I_R2',
      'R_total',
      '2',
      '1,5',
      ' ',
      '+',
      '−',
      '*',
      '/',
      '(',
      ')',
      '²',
      '=',
      '<',
      '≤',
      '≠',
      'kΩ',
      'V',
      '^2',
      '€',
      'x',
      ':',
    );
    const text = fc.oneof(
      fc.array(piece, { maxLength: 14 }).map((pieces) => pieces.join('')),
      fc.string({ unit: 'binary', maxLength: 40 }),
    );
    fc.assert(
      fc.property(text, (claim) => {
        const { verdict, mistake } = testClaim(circuit, claim);
        assert.equal(verdict === 'not understood', mistake !== undefined);
        if (!mistake) return;
        assert.ok(0 <= mistake.at && mistake.at <= mistake.end && mistake.end <= claim.length);
        assert.match(say(mistake.wrong), /\.$|\?$/);
      }),
      { numRuns: 3000 },
    );
  });
});
