import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { tokenize } from '../../../src/engine/notation/tokenize.ts';

/** The pieces of a text, without its end. */
const pieces = (text: string): readonly string[] =>
  tokenize(text)
    .slice(0, -1)
    .map(({ at, end }) => text.slice(at, end));

test('letters and digits of any script stand together, wherever the first of them that is not ASCII stands', () => {
  const letter = fc.constantFrom('a', 'z', 'é', 'ß', 'ж', 'ω', '₁', '２', '9');
  const capital = fc.constantFrom('R', 'É', 'Ж', 'Ω', '\u2126');
  fc.assert(
    fc.property(capital, fc.array(letter, { maxLength: 8 }), (first, rest) => {
      const word = first + rest.join('');
      assert.deepEqual(pieces(word), [word]);
      assert.deepEqual(pieces(`${word} + @${word}`), [word, '+', `@${word}`]);
    }),
  );
  const small = fc.array(fc.constantFrom('a', 'x', 'é', 'ß', 'ж', 'ω', '𝑟'), { minLength: 1, maxLength: 8 });
  fc.assert(fc.property(small, (letters) => assert.deepEqual(pieces(letters.join('')), [letters.join('')])));
});

test('signs stand alone beside letters of any script', () => {
  const name = fc.constantFrom('R1', 'Ré', 'R₁', 'Ж');
  const sign = fc.constantFrom('+', '∥', '‖', '×', '±', '–', '−', '…', '(', ']', '|', '||', '♥', '🙂');
  fc.assert(
    fc.property(name, sign, name, (before, between, after) => {
      assert.deepEqual(pieces(before + between + after), [before, between, after]);
    }),
  );
});

test('a value takes its unit, and no letter of any script behind it', () => {
  for (const unit of ['Ω', '\u2126', ' kΩ', 'V', ' °C'])
    assert.deepEqual(pieces(`12${unit}∥R1`), [`12${unit}`, '∥', 'R1']);
  for (const text of ['12 Vé', '12Ωж', '12 A２']) assert.notEqual(pieces(text).length, 1);
});

test('a value that was read before is the same at another place, and no part of what is longer', () => {
  for (const value of ['12 Ω', '4.70 kΩ', '6V', '0.50 A']) {
    const [first] = tokenize(value);
    const [, , again] = tokenize(`R1  + ${value} + R2`);
    assert.deepEqual(again?.quantity, first?.quantity);
    assert.deepEqual(
      [again?.type, again?.text, again?.at, again?.end],
      ['quantity', value, 6, 6 + value.length],
    );
    assert.deepEqual(pieces(`1${value}`), [`1${value}`]);
    assert.equal(tokenize(`${value}ж`)[0]?.quantity, undefined);
  }
});
