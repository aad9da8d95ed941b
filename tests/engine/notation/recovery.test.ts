import assert from 'node:assert/strict';
import { test } from 'node:test';
import { CircuitSyntaxError, parseCircuit } from '../../../src/engine/notation/index.ts';

/** Every mistake of a line as `line:column code`. */
function all(line: string): readonly string[] {
  try {
    parseCircuit(line);
  } catch (error) {
    assert(error instanceof CircuitSyntaxError);
    return error.all.map(({ line: row, column, code }) => `${row}:${column} ${code}`);
  }
  return [];
}

test('two independent mistakes of a line are both told', () => {
  const lines: readonly (readonly [line: string, ...mistakes: string[]])[] = [
    ['B1 6 + R1 5', '1:4 unit missing', '1:11 unit missing'],
    ['B1 6 v + (R1 5 Ω | R2 3 Q)', '1:4 write instead', '1:18 write instead', '1:23 unit missing'],
    ['B1 6 V + (R1 $ ∥ R2) + R3 5 V', '1:14 unexpected character', '1:18 value missing', '1:27 unsuitable'],
    ['R1 5 Ω - R2 3 Ω - R3 2 Ω', '1:8 dash in series', '1:17 dash in series'],
    [
      'B1 6 V + R1 5 Ω; V1 across R9; V2 @p–@q',
      '1:28 no such component',
      '1:35 junction once',
      '1:38 junction once',
    ],
    [
      'B1 6 V + R1; V1 shiny R1;\nV2 @p',
      '1:10 value missing',
      '1:17 unexpected character',
      '2:4 junction once',
      '2:6 expected',
    ],
    ['(B1 6 V + (R1 5 Ω', '1:1 bracket alone', '1:11 bracket alone'],
    ['B1 1,000 V + R1 4k7J', '1:4 two readings', '1:17 two readings'],
  ];
  for (const [line, ...mistakes] of lines) assert.deepEqual(all(line), mistakes, line);
});

test('a mistake is told once, not again by what follows from it', () => {
  for (const line of [
    'B1 6 V + R1 [2..40 8 Ω + R2 3 Ω',
    'B1 6 V + $R1 5 Ω; V1 across R1',
    'R1 5 + R2 3 Ω',
    'R1 5 @a–@b; R2 3 Ω @b–@a',
    'B1 6 V + [R1 5 Ω ∥ R2 3 Ω] + R3 2 Ω',
    'B1 6 V + R1 $ (R2 5 Ω + R3 ∥ R4) + R5 5 Ω',
    'B1 6 V + R1 $ (R2 5 Ω + (R3 ∥ R4) + R6) + R5 5 Ω',
    'B1 6 V + (R1 $ (R2 ∥ R3)) + R5 5 Ω',
  ]) {
    assert.equal(all(line).length, 1, `${line}: ${all(line).join(', ')}`);
  }
});

test('after brackets that a mistake leads over, what follows is read again', () => {
  assert.deepEqual(all('B1 6 V + R1 $ (R2 + (R3 ∥ R4)) + R5; V1 across R9'), [
    '1:13 unexpected character',
    '1:34 value missing',
    '1:48 no such component',
  ]);
});

test('columns count characters of the text as given, lines its line breaks', () => {
  assert.deepEqual(all('“B1 6 V + R1 5”'), ['1:14 unit missing']);
  assert.deepEqual(all('# 💡💡\r\nB1 6 V +\r\n R1 5'), ['3:5 unit missing']);
  assert.deepEqual(all('B1 6 V # 💡\u2028+ R1 5'), ['2:6 unit missing']);
  assert.deepEqual(all('B1 6 V + lamp 💡'), ['1:15 unexpected character']);
  assert.deepEqual(all('💡 B1 6 V + R1 5'), ['1:1 unexpected character', '1:15 unit missing']);
  assert.deepEqual(all('<p>B1 6 V</p>\n<p>+ R1 5</p>'), ['2:9 unit missing']);
});

test('of very many mistakes a hundred are told', () => {
  assert.equal(all('+'.repeat(5000)).length, 100);
});
