import { conditions, isCondition, nearest, type Condition, type Kind, type Range } from '../circuit/index.ts';
import { Fraction, quantity as measure, type Quantity } from '../quantity/index.ts';
import type { Cursor } from './cursor.ts';
import { fields, isRated, kindOfWord, kindWords, type Sign } from './fields.ts';
import { quantityText } from './quantity-text.ts';
import { rangeOf, readRange, type RangeReading } from './range.ts';
import type { Token } from './token.ts';

type Value = Quantity | Fraction | RangeReading | Range | Condition | number | boolean;

/** What stands behind a label, by the sign that tells it. */
export interface Properties {
  readonly values: ReadonlyMap<Sign, Value>;
  /** Whether the resistance is a code, so that it has no unit to lend to a range. */
  readonly coded: boolean;
}

const alike = new Map([
  ['on', 'closed'],
  ['off', 'open'],
  ['opened', 'open'],
  ['shut', 'closed'],
  ['parallel', '∥'],
  ['series', '+'],
  ['over', 'across'],
  ['internal', 'r'],
]);
/** Signs that suit every kind. */
const always: readonly Sign[] = ['reversed', 'condition', 'fault', 'hidden'];
/** Words that are true where they stand. */
const marks: readonly string[] = ['reversed', 'hidden', 'filament', 'blown'] satisfies readonly Sign[];
const words = ['open', 'closed', ...marks, ...conditions, 'secretly'];
/** The same, and those that stand before a label. */
const leading = [...words, 'across', ...kindWords];
const ratings = { V: true, W: true, A: true };
/** Whether its value may be 0 or turned round. */
const drives = (kind: Kind): boolean => kind === 'supply' || kind === 'source';
const isSensor = (kind: Kind): boolean => kind === 'thermistor' || kind === 'ldr';
/** Whether its resistance may be a code. */
const isCoded = (kind: Kind): boolean => kind === 'resistor' || kind === 'potentiometer';
const cellLimit = 1000;

/** Reads the properties of a component; its label is the token just read. */
export function readProperties(cursor: Cursor, label: Token, kind: Kind): Properties {
  const values = new Map<Sign, Value>();
  const taken: Readonly<Partial<Record<Sign, string | undefined>>> = fields[kind];
  const units = (['V', 'Ω', 'W', 'A'] as const).filter((unit) => unit in taken);
  let coded = false;
  /** The internal resistance as written, while a range behind it could be that of either value. */
  let inside = '';

  /** Keeps what was read from `start` on, if it suits the kind and is not told yet. */
  const keep = (start: Token, sign: Sign, value: Value): void => {
    if (!(sign in taken) && !always.includes(sign)) {
      // Whatever has an internal resistance has no other one.
      if (sign === 'Ω' && 'r' in taken && values.has('V'))
        cursor.wrong(start, 'write instead', undefined, `r ${cursor.since(start)}`);
      cursor.wrong(start, 'unsuitable', undefined, '', label.text);
    }
    // A lamp is told by its resistance, or by two of its ratings.
    const told = units.filter((unit) => values.has(unit)).length;
    const full =
      isRated(kind) &&
      (sign === 'Ω' || sign in ratings) &&
      (values.has('Ω') || told > (sign === 'Ω' ? 0 : 1));
    if (values.has(sign) || full) cursor.wrong(start, 'one too many');
    values.set(sign, value);
    inside = '';
  };

  /** Says that a number lacks its unit, or is the number of the label. */
  const refuseBare = (start: Token, { text }: Token, unit: string): never => {
    const found = cursor.since(start);
    if (cursor.ahead(-2) === label && !/\d/.test(label.text) && cursor.is('number', 'quantity')) {
      cursor.wrong(label, 'write instead', undefined, label.text + text);
    }
    if (cursor.take('%')) cursor.wrong(start, 'write instead', undefined, `±${found}%`);
    if (cursor.take('..') && (cursor.take('quantity') ?? cursor.take('number'))) {
      cursor.wrong(start, 'write instead', undefined, `[${cursor.since(start)}]`);
    }
    return cursor.wrong(start, 'unit missing', found, `${found} ${unit}`);
  };

  /** Reads a number with its unit, or a code right behind the label. */
  const readQuantity = (start: Token, unit: string): Quantity => {
    const first = cursor.ahead(-1) === label && isCoded(kind);
    const number = cursor.take('number');
    if (number) refuseBare(start, number, unit);
    const code = cursor.take('code') ?? cursor.take('label');
    const { quantity } = code ?? cursor.expect('quantity', 'number');
    if (!quantity) return cursor.fail('number');
    if (code && !first) cursor.wrong(start, 'write instead', undefined, quantityText(quantity));
    coded ||= code !== undefined;
    return quantity;
  };

  const readValue = (start: Token): void => {
    const negative = cursor.take('–');
    const count = cursor.ahead(1).type === '×' ? cursor.take('number') : undefined;
    if (count) cursor.take('×');
    const { value, unit, prefix, decimals } = readQuantity(start, units[0] ?? 'Ω');
    const found = cursor.since(start);
    if (!count && cursor.is('×') && cursor.ahead(1).type === 'number') {
      cursor.take('×');
      cursor.wrong(
        start,
        'write instead',
        `${found} × ${cursor.token.text}`,
        `${cursor.token.text} × ${found}`,
      );
    }
    const cells = count ? Number(count.text) : 1;
    if (!(Number.isInteger(cells) && cells > 0 && cells <= cellLimit)) {
      cursor.halt(start, {
        code: 'out of range',
        data: { found: count?.text ?? '', low: '1', high: `${cellLimit}` },
      });
    }
    if (count) keep(start, '×', cells);
    if (negative && !drives(kind)) {
      cursor.halt(start, { code: 'must not be negative', data: { found } });
    }
    if (value.n === 0n && !drives(kind) && (unit !== 'Ω' || isRated(kind) || isSensor(kind))) {
      cursor.halt(start, { code: 'must be positive', data: { found } });
    }
    const places = count ? cursor.ahead(-1).number?.decimals : decimals;
    keep(start, unit, measure(value.mul(negative ? -cells : cells), unit, prefix, places));
  };

  /** Reads `[0..2] 0.5 Ω` or `0.5 Ω` behind `r`. */
  const readInside = (start: Token): void => {
    const open = cursor.token;
    const reading = cursor.take('[') && readRange(cursor, open);
    const ohms = readQuantity(cursor.token, 'Ω');
    if (ohms.unit !== 'Ω') cursor.wrong(start, 'unsuitable', undefined, '', label.text);
    keep(start, 'r', ohms);
    if (reading) keep(start, 'r[', rangeOf(cursor, label.text, ohms, reading, false));
    else inside = cursor.since(start);
  };

  const readMainRange = (start: Token): void => {
    const reading = readRange(cursor, start);
    const found = cursor.since(start);
    if (inside) {
      cursor.wrong(start, 'two readings', found, inside.replace('r', `r ${found}`), `${found} ${inside}`);
    }
    keep(start, '[', reading);
  };

  const readTolerance = (start: Token): void => {
    const token = cursor.expect('number', 'number');
    cursor.expect('%', 'percent', '%');
    const value = token.number?.value ?? new Fraction(0);
    const found = `${token.text}%`;
    if (value.n === 0n) cursor.halt(token, { code: 'must be positive', data: { found } });
    if (value.compare(100) >= 0) cursor.halt(token, { code: 'not below', data: { found, high: '100%' } });
    keep(start, '±', value);
  };

  /** Reads `broken` or `bridged` behind `secretly`. */
  const readFault = (start: Token): void => {
    const word = cursor.take('word')?.text;
    if (!isCondition(word)) {
      const [meant = 'broken'] = [nearest(word ?? '', conditions)].filter(Boolean);
      return cursor.wrong(start, 'write instead', undefined, `secretly ${meant}`);
    }
    keep(start, 'fault', word);
  };

  const readWord = (start: Token): void => {
    const { text } = start.text === 'in' ? (cursor.take('word') ?? start) : start;
    if (text === 'open' || text === 'closed') keep(start, 'open', text === 'closed');
    else if (marks.includes(text)) keep(start, text as Sign, true);
    else if (isCondition(text)) keep(start, 'condition', text);
    else if (text === 'secretly') readFault(start);
    else if (text === 'r') readInside(start);
    else {
      const meant = alike.get(text) ?? nearest(text, cursor.is('label') ? leading : words);
      cursor.wrong(start, meant ? 'write instead' : 'unexpected character', undefined, meant);
    }
  };

  for (;;) {
    const start = cursor.token;
    const { type, text } = start;
    const next = cursor.ahead(1).type;
    const valued = next === 'number' || next === 'quantity';
    const first = cursor.ahead(-1) === label && isCoded(kind);
    const coding = first && type === 'label' && start.quantity && !cursor.labels.has(text);
    if (cursor.is('number', 'quantity', 'code') || (valued && type === '–') || coding) readValue(start);
    else if (text === 'R' && valued && kind === 'supply') {
      cursor.take('label');
      cursor.take(next);
      const found = cursor.since(start);
      cursor.wrong(start, 'two readings', found, found.replace('R', 'r'), `+ ${found}`);
    } else if (start.mistake?.code === 'one too many') cursor.take(type);
    else if (cursor.take('[')) readMainRange(start);
    else if (cursor.take('±')) readTolerance(start);
    else if (type === 'word' && text !== 'across' && text !== 'ends' && text !== 'at' && !kindOfWord(text)) {
      cursor.take('word');
      readWord(start);
    } else if (cursor.is('+', '∥', ';', '(', ')', '–', '@', 'label', 'word', 'end')) return { values, coded };
    else cursor.fail('join');
  }
}
