import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { workedSolution, type Worked } from '../../../src/engine/index.ts';
import { parseCircuit } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/reasons/index.ts';
import { quantities, solveExact } from '../../../src/engine/solve/index.ts';
import { usualCourse } from '../../../src/engine/words/index.ts';

const quay = 'B1 12 V r 0.5 Ω + R1 4 Ω + (R2 6 Ω ∥ (R3 8 Ω + R4 4 Ω))';

function worked(line: string, of: string, given = '', lesson = '', course = usualCourse): Worked {
  const circuit = parseCircuit(line);
  return workedSolution(circuit, solveExact(circuit), course, { of, given, lesson });
}
const value = ({ derivation }: Worked): string | undefined => derivation?.answer?.value.toFraction();
const problem = (one: Worked): string => (one.problem ? say(one.problem) : '');

void describe('a worked solution', () => {
  void it('reaches what the solver finds, of every quantity that may be asked', () => {
    const circuit = parseCircuit(quay);
    const solution = solveExact(circuit);
    for (const name of quantities(circuit))
      assert.equal(value(worked(quay, name)), solution.quantity(name)?.toFraction(), name);
  });

  void it('starts from what its steps use, in the order of the circuit', () => {
    const all = [
      'E_B1 = 12.0\u202fV',
      'r_B1 = 0.500\u202fΩ',
      'R_R1 = 4.00\u202fΩ',
      'R_R2 = 6.00\u202fΩ',
      'R_R3 = 8.00\u202fΩ',
      'R_R4 = 4.00\u202fΩ',
    ];
    assert.deepEqual(worked(quay, 'I_R3').given, all);
    assert.deepEqual(worked(quay, 'E_B1').given, [all[0]]);
  });

  void it('takes what is given as it is written, or as the circuit has it', () => {
    assert.equal(value(worked(quay, 'V_R1', 'I_R1 = 250 mA; R_R1')), '1');
    assert.equal(value(worked(quay, 'U_R1', 'I_R1 = 0,25 A\n R_R1 = 4')), '1');
    assert.equal(value(worked(quay, 'W_R1', 'P_R1 = 2 W; t = 90 s')), '180');
    assert.equal(value(worked(quay, 'Q_R1', 'I_R1 = -0.5 A; t = 90')), '-45');
    assert.equal(value(worked(quay, 'I_R1', 'V_R1 = 2 V; R_R1 = 1/3 Ω')), '6');
    assert.deepEqual(worked(quay, 'W_R1', 'P_R1 = 2 W; t = 90 s').given, [
      'P_R1 = 2.00\u202fW',
      't = 90.0\u202fs',
    ]);
  });

  void it('knows how exactly a reading was written: 1.3 A and 5.0 V agree with 4 Ω, 1.30 A and 5.0 V do not', () => {
    assert.equal(worked(quay, 'P_R1', 'I_R1 = 1.3 A; V_R1 = 5.0 V; R_R1 = 4 Ω').derivation?.status, 'found');
    assert.equal(
      worked(quay, 'P_R1', 'I_R1 = 1.30 A; V_R1 = 5.0 V; R_R1 = 4 Ω').derivation?.status,
      'contradiction',
    );
    assert.equal(
      worked(quay, 'P_R1', 'I_R1 = 1300 mA; V_R1 = 5.0 V; R_R1 = 4 Ω').derivation?.status,
      'contradiction',
    );
  });

  void it('says what it cannot read, and never throws', () => {
    assert.match(problem(worked(quay, 'I_R1', 'V_R1 = six')), /“V_R1 = six” cannot be read/);
    assert.match(problem(worked(quay, 'I_R1', 'V_R1 = 6 A')), /cannot be read/);
    assert.match(problem(worked(quay, 'I_R1', 'X_R1')), /cannot be read/);
    assert.match(problem(worked('B1 6 V + R1 3 Ω hidden', 'I_R1', 'R_R1; V_R1')), /“R_R1” cannot be read/);
    assert.match(problem(worked(quay, 'I_R1', '', '14-15')), /did you mean 14-16/);
    const text = fc.oneof(
      fc.string(),
      fc.constantFrom('V_R1', 'I_R1 = 1/0 A', 'R_R1 = 1e999', '__proto__ = 3', 't = 5 s'),
    );
    fc.assert(
      fc.property(text, text, text, (of, given, lesson) => {
        const { derivation, find } = worked(quay, of, given, lesson);
        assert.ok(
          derivation === undefined || derivation.answer !== undefined || derivation.reason !== undefined,
        );
        assert.equal(typeof find, 'string');
      }),
    );
  });

  void it('is in the letters and figures of its course', () => {
    const { find, given } = worked('B1 4.5 V + R1 9 Ω', 'V_R1', '', '', {
      ...usualCourse,
      letter: 'U',
      figures: 2,
      decimalSign: ',',
    });
    assert.deepEqual([find, given], ['U_R1', ['E_B1 = 4,5\u202fV']]);
  });

  void it('keeps to the rules of a class', () => {
    const rules = (lesson: string): readonly string[] =>
      worked('B1 12 V + (R1 6 Ω ∥ R2 12 Ω)', 'R_total', '', lesson).derivation?.steps.map(
        ({ rule }) => rule,
      ) ?? [];
    assert.deepEqual(rules(''), ['resistances in parallel']);
    assert.deepEqual(rules('16–18'), rules(''));
    assert.deepEqual(rules('product-over-sum'), ['product over sum']);
    for (const lesson of ['11-14', '14-16', 'without-reciprocals'])
      assert.ok(
        !rules(lesson).includes('resistances in parallel') && rules(lesson).includes('currents add'),
        lesson,
      );
  });
});
