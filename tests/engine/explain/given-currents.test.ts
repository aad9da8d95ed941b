import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { web } from './random-web.ts';
import { assertInOrder, assertNothingIdle, assertReplays } from './replay.ts';
import { truthOf } from './truth.ts';

const bridge = parseCircuit(
  'B1 24 V + ((R1 150 Ω + @l + R4 300 Ω) ∥ (R2 50 Ω + @q + R5 250 Ω)); R3 100 Ω @q–@l',
);
const all = { E_B1: '24', R_R1: '150', R_R2: '50', R_R3: '100', R_R4: '300', R_R5: '250' };
const current = { I_R3: '12/725' };
const plain = (text: string): string => text.replaceAll('\u202f', ' ');

describe('a current that is given is no unknown', () => {
  it('one equation is left of three', () => {
    const { steps } = explain(bridge, { find: 'I_R1', given: { ...all, ...current } });
    assert.deepEqual(
      steps.map(({ gives, text }) => plain(`${gives} ${text}`)),
      ['(1) I_R4 = 0.0166 A + I_R1', '(2) 19.0 V = 450 Ω × I_R1', 'I_R1 0.0423 A'],
    );
  });

  it('is put in where its branch is passed', () => {
    const { steps } = explain(bridge, { find: 'I_R1', given: { ...all, ...current } });
    assert.deepEqual(
      [steps[1]?.equation, steps[1]?.rearranged].map((text) => plain(text ?? '')),
      ['E_B1 = I_R1 × R_R1 + I_R4 × R_R4', 'E_B1 = I_R1 × R_R1 + (0.0166 A + I_R1) × R_R4'],
    );
    assert.deepEqual(steps[0]?.uses, ['I_R3']);
  });

  it('the one that is left is told as one', () => {
    const [first] = explain(bridge, { find: 'I_R1', given: { ...all, ...current } }).steps;
    assert.equal(
      first?.notes?.[0] && say(first.notes[0]),
      'No rule alone leads to I_R1: Kirchhoff’s laws give an equation for the one unknown current, I_R1.',
    );
  });

  for (const find of ['R_R5', 'R_R3', 'R_R1', 'E_B1'] as const)
    it(`${find} follows in its place, from loops that do without it`, () => {
      const given = Object.fromEntries(
        Object.entries({ ...all, ...current }).filter(([name]) => name !== find),
      );
      const derivation = explain(bridge, { find, given });
      assert.equal(derivation.answer?.value.toFraction(), all[find]);
      assertInOrder(derivation, Object.keys(given));
      assertNothingIdle(derivation);
      assertReplays(derivation, truthOf(bridge));
    });

  it('two that are missing are too many', () => {
    const { status } = explain(bridge, {
      find: 'R_R5',
      given: { E_B1: '24', R_R1: '150', R_R2: '50', R_R3: '100', ...current },
    });
    assert.equal(status, 'not enough');
  });
});

/** What a web’s line states, with a value for each. */
function statedOf(circuit: Parameters<typeof solveExact>[0]): Record<string, string> {
  const solution = solveExact(circuit);
  return Object.fromEntries(
    circuit.components.flatMap(({ id, kind }) =>
      (kind === 'supply' ? ['E', 'r'] : kind === 'source' ? ['I'] : ['R']).flatMap((letter) => {
        const value = solution.quantity(`${letter}_${id}`);
        return value && !(letter === 'r' && value.equals(0)) ? [[`${letter}_${id}`, value.toFraction()]] : [];
      }),
    ),
  );
}

describe('in any web', () => {
  it('some currents more change no answer, and make no way longer by more than what leads to them', () => {
    fc.assert(
      fc.property(
        web,
        fc.nat(),
        fc.array(fc.nat(), { minLength: 1, maxLength: 3 }),
        (circuit, pick, more) => {
          const solution = solveExact(circuit);
          const currents = circuit.components.map(({ id }) => `I_${id}`);
          const find = currents[pick % currents.length] ?? '';
          const given = statedOf(circuit);
          for (const one of more) {
            const name = currents[one % currents.length] ?? '';
            const value = solution.quantity(name);
            if (name !== find && value) given[name] = value.toFraction();
          }
          const derivation = explain(circuit, { find, given });
          if (derivation.reason?.code === 'too many equations') return;
          assert.equal(derivation.answer?.value.toFraction(), solution.quantity(find)?.toFraction());
          const silent = circuit.components.map(({ id }) => `R_${id}`);
          assertInOrder(derivation, [...Object.keys(given), ...silent]);
          assertNothingIdle(derivation);
          assertReplays(derivation, truthOf(circuit));
        },
      ),
      { numRuns: 200 },
    );
  });

  it('a resistance follows from its own current and all the others', () => {
    let found = 0;
    fc.assert(
      fc.property(web, fc.nat(), (circuit, pick) => {
        const solution = solveExact(circuit);
        const resistors = circuit.components.filter(({ kind }) => kind === 'resistor');
        const { id } = resistors[pick % resistors.length] ?? { id: '' };
        const own = solution.quantity(`I_${id}`);
        if (!own || own.equals(0)) return;
        const others = Object.entries(statedOf(circuit)).filter(([name]) => name !== `R_${id}`);
        const given = Object.fromEntries([...others, [`I_${id}`, own.toFraction()]]);
        const derivation = explain(circuit, { find: `R_${id}`, given });
        if (derivation.status !== 'found') return;
        found += 1;
        assert.equal(derivation.answer?.value.toFraction(), solution.quantity(`R_${id}`)?.toFraction());
        assertReplays(derivation, truthOf(circuit));
      }),
      { numRuns: 150 },
    );
    assert.ok(found > 75, `only ${found} were found`);
  });
});
