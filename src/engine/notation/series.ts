import { nearest } from '../circuit/index.ts';
import type { Unit } from '../quantity/index.ts';
import { readComponent, startsComponent, type Draft } from './component.ts';
import { written, type Cursor } from './cursor.ts';
import { kindWords } from './fields.ts';
import { mistake } from './mistake.ts';
import { readPlace, type Place } from './place.ts';
import type { Token } from './token.ts';

/** A component; with a place where one stands behind it, which is right only in a statement of its own. */
export interface Item extends Draft {
  readonly place?: Place;
}

/** The name of a junction between two components. */
interface Junction {
  readonly type: 'junction';
  readonly token: Token;
}

/** A chain, or branches side by side. */
interface Group {
  readonly type: 'series' | 'parallel';
  readonly parts: readonly Part[];
}

/** A piece of a chain. */
export type Part = Item | Junction | Group;

/** The letter of what has a value of a unit alone. */
const owners: Readonly<Partial<Record<Unit, string>>> = { V: 'B', Ω: 'R' };

/** Says what is wrong where a component should start. */
function refuseStart(cursor: Cursor): never {
  const { token } = cursor;
  const { type, text, at, quantity } = token;
  if (text === 'total') cursor.wrong(token, 'label reserved', text);
  if (type === 'word') {
    const [run = text] = /^\p{L}+\d+/u.exec(cursor.text.slice(at, at + 30)) ?? [];
    const meant = run === text ? nearest(text, kindWords) : run.charAt(0).toUpperCase() + run.slice(1);
    if (meant) cursor.wrong(token, 'write instead', run, meant);
  }
  const next = cursor.ahead(1);
  const letter = quantity && owners[quantity.unit];
  const label = next.type === 'label' ? next.text : letter && cursor.free(letter);
  cursor.fail('component', quantity && label && `${label} ${text}`);
}

/** Reads a component; with its place, where one follows. */
function readPart(cursor: Cursor): Item {
  const item = readComponent(cursor);
  const next = cursor.ahead(1).type;
  const placed = cursor.token.text === 'across' || (cursor.is('@') && (next === '–' || next === '@'));
  return placed ? { ...item, place: readPlace(cursor) } : item;
}

/** Reads a component, a junction, or a chain in brackets; nothing after a mistake. */
function readItem(cursor: Cursor): Part {
  const { token } = cursor;
  const nothing: Part = { type: 'series', parts: [] };
  if (startsComponent(token)) return cursor.attempt(() => readPart(cursor)) ?? nothing;
  if (cursor.take('@')) return { type: 'junction', token };
  if (token.type === '[') {
    return cursor.attempt<Part>(() => cursor.wrong(token, 'write instead', '[', '('), '') ?? nothing;
  }
  if (!cursor.take('(')) return cursor.attempt<Part>(() => refuseStart(cursor)) ?? nothing;
  const inner = readSeries(cursor, true);
  if (!cursor.take(')')) cursor.flag(token, 'bracket alone', '(', ')');
  return inner;
}

/** Reads `+`, or says that it is missing where the next item follows without it. */
function readJoin(cursor: Cursor): boolean {
  const { token } = cursor;
  if (cursor.take('+') ?? cursor.take('∥')) return true;
  if (cursor.take('–')) cursor.flag(token, 'dash in series', token.text, '+');
  else if (!startsComponent(token) && !cursor.is('(', '@')) return false;
  else cursor.flag(token, 'join missing', written(token), `+ ${written(token)}`);
  return true;
}

/** Reads branches with `∥` between; one alone is that branch. */
function readParallel(cursor: Cursor): Part {
  const first = readItem(cursor);
  const parts = [first];
  while (cursor.take('∥')) parts.push(readItem(cursor));
  return parts.length > 1 ? { type: 'parallel', parts } : first;
}

/** Reads a chain, inside brackets or not; one item alone is that item. */
export function readSeries(cursor: Cursor, inside = false): Part {
  const first = readParallel(cursor);
  const parts = [first];
  for (;;) {
    const { token } = cursor;
    if (!inside && cursor.take(')')) cursor.note(token, mistake('bracket alone', ')'));
    else if (readJoin(cursor)) parts.push(readParallel(cursor));
    else return parts.length > 1 ? { type: 'series', parts } : first;
  }
}
