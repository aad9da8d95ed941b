import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { explain, type Lesson } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { stagesOf, type Stage } from '../../../src/engine/reduction/index.ts';
import { drawSchematic } from '../../../src/engine/schematic/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';

const quay = 'B1 12 V + A1 + R1 4 Ω + (R2 6 Ω ∥ (R3 8 Ω + R4 4 Ω)); V1 across R4';

function stages(line: string, find: string, course?: Lesson): readonly (Stage | undefined)[] {
  const circuit = parseCircuit(line);
  return stagesOf(circuit, explain(circuit, { find, ...(course && { course }) }).steps);
}
const labels = ({ components }: Circuit): string => components.map(({ id }) => id).join(', ');
const told = (all: readonly (Stage | undefined)[]): string[] =>
  all.flatMap((stage) => (stage ? [`${labels(stage.circuit)} | ${stage.about.join(', ')}`] : []));

void describe('the circuit grows smaller as resistances are put together, and larger again', () => {
  void it('two in series become one, that and a third in parallel one, and all one; then back', () => {
    assert.deepEqual(told(stages(quay, 'I_R3')), [
      'B1, A1, R1, R2, R3 + R4 | R3 + R4',
      'B1, A1, R1, R2 ∥ (R3 + R4) | R2 ∥ (R3 + R4)',
      'B1, A1, R1 + (R2 ∥ (R3 + R4)) | R1 + (R2 ∥ (R3 + R4))',
      'B1, A1, R1, R2 ∥ (R3 + R4) | R2 ∥ (R3 + R4), B1',
      'B1, A1, R1, R2, R3 + R4 | R3 + R4',
      'B1, A1, R1, R2, R3, R4 | R3',
    ]);
  });

  void it('a network between two terminals as well', () => {
    assert.deepEqual(told(stages('R1 12 Ω ∥ (R2 4 Ω + R3 8 Ω)', 'R_total')), [
      'R1, R2 + R3 | R2 + R3',
      'R1 ∥ (R2 + R3) | R1 ∥ (R2 + R3)',
    ]);
  });

  void it('meters and switches in a block go with it, those outside stay', () => {
    const line = 'B1 6 V + S1 closed + A1 + ((A2 + R1 4 Ω + S2 closed + R2 8 Ω) ∥ (A3 + R3 6 Ω))';
    assert.deepEqual(told(stages(line, 'R_total')), [
      'B1, S1, A1, A2, R1 + R2, A3, R3 | R1 + R2',
      'B1, S1, A1, (R1 + R2) ∥ R3 | (R1 + R2) ∥ R3',
    ]);
  });

  void it('each block has its exact value and the text that the derivation writes', () => {
    const [only] = stages('B1 6 V + (R1 10 Ω ∥ R2 20 Ω)', 'R_total');
    const block = only?.circuit.components.find(({ id }) => id === 'R1 ∥ R2');
    assert.equal(block?.kind === 'resistor' && block.resistance.value.toFraction(), '20/3');
    assert.deepEqual(only?.values, { 'R1 ∥ R2': '6.67\u202fΩ' });
  });

  void it('a long label has its ends only', () => {
    const [only] = stages('B1 6 V + R1 1 Ω + R2 1 Ω + R3 1 Ω + R4 1 Ω + R5 1 Ω + R6 1 Ω', 'I_R3');
    assert.equal(only && labels(only.circuit), 'B1, R1…R6');
  });

  void it('nothing is redrawn where no resistances are put together, nor in a bridge', () => {
    assert.deepEqual(
      told(
        stages('B1 6 V + (R1 10 Ω ∥ R2 20 Ω)', 'I_B1', {
          wording: 'p.d.',
          letter: 'V',
          figures: 3,
          decimalSign: '.',
          without: ['resistances in parallel'],
        }),
      ),
      [],
    );
    const bridge = 'B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q';
    assert.deepEqual(told(stages(bridge, 'I_B1')), []);
    // What is missing is found by taking away: the block is not put together.
    const circuit = parseCircuit('B1 6 V + R1 4 Ω + R2 8 Ω');
    const { steps } = explain(circuit, { find: 'R_R2', given: { R_total: 12, R_R1: 4 } });
    assert.deepEqual(told(stagesOf(circuit, steps)), []);
  });
});

const ohms = fc.integer({ min: 1, max: 99 });
const network = fc.letrec<{ part: (next: () => number) => string }>((tie) => ({
  part: fc.oneof(
    { depthSize: 'small', withCrossShrink: true },
    ohms.map((value) => (next: () => number) => `R${next()} ${value} Ω`),
    fc
      .tuple(fc.constantFrom(' + ', ' + A9 + ', ' ∥ '), fc.array(tie('part'), { minLength: 2, maxLength: 3 }))
      .map(([sign, parts]) => (next: () => number) => {
        const written = parts.map((part) => part(next));
        // Only one meter may be called A9, so others have numbers of their own.
        return `(${written.reduce((a, b) => a + sign.replace('A9', `A${next()}`) + b)})`;
      }),
  ),
})).part;

void describe('in every stage', () => {
  void it('the supply feels no difference, each block stands for what it is made of, and all can be drawn', () => {
    fc.assert(
      fc.property(network, fc.constantFrom('', ' r 0.5 Ω'), (build, inner) => {
        let count = 0;
        const line = `B1 12 V${inner} + ${build(() => (count += 1))}`;
        const circuit = parseCircuit(line);
        const whole = solveExact(circuit);
        for (const find of [`P_R1`, 'I_B1']) {
          const { steps } = explain(circuit, { find });
          stagesOf(circuit, steps).forEach((stage, place) => {
            if (!stage) return;
            const solution = solveExact(stage.circuit);
            assert.equal(solution.current('B1')?.toFraction(), whole.current('B1')?.toFraction(), line);
            for (const { id } of stage.circuit.components) {
              const kept = whole.current(id);
              if (kept)
                assert.ok(solution.current(id)?.abs().equals(kept.abs()), `${id} of ${line} at ${place}`);
            }
            for (const id of stage.about)
              assert.ok(
                stage.circuit.components.some((one) => one.id === id),
                id,
              );
            assert.equal(drawSchematic(stage.circuit).kind, 'drawing');
          });
        }
      }),
      { numRuns: 60 },
    );
  });
});
