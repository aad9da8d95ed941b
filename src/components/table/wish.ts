import { isMeter, nearest, type Component, type Prefix, type Said } from '../../engine/core.ts';
import { prefixIn, unitOf, type Snapshot } from '../link/index.ts';

/** The words of an attribute. */
export const wordsOf = (text: string): readonly string[] => text.split(/[\s,;]+/).filter(Boolean);

/** A column that is asked for: a quantity's letter, and the prefix that it is to have. */
export interface WantedColumn {
  readonly letter: string;
  readonly prefix: Prefix | undefined;
}

const letters = ['V', 'I', 'R', 'P'];
/** What a table shows of a quantity: its readings, room to write, or some of each. */
const modes = ['live', 'blank', 'part'];

/** Reads one word of `columns`: `V`, `I/mA`; U is a V. */
function columnOf(word: string): WantedColumn | Said {
  const [head = '', unit = ''] = word.split('/');
  const letter = head === 'U' ? 'V' : head;
  if (!letters.includes(letter))
    return { code: 'not a choice', data: { found: word, of: 'column', suggestion: '', choices: letters } };
  const prefix = prefixIn(unit, unitOf(letter));
  return unit && prefix === undefined
    ? { code: 'not its unit', data: { found: unit, unit: unitOf(letter) } }
    : { letter, prefix: unit ? prefix : undefined };
}

/** What was found of a list of wishes, and the sentences of what was not. */
export interface Choice<T> {
  readonly found: readonly T[];
  readonly wrong: readonly Said[];
}

function choice<T extends WantedColumn | string>(list: readonly (T | Said)[]): Choice<T> {
  const isSaid = (each: T | Said): each is Said => typeof each === 'object' && 'code' in each;
  return { found: list.filter((each): each is T => !isSaid(each)), wrong: list.filter(isSaid) };
}

/** The columns that are asked for; the usual four where none is. */
export function columnsOf(text: string): Choice<WantedColumn> {
  const words = wordsOf(text);
  return choice((words.length > 0 ? words : letters).map(columnOf));
}

/** Whether a component has a row unless rows are asked for: wires and ideal meters have nothing to tell. */
function usual(component: Component): boolean {
  return isMeter(component) ? component.resistance !== undefined : component.kind !== 'wire';
}

/** The components that have a row, by their labels. */
export function rowsOf({ circuit: { components } }: Snapshot, of: string): Choice<string> {
  const ids = components.map(({ id }) => id);
  const words = wordsOf(of);
  if (words.length === 0) return { found: components.filter(usual).map(({ id }) => id), wrong: [] };
  return choice<string>(
    words.map((id) =>
      ids.includes(id) ? id : { code: 'no such component', data: { id, suggestion: nearest(id, ids) } },
    ),
  );
}

/** The cells that are given to the pupil: all of a live table, the listed ones of a part-filled one. */
export function givenOf(mode: string, given: string, names: readonly string[]): Choice<string> {
  if (mode === 'blank') return { found: [], wrong: [] };
  if (mode !== 'part') {
    const suggestion = nearest(mode, modes);
    const data = { found: mode, of: 'mode', suggestion, choices: modes };
    return { found: names, wrong: mode && mode !== 'live' ? [{ code: 'not a choice', data }] : [] };
  }
  return choice<string>(
    wordsOf(given).map((word) => {
      const name = word.replace(/^U_/, 'V_');
      const suggestion = nearest(name, names);
      return names.includes(name) ? name : { code: 'no such quantity', data: { name: word, suggestion } };
    }),
  );
}
