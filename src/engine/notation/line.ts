import { readComponent, startsComponent } from './component.ts';
import type { Cursor } from './cursor.ts';
import { mistake } from './mistake.ts';
import { readPlace, readSpan, type Place } from './place.ts';
import { readSeries, type Item, type Part } from './series.ts';

/** A component with its place. */
export type Placed = Item & { readonly place: Place };

/** A line as it was read: a chain (unless all is placed), what is placed, and the ends that are named. */
export interface Line {
  readonly chain: Part | undefined;
  readonly placed: readonly Placed[];
  readonly ends: Place | undefined;
}

/** Says that a component in a chain cannot have a place. */
function refusePlaces(cursor: Cursor, part: Part): void {
  if ('parts' in part) for (const inner of part.parts) refusePlaces(cursor, inner);
  else if (part.type === 'component' && part.place) {
    const { at, text } = part.place;
    cursor.note(at, mistake('placed in chain', text, `; ${part.label.text} ${text}`));
  }
}

/** Reads a whole line. */
export function readLine(cursor: Cursor): Line {
  const first = readSeries(cursor);
  const placed: Placed[] = [];
  let ends: Place | undefined;
  const place = first.type === 'component' ? first.place : undefined;
  if (first.type === 'component' && place) placed.push({ ...first, place });
  else refusePlaces(cursor, first);
  const readStatement = (): void => {
    cursor.expect(';', 'statement', ';');
    const at = cursor.token;
    if (cursor.take('word', 'ends')) {
      const span = readSpan(cursor);
      if (ends) cursor.wrong(at, 'one too many');
      ends = { ...span, at };
    } else if (startsComponent(at)) placed.push({ ...readComponent(cursor), place: readPlace(cursor) });
    else if (!cursor.is(';', 'end')) cursor.fail('component');
  };
  while (!cursor.is('end')) cursor.attempt(readStatement, '');
  return { chain: place ? undefined : first, placed, ends };
}
