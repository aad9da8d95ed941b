import type { Circuit } from '../circuit/index.ts';
import { Cursor, named } from './cursor.ts';
import { layOut } from './lay-out.ts';
import { readLine } from './line.ts';
import { mistake, type Found } from './mistake.ts';
import { CircuitSyntaxError } from './syntax-error.ts';
import type { Token } from './token.ts';
import { tokenize } from './tokenize.ts';

const characterLimit = 20_000;
const componentLimit = 1000;
const depthLimit = 64;

function pastLimit(tokens: readonly Token[]): Found | undefined {
  let depth = 0;
  for (const { type, at } of tokens) {
    if (type === '(') depth += 1;
    if (type === ')') depth -= 1;
    if (depth > depthLimit) return { at, wrong: mistake('too deep', '', '', `${depthLimit}`) };
  }
  const labels = named(tokens);
  const past = labels[componentLimit];
  const data = { count: labels.length, limit: componentLimit };
  return past && { at: past.at, wrong: { code: 'too many components', data } };
}

/**
 * Reads a circuit from a line of notation. Throws CircuitSyntaxError, which tells every mistake with its line, its column and
 * what to write instead. At most 20,000 characters, 1,000 components and brackets 64 deep are read.
 */
export function parseCircuit(text: string): Circuit {
  if (text.length > characterLimit) {
    const wrong = mistake('text too long', '', '', `${characterLimit}`);
    throw new CircuitSyntaxError(text, [{ at: 0, wrong }]);
  }
  const tokens = tokenize(text);
  const past = pastLimit(tokens);
  if (past) throw new CircuitSyntaxError(text, [past]);
  const cursor = new Cursor(text, tokens);
  if (tokens.length === 1) cursor.flag({ at: 0 }, 'expected', '', 'B1 6 V + R1 12 Ω', 'component');
  const circuit = tokens.length > 1 ? layOut(cursor, readLine(cursor)) : { components: [] };
  if (cursor.mistakes.length > 0) throw new CircuitSyntaxError(text, cursor.mistakes);
  return circuit;
}
