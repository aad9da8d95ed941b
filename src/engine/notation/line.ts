import { checkSurrounding, type Surrounding, type Surroundings } from '../circuit/index.ts';
import type { Quantity, Unit } from '../quantity/index.ts';
import { readComponent, startsComponent } from './component.ts';
import type { Cursor } from './cursor.ts';
import { readPlace, readSpan, type Place } from './place.ts';
import { readSeries, type Item, type Part } from './series.ts';
import type { Token } from './token.ts';

/** A component with its place. */
export type Placed = Item & { readonly place: Place };

/** A line as it was read: a chain (unless all is placed), what is placed, and the ends that are named. */
export interface Line {
  readonly chain: Part | undefined;
  readonly placed: readonly Placed[];
  readonly ends: Place | undefined;
  /** The junction of the 0 V mark. */
  readonly zero: Token | undefined;
  readonly surroundings: Surroundings;
}

/** Says that a component in a chain cannot have a place. */
function refusePlaces(cursor: Cursor, part: Part): void {
  if ('parts' in part) for (const inner of part.parts) refusePlaces(cursor, inner);
  else if (part.type === 'component' && part.place) {
    const { at, text } = part.place;
    cursor.flag(at, 'placed in chain', text, `; ${part.label.text} ${text}`);
  }
}

/** What is told of the surroundings, by its unit. */
const names: Readonly<Partial<Record<Unit, Surrounding>>> = { '°C': 'temperature', lx: 'light' };

/** Reads a whole line. */
export function readLine(cursor: Cursor): Line {
  const first = readSeries(cursor);
  const placed: Placed[] = [];
  let ends: Place | undefined;
  let zero: Token | undefined;
  const surroundings: Partial<Record<Surrounding, Quantity>> = {};
  const place = first.type === 'component' ? first.place : undefined;
  if (first.type === 'component' && place) placed.push({ ...first, place });
  else refusePlaces(cursor, first);
  const readSurrounding = (at: Token): void => {
    const negative = cursor.take('–');
    const token = cursor.expect('quantity', 'surrounding', '5 °C');
    const { value, unit, ...rest } = token.quantity ?? cursor.fail('surrounding');
    const name = names[unit];
    if (!name) return cursor.wrong(token, 'expected', undefined, '5 °C', 'surrounding');
    if (surroundings[name]) cursor.wrong(at, 'one too many');
    const felt = { ...rest, unit, value: negative ? value.neg() : value };
    cursor.guard(token, () => checkSurrounding(name, felt, name));
    surroundings[name] = felt;
  };
  /** Reads `0 V @q`. */
  const readZero = (at: Token): void => {
    cursor.take('quantity');
    const junction = cursor.expect('@', 'junction');
    const { quantity } = at;
    if (quantity?.unit !== 'V' || quantity.value.n !== 0n)
      cursor.wrong(at, 'write instead', at.text, `0 V @${junction.text}`);
    if (zero) cursor.wrong(at, 'one too many');
    zero = junction;
  };
  const readStatement = (): void => {
    cursor.expect(';', 'statement', ';');
    const at = cursor.token;
    if (cursor.take('word', 'ends')) {
      const span = readSpan(cursor);
      if (ends) cursor.wrong(at, 'one too many');
      ends = { ...span, at };
    } else if (cursor.take('word', 'at')) readSurrounding(at);
    else if (at.type === 'quantity' && cursor.ahead(1).type === '@') readZero(at);
    else if (startsComponent(at)) placed.push({ ...readComponent(cursor), place: readPlace(cursor) });
    else if (!cursor.is(';', 'end')) cursor.fail('component');
  };
  while (!cursor.is('end')) cursor.attempt(readStatement, '');
  return { chain: place ? undefined : first, placed, ends, zero, surroundings };
}
