import assert from 'node:assert/strict';
import { test } from 'node:test';
import fc from 'fast-check';
import { formatCircuit } from '../../../src/engine/notation/format/index.ts';
import { CircuitSyntaxError, parseCircuit, readQuantity } from '../../../src/engine/notation/index.ts';
import { say } from '../../../src/engine/words/index.ts';
import { Random } from './random.ts';
import { RandomLine } from './random-line.ts';

/** Pieces of the notation, of its near misses, and of nothing in it. */
const pieces = [
  ...[
    '+',
    '∥',
    '||',
    '|',
    '//',
    '/',
    '(',
    ')',
    '[',
    ']',
    ';',
    '-',
    '–',
    '..',
    '...',
    '…',
    '±',
    '+-',
    '%',
    '×',
    'x',
  ],
  ...[
    'B1',
    'R1',
    'R2',
    'L1',
    'S1',
    'A1',
    'V1',
    'W1',
    'D1',
    'LED1',
    'X',
    'R47',
    'R₁',
    'E12',
    '@p',
    '@q',
    '@',
    '@1',
  ],
  ...[
    '6 V',
    '5 Ω',
    '3 W',
    '0.3 A',
    '4k7',
    '470R',
    '1M0',
    '4k7J',
    '6V3',
    '1,000 Ω',
    '5',
    '1/3',
    '1e3',
    '1e99',
    '²',
  ],
  ...[
    'cell',
    'resistor',
    'lamp',
    'wire',
    'diode',
    'open',
    'closed',
    'reversed',
    'hidden',
    'broken',
    'bridged',
    'across',
    'ends',
    'step',
  ],
  ...[
    'log',
    'r',
    'total',
    'volts',
    'constructor',
    '[2..40]',
    '@p–@q',
    'across R1',
    'ends @p–@q',
    '3 × 1.5 V',
    'r 0.5 Ω',
    'r [0..2] 1 Ω',
    '[-6..6]',
    '#',
  ],
  ...[
    '“',
    '"',
    '<br>',
    '</p>',
    '<p>',
    '\n',
    '\r\n',
    '\u00a0',
    '\u200b',
    '💡',
    'é',
    '\u0000',
    '\ud800',
    '{',
    '}',
    '$',
  ],
];
const characters = Array.from('BRLSAVWXr@+-–∥|()[];.,0123456789 ΩkMmµ±%×#<>/\n“’²₁é💡');

/** A line of random pieces. */
function soup(random: Random): string {
  const count = 1 + random.below(12);
  return Array.from({ length: count }, () => random.pick(pieces) + random.pick(['', ' ', ' '])).join('');
}

/** A line that can be read with one to four pieces or characters left out, doubled, swapped or put in. */
function mutated(random: Random): string {
  const { text } = new RandomLine(random, 1 + random.below(6));
  const words = random.once(2);
  const parts = words ? text.split(/(\s+|[+;()])/) : Array.from(text);
  for (let left = 1 + random.below(4); left > 0 && parts.length > 0; left -= 1) {
    const at = random.below(parts.length);
    const other = random.below(parts.length);
    const change = random.below(4);
    if (change === 0) parts.splice(at, 1);
    if (change === 1) parts.splice(at, 0, parts[at]!);
    if (change === 2) [parts[at], parts[other]] = [parts[other]!, parts[at]!];
    if (change === 3) parts.splice(at, 0, random.pick(words ? pieces : characters));
  }
  return parts.join('');
}

/** Reads a line, which either gives a circuit or mistakes that can be shown. */
function read(line: string): CircuitSyntaxError | undefined {
  try {
    parseCircuit(line);
    return undefined;
  } catch (error) {
    assert(error instanceof CircuitSyntaxError, `${JSON.stringify(line)}: ${String(error)}`);
    return error;
  }
}

/** The time that a piece of work takes, in ms. */
function timed(work: () => unknown): number {
  const start = performance.now();
  work();
  return performance.now() - start;
}

const plain = '1a'.repeat(10_000);
/** Cuts 20,000 characters by one expression: what a reader must do at least. It takes 1.7 ms on a quiet machine of two cores. */
const cut = (): unknown => [...plain.matchAll(/\p{L}|\d|./gsu)];

/**
 * Reads a line within 50 ms. One that seems to take longer is read again beside a plain cutting of as much text, so that a busy
 * machine is no fault of the parser: 50 ms are 30 such cuttings.
 */
function readInTime(line: string, about: string): CircuitSyntaxError | undefined {
  let error: CircuitSyntaxError | undefined;
  if (timed(() => (error = read(line))) <= 50) return error;
  const took: number[] = [];
  while (took.length < 12) {
    const cuttings = timed(() => read(line)) / timed(cut);
    if (cuttings <= 30) return error;
    took.push(Math.round(cuttings));
  }
  assert.fail(`${about}${JSON.stringify(line.slice(0, 200))} took ${took.join(', ')} cuttings`);
}

function checkMistakes({ all }: CircuitSyntaxError, line: string): void {
  const rows = line.split(/\r\n?|[\n\u2028\u2029]|<br|<\/p/i).length;
  assert(all.length > 0, line);
  for (const { line: row, column, message } of all) {
    assert(row >= 1 && row <= rows && column >= 1 && column <= line.length + 1, JSON.stringify(line));
    assert.match(message, /^\S.*[.?]$/su, JSON.stringify(line));
    assert.doesNotMatch(message, /undefined|NaN|\[object/, JSON.stringify(line));
  }
}

test('100,000 random and mutated lines are read or refused with their mistakes, none in more than 50 ms', () => {
  const { seed = 0 } = fc.readConfigureGlobal();
  const random = new Random(seed);
  let refused = 0;
  for (let count = 0; count < 100_000; count += 1) {
    const line = random.once(2) ? soup(random) : mutated(random);
    const error = readInTime(line, `seed ${seed}: `);
    if (error) checkMistakes(error, line);
    else if (random.once(4)) parseCircuit(formatCircuit(parseCircuit(line)));
    if (error) refused += 1;
  }
  assert(refused > 50_000 && refused < 98_000, `${refused} of the lines were refused`);
});

test('20,000 characters of anything are read or refused within 50 ms', () => {
  const starts = [
    '((((',
    'R1 + ',
    'R1 5 Ω + ',
    '1a',
    '1 234 ',
    '<br',
    '<p',
    '1 ',
    '/1',
    'R1 5 Ω; V1 across R1; ',
  ];
  for (const piece of [...pieces, ...starts]) {
    const line = `B1 6 V + ${piece.repeat(20_000)}`.slice(0, 20_000);
    const error = readInTime(line, '');
    if (error) checkMistakes(error, line);
  }
});

test('a typed value of any characters is read or refused', () => {
  const random = new Random(1);
  for (let count = 0; count < 5000; count += 1) {
    const text = Array.from({ length: random.below(9) }, () => random.pick(characters)).join('');
    const value = readQuantity(text, random.pick(['Ω', 'V', 'A']));
    assert('value' in value ? value.value.d > 0n : say(value).length > 0, text);
  }
});
