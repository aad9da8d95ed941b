import { checkRange, type Range } from '../circuit/index.ts';
import { inUnit, type Quantity } from '../quantity/index.ts';
import type { Cursor } from './cursor.ts';
import { mistake } from './mistake.ts';
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
  const start = cursor.token;
  const negative = cursor.take('–');
  const { text, quantity } = cursor.token;
  const code = quantity && !cursor.labels.has(text) ? cursor.take('label') : undefined;
  const end = code ?? cursor.take('number') ?? cursor.take('quantity') ?? cursor.expect('code', 'number');
  return negative ? negated(end, start) : end;
}

function negated({ number, quantity, ...end }: Token, { at }: Token): Token {
  return {
    ...end,
    at,
    text: `-${end.text}`,
    ...(number && { number: { ...number, value: number.value.neg() } }),
    ...(quantity && { quantity: { ...quantity, value: quantity.value.neg() } }),
  };
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
  if (!dash && !cursor.take('..'))
    cursor.halt(cursor.token, mistake('expected', cursor.token.text, '..', 'dots'));
  const max = readEnd(cursor);
  const manner = readManner(cursor);
  if (!cursor.take(']')) cursor.wrong(open, 'bracket alone', '[', ']');
  if (dash) cursor.wrong(open, 'write instead', undefined, cursor.since(open).replace(dash.text, '..'));
  return { open, min, max, ...manner };
}

/** The range of a value, checked. A code has no unit and prefix to lend to bare ends. */
export function rangeOf(
  cursor: Cursor,
  id: string,
  value: Quantity,
  reading: RangeReading,
  coded: boolean,
): Range {
  const { open, min, max, step, scale } = reading;
  const { unit, prefix } = value;
  /** What an end says: more than 0 where that must be, and never negative ohms. */
  const ending = (end: Token, positive: unknown): Quantity => {
    const { text: found, number } = end;
    const bare = end.type === 'number';
    if (bare && coded) cursor.wrong(end, 'unit missing', found, `${found} ${unit}`);
    const quantity = bare && number ? inUnit(number, unit, prefix) : end.quantity;
    if (quantity?.unit !== unit) cursor.wrong(end, 'unsuitable', found, '', id);
    if (positive && quantity.value.compare(0) <= 0)
      cursor.halt(end, { code: 'must be positive', data: { found } });
    if (unit === 'Ω' && quantity.value.s < 0n)
      cursor.halt(end, { code: 'must not be negative', data: { found } });
    return quantity;
  };
  const range: Range = {
    min: ending(min, scale),
    max: ending(max, false),
    ...(step && { step: ending(step, true) }),
    ...(scale && { scale }),
  };
  if (range.min.value.compare(range.max.value) >= 0) {
    cursor.wrong(open, 'range backwards', '', `[${max.text}..${min.text}]`);
  }
  return cursor.guard(open, () => checkRange(range, value, ''));
}
