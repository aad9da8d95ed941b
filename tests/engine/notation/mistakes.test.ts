import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { CircuitSyntaxError, parseCircuit } from '../../../src/engine/notation/index.ts';
import { tableOfMistakes } from './table-of-mistakes.ts';

/** The mistakes of a line. */
function mistakes(line: string): CircuitSyntaxError {
  try {
    parseCircuit(line);
  } catch (error) {
    if (error instanceof CircuitSyntaxError) return error;
    throw error;
  }
  assert.fail(`${line} was read`);
}

const shown = (line: string): string => (line.length > 60 ? `${line.slice(0, 60)}…` : line);

for (const [subject, rows] of Object.entries(tableOfMistakes)) {
  describe(`${subject}: the mistake is found where it is, with what to write instead`, () => {
    for (const { line, at, code, suggestion } of rows) {
      test(JSON.stringify(shown(line)), () => {
        const error = mistakes(line);
        const [row, column] = typeof at === 'number' ? [1, at] : at;
        assert.deepEqual(
          { line: error.line, column: error.column, code: error.code, suggestion: error.suggestion },
          { line: row, column, code, suggestion },
          JSON.stringify(error.all, null, 1),
        );
        assert.equal(error.message, error.all[0]?.message);
        assert.match(error.message, /^[^ ].*[.?]$/u);
      });
    }
  });
}
