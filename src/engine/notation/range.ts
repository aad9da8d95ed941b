import { CircuitFormatError, checkRange, type Range, type Resistor } from '../circuit/index.ts';
import { inUnit, type Quantity } from '../quantity/index.ts';
import type { Cursor } from './cursor.ts';
import type { Wrong } from './mistake.ts';
import type { Token } from './token.ts';

/** A range as it stands in the line; what its bare numbers mean depends on the value. */
export interface RangeReading {
  readonly open: Token;
  readonly min: Token;
  readonly max: Token;
  readonly step?: Token;
  readonly scale?: 'log' | 'E12' | 'E24';
}

function readEnd(cursor: Cursor): Token {
  const { text, quantity } = cursor.token;
  const code = quantity && !cursor.labels.has(text) ? cursor.take('label') : undefined;
  return code ?? cursor.take('number') ?? cursor.take('quantity') ?? cursor.expect('code', 'number');
}

/** Reads `step 2`, `log`, `E12`, `E24`, or nothing. */
function readManner(cursor: Cursor): Pick<RangeReading, 'step' | 'scale'> {
  const { token } = cursor;
  const { type, text } = token;
  if (!cursor.take('word') && !cursor.take('label')) return {};
  if (text === 'log' || text === 'E12' || text === 'E24') return { scale: text };
  if (text !== 'step') cursor.wrong(token, 'write instead', text, type === 'label' ? 'E24' : 'step');
  return { step: readEnd(cursor) };
}

/** Reads a range, `[2..40 step 2]`, whose bracket has just been read. */
export function readRange(cursor: Cursor, open: Token): RangeReading {
  const min = readEnd(cursor);
  const dash = cursor.take('–');
  if (!dash) cursor.expect('..', 'dots', '..');
  const max = readEnd(cursor);
  const manner = readManner(cursor);
  if (!cursor.take(']')) cursor.wrong(open, 'bracket alone', '[', ']');
  if (dash) cursor.wrong(open, 'write instead', undefined, cursor.since(open).replace(dash.text, '..'));
  return { open, min, max, ...manner };
}

/** The resistor with its range, checked. A code has no unit and prefix to lend to bare ends. */
export function withRange(
  cursor: Cursor,
  resistor: Resistor,
  reading: RangeReading,
  coded: boolean,
): Resistor {
  const { open, min, max, step, scale } = reading;
  /** Ohms of an end, more than 0 where that is told. */
  const ohms = (end: Token, positive: unknown): Quantity => {
    const { text: found, number } = end;
    const bare = end.type === 'number';
    if (bare && coded) cursor.wrong(end, 'unit missing', found, `${found} Ω`);
    const quantity = bare && number ? inUnit(number, 'Ω', resistor.resistance.prefix) : end.quantity;
    if (quantity?.unit !== 'Ω') cursor.wrong(end, 'unsuitable', found, '', resistor.id);
    if (positive && quantity.value.n === 0n) cursor.halt(end, { code: 'must be positive', data: { found } });
    return quantity;
  };
  const range: Range = {
    min: ohms(min, scale),
    max: ohms(max, false),
    ...(step && { step: ohms(step, true) }),
    ...(scale && { scale }),
  };
  if (range.min.value.compare(range.max.value) >= 0) {
    cursor.wrong(open, 'range backwards', '', `[${max.text}..${min.text}]`);
  }
  try {
    return checkRange({ ...resistor, range }, '');
  } catch (error) {
    if (!(error instanceof CircuitFormatError)) throw error;
    return cursor.halt(open, { code: error.code, data: error.data } as Wrong);
  }
}
