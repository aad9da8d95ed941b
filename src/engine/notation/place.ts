import { written, type Cursor } from './cursor.ts';
import { mistake } from './mistake.ts';
import type { Token } from './token.ts';

/** Where a component is placed: from one junction to another in the direction of the line, or across a component. */
export interface Place {
  readonly at: Token;
  /** As written. */
  readonly text: string;
  readonly between?: readonly [Token, Token];
  readonly across?: Token;
}

/** Reads `@p–@q`. */
export function readSpan(cursor: Cursor): Place {
  const at = cursor.expect('@', 'junction');
  if (cursor.token.text === '→') cursor.halt(cursor.token, mistake('write instead', '→', '–'));
  cursor.expect('–', 'dash', '–');
  const { token } = cursor;
  const to = cursor.expect('@', 'junction', token.type === 'word' ? `@${written(token)}` : '');
  return { at, text: cursor.since(at), between: [at, to] };
}

/** Reads `@p–@q` or `across R1`. */
export function readPlace(cursor: Cursor): Place {
  const at = cursor.token;
  if (at.type === '@') return readSpan(cursor);
  if (!cursor.take('word', 'across')) cursor.fail('place');
  if (cursor.is('(')) cursor.halt(at, mistake('across several', at.text, '@p–@q'));
  const across = cursor.expect('label', 'label');
  return { at, text: cursor.since(at), across };
}
