import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain, lessons, type Lesson } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { assertInOrder, assertNothingIdle, statedNames } from './replay.ts';

const plain: Lesson = { ...usualCourse, without: ['resistances in parallel'] };

const branches = ['R1 12 Ω ∥ R2 6 Ω', 'R1 12 Ω ∥ R2 6 Ω ∥ R3 4 Ω', '(R1 2 Ω + R2 4 Ω) ∥ R3 3 Ω'];

describe('without the reciprocal formula', () => {
  for (const line of branches)
    it(`${line} is explained by the shared p.d. and the sum of the currents`, () => {
      const circuit = parseCircuit(`B1 12 V + (${line})`);
      for (const find of ['I_R1', 'I_R3', 'I_B1', 'R_total'].filter(
        (name) => name !== 'I_R3' || line.includes('R3'),
      )) {
        const { status, steps, answer } = explain(circuit, { find, course: plain });
        assert.equal(status, 'found', find);
        assert.ok(steps.every(({ rule }) => rule !== 'resistances in parallel'));
        const truth = explain(circuit, { find }).answer;
        assert.equal(answer?.value.toFraction(), truth?.value.toFraction(), find);
      }
    });

  it('a network says which rule it would need', () => {
    const course: Lesson = { ...plain, without: ['resistances in parallel', 'trial p.d.'] };
    const { reason } = explain(parseCircuit('R1 6 Ω ∥ R2 3 Ω'), { find: 'R_total', course });
    assert.match(reason ? say(reason) : '', /To find R_total, this rule is needed\. .*reciprocals/);
  });
});

describe('backwards', () => {
  const cases: readonly (readonly [string, string, Record<string, string>, string])[] = [
    ['B1 6 V + R1 1 Ω + R2 1 Ω', 'R_R2', { V_R2: '4', I_R1: '1/5' }, '20'],
    ['B1 6 V + R1 1 Ω', 'E_B1', { R_R1: '12', I_R1: '1/2' }, '6'],
    ['B1 6 V r 1 Ω + R1 1 Ω', 'r_B1', { E_B1: '6', V_B1: '5', I_R1: '2' }, '1/2'],
    ['B1 6 V r 1 Ω + R1 1 Ω', 'E_B1', { r_B1: '1/2', V_R1: '5', I_B1: '2' }, '6'],
    ['B1 6 V + R1 1 Ω', 'I_R1', { P_R1: '12', R_R1: '3' }, '2'],
    ['B1 6 V + R1 1 Ω', 'W_R1', { V_R1: '6', I_R1: '2', t: '10' }, '120'],
    ['B1 6 V + R1 1 Ω', 'Q_R1', { V_R1: '6', R_R1: '3', t: '10' }, '20'],
    ['B1 6 V + (R1 1 Ω ∥ R2 1 Ω)', 'R_R2', { R_total: '4', R_R1: '12' }, '6'],
    ['B1 6 V + (A1 + R1 1 Ω ∥ A2 + R2 1 Ω)', 'I_A2', { I_B1: '5', I_A1: '2' }, '3'],
  ];
  for (const [line, find, given, value] of cases)
    it(`${find} of ${line} follows from ${Object.keys(given).join(', ')}`, () => {
      const derivation = explain(
        parseCircuit(line.replace('(A1 + R1 1 Ω ∥ A2 + R2 1 Ω)', '((A1 + R1 1 Ω) ∥ (A2 + R2 1 Ω))')),
        { find, given },
      );
      assert.equal(derivation.answer?.value.toFraction(), value);
      assertInOrder(derivation, Object.keys(given));
      assertNothingIdle(derivation);
    });
});

describe('what is not enough or disagrees', () => {
  const cases: readonly (readonly [string, string, Record<string, string>, string])[] = [
    ['B1 6 V + R1 1 Ω + R2 1 Ω', 'I_R1', { R_R1: '4', R_R2: '8' }, 'To find I_R1, E_B1 is missing.'],
    ['B1 6 V + R1 1 Ω + R2 1 Ω', 'I_R1', { E_B1: '6', R_R1: '4' }, 'To find I_R1, R_R2 is missing.'],
    ['B1 6 V + (R1 1 Ω ∥ R2 1 Ω)', 'I_R1', { R_R1: '4' }, 'To find I_R1, E_B1 is missing.'],
    ['B1 6 V + R1 1 Ω', 'P_R1', {}, 'Too little is known to find P_R1.'],
    [
      'B1 6 V + R1 1 Ω',
      'R_R1',
      { V_R1: '2', I_R1: '1', P_R1: '3' },
      'I_R1, P_R1 and V_R1 cannot all be right: they disagree.',
    ],
    [
      'B1 6 V + R1 1 Ω + R2 1 Ω',
      'V_R1',
      { I_R1: '1', I_R2: '2' },
      'I_R1 and I_R2 cannot all be right: they disagree.',
    ],
    [
      'B1 6 V + (R1 1 Ω ∥ R2 1 Ω)',
      'I_R1',
      { V_R1: '5', V_R2: '6' },
      'V_R1 and V_R2 cannot all be right: they disagree.',
    ],
  ];
  for (const [line, find, given, sentence] of cases)
    it(sentence, () => {
      const { reason } = explain(parseCircuit(line), { find, given });
      const said = reason ? say(reason) : '';
      const sorted =
        reason?.code === 'readings disagree'
          ? say({ ...reason, data: { names: Object.keys(given).toSorted() } })
          : said;
      assert.equal(sorted, sentence);
      for (const name of Object.keys(given))
        if (reason?.code === 'readings disagree') assert.ok(said.includes(name));
    });
});

const ohms = fc.integer({ min: 1, max: 99 });
const network = fc.letrec<{ part: (next: () => number) => string }>((tie) => ({
  part: fc.oneof(
    { maxDepth: 3 },
    ohms.map((value) => (next: () => number) => `R${next()} ${value} Ω`),
    fc.tuple(fc.constantFrom(' + ', ' ∥ '), fc.array(tie('part'), { minLength: 2, maxLength: 3 })).map(
      ([sign, parts]) =>
        (next: () => number) =>
          `(${parts.map((part) => part(next)).join(sign)})`,
    ),
  ),
})).part;

it('every current and p.d. of a random circuit is derived as the solver finds it', () => {
  fc.assert(
    fc.property(network, fc.constantFrom('', ' r 0.5 Ω', ' r 2 Ω'), (build, inner) => {
      let count = 0;
      const circuit = parseCircuit(`B1 12 V${inner} + ${build(() => (count += 1))}`);
      const solution = solveExact(circuit);
      for (const { id } of circuit.components)
        for (const [letter, truth] of [
          ['I', solution.current(id)],
          ['V', solution.voltage(id)],
        ] as const) {
          const derivation = explain(circuit, { find: `${letter}_${id}` });
          assert.equal(derivation.answer?.value.toFraction(), truth?.toFraction(), `${letter}_${id}`);
          assertInOrder(derivation, statedNames(circuit));
          assertNothingIdle(derivation);
        }
    }),
    { numRuns: 150 },
  );
});

describe('a lesson', () => {
  const find = 'I_R1';
  const real = parseCircuit('B1 6 V r 1 Ω + R1 2 Ω');
  it('to 16 says that it would need the internal resistance', () => {
    for (const age of ['11–14', '14–16'] as const)
      assert.equal(explain(real, { find, course: lessons[age] }).reason?.code, 'needs a rule', age);
  });
  it('to 18 uses it', () => {
    assert.equal(explain(real, { find, course: lessons['16–18'] }).answer?.text, '2.00\u202fA');
  });
  it('to 14 has no powers, and two figures', () => {
    const circuit = parseCircuit('B1 6 V + R1 2 Ω');
    const course = lessons['11–14'];
    assert.equal(explain(circuit, { find, course }).answer?.text, '3.0\u202fA');
    assert.equal(explain(circuit, { find: 'P_R1', course }).reason?.code, 'needs a rule');
  });
});

it('a step names blocks, so that nothing is called in series that is not', () => {
  const circuit = parseCircuit('B1 12 V + R1 4 Ω + (R2 6 Ω ∥ (R3 2 Ω + R4 1 Ω))');
  const said = explain(circuit, { find: 'R_total' }).steps.map(({ why }) => say(why));
  assert.deepEqual(said, [
    'R3 and R4 are in series: their resistances add up.',
    'R2 and R3+R4 are in parallel: the reciprocals of the resistances add up.',
    'R1 and R2∥(R3+R4) are in series: their resistances add up.',
  ]);
});

it('an open loop is told as what it is, where nothing is found', () => {
  const { status, reason } = explain(parseCircuit('B1 6 V + S1 open + R1 4 Ω + S2 open'), { find: 'V_S1' });
  assert.equal(status, 'not enough');
  assert.equal(reason?.code, 'open loop');
});

it('what depends on the current is not taken as known', () => {
  const { status } = explain(parseCircuit('B1 6 V + R1 100 Ω + D1'), { find: 'I_R1' });
  assert.equal(status, 'not enough');
});
