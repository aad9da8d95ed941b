import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { explain } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { plain, wiperLines } from '../schematic/random-wipers.ts';

describe('a derivation in a circuit with potentiometers', () => {
  it('takes them for two resistances that meet at the contact, step by step', () => {
    let found = 0;
    fc.assert(
      fc.property(wiperLines, fc.nat(), fc.constantFrom('I', 'V', 'P'), (line, pick, letter) => {
        const circuit = parseCircuit(line);
        fc.pre(circuit.components.length <= 12);
        const { id = '' } = circuit.components[pick % circuit.components.length] ?? {};
        const find = `${letter}_${id}`;
        const derivation = explain(circuit, { find });
        assert.deepEqual(derivation, explain(plain(circuit), { find }));
        if (!derivation.answer) return;
        found++;
        assert.equal(derivation.answer.value.toFraction(), solveExact(circuit).quantity(find)?.toFraction());
      }),
      { numRuns: 100 },
    );
    assert.ok(found > 20);
  });

  it('adds its two parts for the whole track', () => {
    const circuit = parseCircuit('B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a 30 Ω ∥ L1 60 Ω)');
    for (const [find, value, steps] of [
      ['R_R1', '100', 1],
      ['V_R1', '6', undefined],
    ] as const) {
      const derivation = explain(circuit, { find });
      const { rule, equation } = derivation.steps.at(-1) ?? {};
      assert.equal(derivation.answer?.value.toFraction(), value);
      assert.deepEqual([rule, equation], ['whole track', `${find} = ${find}a + ${find}b`]);
      if (steps) assert.equal(derivation.steps.length, steps);
    }
    const hidden = explain(parseCircuit('B1 6 V + potentiometer R1b 70 Ω hidden + potentiometer R1a 30 Ω'), {
      find: 'R_R1',
    });
    assert.equal(hidden.status, 'not enough');
  });

  it('divides the p.d. by the two parts of the track, and under a load by what stands beside one of them', () => {
    const rulesOf = (line: string, find: string): readonly string[] =>
      explain(parseCircuit(line), { find }).steps.map(({ rule }) => rule);
    const track = (a: string): string => `B1 6 V + potentiometer R1b 70 Ω + ${a}`;
    assert.ok(rulesOf(track('potentiometer R1a 30 Ω'), 'V_R1a').includes('potential divider'));
    const loaded = rulesOf(track('(potentiometer R1a 30 Ω ∥ L1 60 Ω)'), 'V_L1');
    assert.ok(
      loaded.includes('resistances in parallel') && loaded.includes('potential divider'),
      loaded.join(),
    );
  });
});
