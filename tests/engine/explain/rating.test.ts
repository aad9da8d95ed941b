import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain, workedSolution } from '../../../src/engine/index.ts';
import { heard } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { quantities, solveExact } from '../../../src/engine/solve/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';
import { assertDirect, assertInOrder, assertNothingIdle, assertReplays } from './replay.ts';
import { truthOf } from './truth.ts';

const steps = (line: string, find: string): readonly string[] =>
  explain(parseCircuit(line), { find }).steps.map(({ substituted, text }) => `${substituted}: ${text}`);

describe('what is marked on a lamp is what is given', () => {
  const rows = [
    ['L1 12 V 24 W', 'R_L1 = (12.0 V)² ÷ 24.0 W: 6.00 Ω'],
    ['L1 12 V 2 A', 'R_L1 = 12.0 V ÷ 2.00 A: 6.00 Ω'],
    ['L1 24 W 2 A', 'R_L1 = 24.0 W ÷ (2.00 A)²: 6.00 Ω'],
    ['heater L1 12 V 24 W', 'R_L1 = (12.0 V)² ÷ 24.0 W: 6.00 Ω'],
    ['motor L1 12 V 24 W', 'R_L1 = (12.0 V)² ÷ 24.0 W: 6.00 Ω'],
  ] as const;
  for (const [lamp, step] of rows)
    it(`${lamp}: its resistance is the first step`, () => {
      const [first] = steps(`B1 6 V + R1 2 Ω + ${lamp}`, 'R_total');
      assert.equal(first?.replaceAll('\u202f', ' '), step);
    });

  it('a resistance that is written is given as it is', () => {
    const { steps: found } = explain(parseCircuit('B1 6 V + R1 2 Ω + L1 8 Ω'), { find: 'R_total' });
    assert.deepEqual(found.flatMap(({ uses }) => uses).toSorted(), ['R_L1', 'R_R1']);
  });

  it('what is hidden is not', () => {
    const { status, reason } = explain(parseCircuit('B1 6 V + L1 12 V 24 W hidden'), { find: 'I_L1' });
    assert.equal(status, 'not enough');
    assert.deepEqual(reason, { code: 'one is missing', data: { find: 'I_L1', missing: 'R_L1' } });
  });

  it('nor what is taken out of the circuit', () => {
    const { status } = explain(parseCircuit('B1 6 V + L1 12 V 24 W broken'), { find: 'R_L1' });
    assert.equal(status, 'not enough');
  });

  it('a question with givens of its own leaves it out', () => {
    const circuit = parseCircuit('B1 6 V + L1 12 V 24 W');
    const { steps: found } = explain(circuit, { find: 'R_L1', given: { V_L1: '6', I_L1: '1' } });
    assert.deepEqual(
      found.map(({ rule }) => rule),
      ['p.d. is current times resistance'],
    );
  });
});

describe('what is marked is written in full', () => {
  const circuit = parseCircuit('B1 12 V + L1 12 V 24 W');
  const worked = workedSolution(
    circuit,
    solveExact(circuit),
    { ...usualCourse, letter: 'U' },
    {
      of: 'I_L1',
      given: '',
      lesson: '',
    },
  );

  it('among what is given, beside its component, in the letters of the course', () => {
    assert.deepEqual(
      worked.given.map((text) => text.replaceAll('\u202f', ' ')),
      ['E_B1 = 12.0 V', 'P_L1 rated = 24.0 W', 'U_L1 rated = 12.0 V'],
    );
  });

  it('and in words', () => {
    assert.equal(
      heard('R_L1 = V_L1 rated² ÷ P_L1 rated', usualCourse),
      'resistance of L1 equals rated p.d. across L1 squared divided by rated power of L1',
    );
  });
});

describe('with lamps, heaters and motors whatever is marked on them', () => {
  const rating = fc
    .tuple(
      fc.constantFrom('L', 'heater H', 'M'),
      fc.constantFrom('6', '12', '2.5', '9'),
      fc.constantFrom('24 W', '0.3 A', '3 W', '1.5 A'),
    )
    .map(
      ([kind, volts, other]) =>
        (id: number) =>
          `${kind}${id} ${volts} V ${other}`,
    );
  const circuit = fc
    .tuple(rating, rating, rating, fc.constantFrom('+', '∥'), fc.constantFrom('', ' r 0.5 Ω'))
    .map(([one, two, three, joint, inner]) =>
      parseCircuit(`B1 12 V${inner} + ${one(1)} + (${two(2)} ${joint} R9 4 Ω) + (R8 10 Ω ∥ ${three(3)})`),
    );

  it('every step holds, in its order, none idle', () => {
    fc.assert(
      fc.property(circuit, fc.nat(), (made, pick) => {
        // Of a supply that is said to have nothing inside, nothing inside can be found.
        const names = quantities(made).filter((name) => !/^P?r_/.test(name));
        const derivation = explain(made, { find: names[pick % names.length] ?? '' });
        const marked = made.components.flatMap(({ id, kind }) =>
          kind === 'resistor' ? [`R_${id}`] : ['V', 'P', 'I'].map((letter) => `${letter}_${id} rated`),
        );
        assert.equal(derivation.status, 'found');
        assertInOrder(derivation, [...marked, 'E_B1', 'r_B1']);
        assertNothingIdle(derivation);
        assertDirect(derivation);
        assertReplays(derivation, truthOf(made));
      }),
      { numRuns: 150 },
    );
  });
});
