import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { explain, lessons } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { stagesOf } from '../../../src/engine/reduction/index.ts';
import { quantities, solveExact } from '../../../src/engine/solve/index.ts';
import { assertDirect, assertInOrder, assertNothingIdle, assertReplays, statedNames } from './replay.ts';
import { truthOf } from './truth.ts';

const arms = '((R1 100 Ω + @p + R2 200 Ω) ∥ (R3 150 Ω + @q + R4 300 Ω))';
const balanced = (middle: string): string => `B1 6 V + ${arms}; ${middle} @p–@q`;
const plain = (text: string): string => text.replaceAll('\u202f', ' ');
const steps = (line: string, find: string, given?: Record<string, string>): readonly string[] =>
  explain(parseCircuit(line), { find, ...(given && { given }) }).steps.map(({ rearranged, text }) =>
    plain(`${rearranged}: ${text}`),
  );

describe('a balanced bridge', () => {
  for (const [middle, shows, zero] of [
    ['V1', 'V_V1', '0 V'],
    ['A1', 'I_A1', '0 A'],
    ['R5 50 Ω', 'I_R5', '0 A'],
    ['L1 8 Ω', 'I_L1', '0 A'],
    ['S1 closed', 'I_S1', '0 A'],
  ] as const)
    it(`${middle} between its middles shows nothing, by the ratios alone`, () => {
      const derivation = explain(parseCircuit(balanced(middle)), { find: shows });
      assert.deepEqual(
        derivation.steps.map(({ equation, substituted, text }) => [equation, substituted, text].map(plain)),
        [['R_R1 ÷ R_R2 = R_R3 ÷ R_R4', '100 Ω ÷ 200 Ω = 150 Ω ÷ 300 Ω', zero]],
      );
      assert.deepEqual(derivation.steps[0]?.uses, ['R_R1', 'R_R2', 'R_R3', 'R_R4']);
    });

  it('says so', () => {
    const [step] = explain(parseCircuit(balanced('R5 50 Ω')), { find: 'I_R5' }).steps;
    assert.equal(
      step && say(step.why),
      'The bridge is balanced: R1 is to R2 as R3 is to R4, and nothing drives a current through R5.',
    );
  });

  it('is series and parallel from there on, without its middle', () => {
    assert.deepEqual(steps(balanced('R5 50 Ω'), 'R_total'), [
      'R_R1 ÷ R_R2 = R_R3 ÷ R_R4: 0 A',
      'R_(R1+R2) = R_R1 + R_R2: 300 Ω',
      'R_(R3+R4) = R_R3 + R_R4: 450 Ω',
      '1/R_total = 1/R_(R1+R2) + 1/R_(R3+R4): 180 Ω',
    ]);
  });

  it('says once that the middle may be left out, where that is first used', () => {
    const { steps: found } = explain(parseCircuit(balanced('R5 50 Ω')), { find: 'R_total' });
    assert.deepEqual(
      found.map(({ notes }) => notes?.map((note) => say(note))),
      [
        undefined,
        ['No current flows through R5: the rest is what it would be without it.'],
        undefined,
        undefined,
      ],
    );
  });

  it('has the same current in two arms only because none flows between them, and says so', () => {
    const given = { R_R1: '100', R_R2: '200', R_R3: '150', R_R4: '300', I_R1: '0.02' };
    const { steps: found } = explain(parseCircuit(balanced('R5 50 Ω')), { find: 'I_(R1+R2)', given });
    assert.deepEqual(
      found.map(({ gives, uses }) => [gives, [...uses].toSorted().join()]),
      [
        ['I_R5', 'R_R1,R_R2,R_R3,R_R4'],
        ['I_(R1+R2)', 'I_R1,I_R5'],
      ],
    );
  });

  it('between terminals has a resistance by the same way', () => {
    assert.deepEqual(
      steps(`${arms}; R5 50 Ω @p–@q`, 'R_total').at(-1),
      'R_total = R_((R1+R2)∥(R3+R4)): 180 Ω',
    );
  });

  it('is redrawn without its middle as its pairs are put together', () => {
    const circuit = parseCircuit(balanced('R5 50 Ω'));
    const stages = stagesOf(circuit, explain(circuit, { find: 'R_total' }).steps);
    assert.deepEqual(
      stages.map((stage) => stage?.circuit.components.map(({ id }) => id).join()),
      [undefined, 'B1,R1 + R2,R3,R4', 'B1,R1 + R2,R3 + R4', 'B1,(R1 + R2) ∥ (R3 + R4)'],
    );
  });
});

describe('from balance to a resistance', () => {
  const known = { R_R1: '100', R_R2: '200', R_R3: '150' };
  for (const [middle, shows] of [
    ['A1', 'I_A1'],
    ['V1', 'V_V1'],
    ['R5 50 Ω', 'I_R5'],
  ] as const)
    it(`${shows} is 0, so the fourth follows from three`, () => {
      const derivation = explain(parseCircuit(balanced(middle)), {
        find: 'R_R4',
        given: { ...known, [shows]: '0' },
      });
      assert.deepEqual(
        derivation.steps.map(({ rearranged, text }) => plain(`${rearranged}: ${text}`)),
        ['R_R4 = R_R2 × R_R3 ÷ R_R1: 300 Ω'],
      );
      assert.ok(derivation.steps[0]?.uses.includes(shows));
    });

  it('but not where something flows', () => {
    const { status } = explain(parseCircuit(balanced('A1')), {
      find: 'R_R4',
      given: { ...known, I_A1: '0.1' },
    });
    assert.equal(status, 'not enough');
  });

  it('what flows though the ratios are the same is a reading that disagrees', () => {
    const given = { ...known, R_R4: '300', I_R5: '0.2' };
    const { status, reason } = explain(parseCircuit(balanced('R5 50 Ω')), { find: 'V_R1', given });
    assert.equal(status, 'contradiction');
    assert.equal(
      reason && say(reason),
      'R_R1, R_R2, R_R3, R_R4 and I_R5 cannot all be right: they disagree.',
    );
  });
});

describe('what is no balance', () => {
  const rows = [
    ['other ratios', 'B1 6 V + ((R1 100 Ω + @p + R2 200 Ω) ∥ (R3 150 Ω + @q + R4 301 Ω)); R5 50 Ω @p–@q'],
    [
      'a supply in an arm',
      'B1 6 V + ((R1 100 Ω + @p + R2 200 Ω) ∥ (B2 3 V + R3 150 Ω + @q + R4 300 Ω)); R5 50 Ω @p–@q',
    ],
    [
      'a supply in the middle',
      'B1 6 V + ((R1 100 Ω + @p + R2 200 Ω) ∥ (R3 150 Ω + @q + R4 300 Ω)); B2 1 V @p–@q',
    ],
    ['something more at a middle', `B1 6 V + ${arms} + @e; R5 50 Ω @p–@q; R6 70 Ω @p–@e`],
  ] as const;
  for (const [name, line] of rows)
    it(name, () => {
      const { steps: found, status } = explain(parseCircuit(line), { find: 'I_R1' });
      assert.equal(status, 'found');
      assert.ok(
        found.every(
          ({ rule, notes }) => rule !== 'balanced bridge' && !notes?.some(({ code }) => code === 'left out'),
        ),
      );
    });
});

/** What every quantity is; blocks that are only there without the middle, the last component, as they are without it. */
function truthInBalance(circuit: Circuit): (name: string) => number {
  const [whole, without] = [circuit, { ...circuit, components: circuit.components.slice(0, -1) }].map((one) =>
    truthOf(one),
  );
  return (name) => (name.includes('(') ? without : whole)?.(name) ?? NaN;
}

describe('whatever a bridge is like', () => {
  const ohms = fc.constantFrom(1, 2, 3, 4, 6, 8, 12);
  const four = fc.oneof(
    fc.tuple(ohms, ohms, ohms, ohms),
    fc
      .tuple(ohms, ohms, fc.constantFrom(1, 2, 3))
      .map(([a, b, times]) => [a, b, times * a, times * b] as const),
  );
  const turned = fc.constantFrom('', ' reversed');
  const middle = fc.constantFrom('R5 5 Ω', 'A1', 'R5 1 Ω', 'S1 closed');
  const bridge = fc
    .tuple(four, middle, turned, turned, fc.constantFrom('', ' r 1 Ω'), fc.constantFrom('', 'R6 2 Ω + '))
    .map(([[a, b, c, d], between, one, two, inner, more]) =>
      parseCircuit(
        `B1 12 V${inner} + ${more}((R1 ${a} Ω${one} + @p + R2 ${b} Ω) ∥ (R3 ${c} Ω + @q + R4 ${d} Ω${two})); ${between} @p–@q`,
      ),
    );

  it('every quantity is what the solver finds, each step holds, and the ratio is used where it is one', () => {
    let inBalance = 0;
    fc.assert(
      fc.property(bridge, fc.nat(), (circuit, pick) => {
        const solution = solveExact(circuit);
        const names = quantities(circuit).filter((name) => !/^P?r_/.test(name) && solution.quantity(name));
        const find = names[pick % names.length] ?? '';
        const derivation = explain(circuit, { find, course: lessons['16–18'] });
        assert.equal(derivation.status, 'found', find);
        assert.equal(derivation.answer?.value.toFraction(), solution.quantity(find)?.toFraction(), find);
        assertReplays(derivation, truthInBalance(circuit));
        assertInOrder(derivation, statedNames(circuit));
        assertNothingIdle(derivation);
        assertDirect(derivation);
        const ratio = derivation.steps.some(({ rule }) => rule === 'balanced bridge');
        if (ratio) inBalance += 1;
        const [a, b, c, d] = ['R_R1', 'R_R2', 'R_R3', 'R_R4'].map((name) => Number(solution.quantity(name)));
        if (ratio) assert.equal(a! * d!, b! * c!);
      }),
      { numRuns: 300 },
    );
    assert.ok(inBalance > 40, `${inBalance}`);
  });
});
