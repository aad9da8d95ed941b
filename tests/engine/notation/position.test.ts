import assert from 'node:assert/strict';
import { describe, it } from 'node:test';
import fc from 'fast-check';
import { positions } from '../../../src/engine/notation/position.ts';
import type { Found } from '../../../src/engine/notation/mistake.ts';

const found = (at: number): Found => ({
  at,
  wrong: { code: 'unit missing', data: { found: '', suggestion: '', about: '' } },
});

/** What ends a line in an editor. */
const ends = ['\n', '\r\n', '\r', '\u2028', '\u2029', '<br/>', '</p>\n', '</P> \r\n'];

/** Lines of letters, marks, and emoji of two code units. */
const page = fc.array(fc.array(fc.constantFrom('R', '1', ' ', 'Ω', '∥', '💡', '🚢'), { maxLength: 6 }), {
  minLength: 1,
  maxLength: 6,
});

describe('where a mistake is', () => {
  it('counts lines by whatever ends one, and characters in a line as a person does, from 1', () => {
    fc.assert(
      fc.property(page, fc.constantFrom(...ends), (lines, end) => {
        let text = '';
        const places: { readonly at: number; readonly line: number; readonly column: number }[] = [];
        lines.forEach((letters, row) => {
          letters.forEach((letter, column) => {
            places.push({ at: text.length, line: row + 1, column: column + 1 });
            text += letter;
          });
          text += end;
        });
        const told = positions(
          text,
          places.map(({ at }) => found(at)),
        );
        assert.deepEqual(
          told.map(({ line, column }) => ({ line, column })),
          places.map(({ line, column }) => ({ line, column })),
        );
      }),
      { numRuns: 500 },
    );
  });

  it('is behind the last character, where something is missing at the end', () => {
    assert.deepEqual(
      positions('B1 💡', [found(5)]).map(({ line, column }) => [line, column]),
      [[1, 5]],
    );
  });

  it('is the same for two mistakes at one place', () => {
    const [first, second] = positions('B1\nR1', [found(3), found(3)]);
    assert.deepEqual(first, second);
  });
});
