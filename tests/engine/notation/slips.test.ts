import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import { CircuitSyntaxError, parseCircuit } from '../../../src/engine/notation/index.ts';

/** A line as it is typed in haste, where the first slip is (column from 1), and the whole sentence that is said of it. */
const slips: readonly (readonly [line: string, column: number, sentence: string])[] = [
  ['', 1, 'Expected a component (such as R1 12 Ω) here. Write B1 6 V + R1 12 Ω.'],
  ['b1 6 V + r1 5 Ω', 1, 'Write B1, not “b1”.'],
  ['B16V + R1 5 Ω', 1, 'Put a space after the label: B1 6V.'],
  ['B1 6 + R1 5 Ω', 4, '6 needs a unit: 6 V?'],
  ['B1 6 volts + R1 12 Ω', 4, 'Write 6 V, not “6 volts”.'],
  ['B1 6 V R1 5 Ω', 8, '“R1” needs + (in series) or ∥ (in parallel) before it.'],
  ['B1 6 V - R1 5 Ω', 8, 'A dash does not join components; use + for in series.'],
  ['R1 12 Ω | R2 6 Ω', 9, 'Write ∥, not “|”.'],
  ['B1 6 V + {R1 5 Ω}', 10, 'Write (, not “{”.'],
  ['B1 6 V + (R1 5 Ω ∥ R2 3 Ω', 10, 'This “(” is never closed.'],
  ['B1 6 V + R1 5 Ω)', 16, 'This “)” closes nothing.'],
  ['B1 6 V + R1', 10, 'R1 needs a value, such as R1 12 Ω.'],
  ['B1 6 V + R1 5', 13, '5 needs a unit: 5 Ω?'],
  ['B1 6 V 0.5 Ω + R1 5 Ω', 8, 'Write r 0.5 Ω, not “0.5 Ω”.'],
  ['B1 6 V + R1 5 V', 13, '“5 V” does not suit R1.'],
  ['B1 6 V + R1 12 Ohm', 13, 'Write 12 Ω, not “12 Ohm”.'],
  ['B1 6 V + R1 = 5 Ω', 13, '“=” is one too many; leave it out.'],
  ['B1 6 V + R1 -5 Ω', 13, 'This must be 0 or more, not -5 Ω.'],
  ['B1 6 V + R1 1/0 Ω', 13, '1/0 divides by 0.'],
  ['B1 6 V + R1 1,000 Ω', 13, '“1,000” can be read in two ways: write 1000 Ω or 1.000 Ω.'],
  ['B1 6 V + R1 5 Ω 6 Ω', 17, '“6 Ω” is one too many; leave it out.'],
  ['B1 6 V + R1 5 Ω closed', 17, '“closed” does not suit R1.'],
  ['B1 6 V + R1 5 Ω hiden', 17, 'Write hidden, not “hiden”.'],
  ['B1 6 V + S1 opn + R1 5 Ω', 13, 'Write open, not “opn”.'],
  ['B1 6 V + R1 [40..4] 12 Ω', 13, 'A range runs from the smaller to the larger: [4..40].'],
  ['B1 6 V + R1 [4..40] 50 Ω', 13, '50 Ω is outside 4 Ω to 40 Ω.'],
  ['B1 6 V + L1 6 V', 10, 'L1 needs its resistance, or two of its voltage, power and current.'],
  ['B1 6 V + lamp 8 Ω', 15, 'Expected a label (such as R1), not “8 Ω”. Write lamp L1.'],
  ['B1 6 V + X1 5 Ω', 10, 'The letters of X1 do not say what it is; write resistor X1, for instance.'],
  ['B1 6 V + R1 5 Ω + R1 6 Ω', 19, 'R1 is the label of two components; give one of them another number.'],
  ['B1 6 V + R1 5 Ω; V1', 20, 'Expected a place (@p–@q, or across R1) here.'],
  ['B1 6 V + R1 5 Ω; V1 across R2', 28, 'There is no R2 in this circuit; did you mean R1?'],
  ['B1 6 V + @p + R1 5 Ω', 10, '@p is named nowhere else, so nothing meets there.'],
];

void describe('a line typed in haste', () => {
  for (const [line, column, sentence] of slips)
    void it(`says what is wrong, and where: ${line || 'nothing'}`, () => {
      assert.throws(
        () => parseCircuit(line),
        (error) => {
          assert.ok(error instanceof CircuitSyntaxError);
          assert.deepEqual(
            [error.line, error.column, error.message.replaceAll('\u202f', ' ')],
            [1, column, sentence],
          );
          return true;
        },
      );
    });

  void it('has the same slip in the second line of a text, which is where it is then', () => {
    for (const [line, column, sentence] of slips.filter(([text]) => text.startsWith('B1 6 V + '))) {
      const text = `B1 6 V +\n${line.slice('B1 6 V + '.length)}`;
      assert.throws(
        () => parseCircuit(text),
        (error) => {
          assert.ok(error instanceof CircuitSyntaxError);
          const place = column - 'B1 6 V + '.length;
          assert.deepEqual(
            [error.line, error.column, error.message.replaceAll('\u202f', ' ')],
            [2, place, sentence],
          );
          return true;
        },
      );
    }
  });
});
