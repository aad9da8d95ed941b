import { isSupply, say } from '../../engine/core.ts';
import { extremesOf } from '../extremes/index.ts';
import { unitOf, type Snapshot } from '../link/index.ts';
import { columnOf, entryOf, isSigned, numberIn } from './entry.ts';
import type { Cell, Made } from './grid.ts';
import { columnsOf, givenOf, rowsOf } from './wish.ts';

/** What a page asks of a table of components. */
export interface ReadingsWish {
  readonly of: string;
  readonly columns: string;
  readonly mode: string;
  readonly given: string;
  readonly totals: boolean;
}

/** Reasons why a cell has no meaning, whatever the circuit is set to. */
const meaningless: readonly string[] = ['no such quantity', 'several supplies', 'no supply'];

/** The quantity that is read for a cell: p.d. and power of the whole are those at the terminals of the one supply. */
function sourceOf({ circuit }: Snapshot, name: string): string {
  const [only, ...more] = circuit.components.filter(isSupply);
  const [, letter] = /^([VP])_total$/.exec(name) ?? [];
  return letter && only && more.length === 0 ? `${letter}_${only.id}` : name;
}

/** What the heads of columns go by: what a table is filled in with keeps its unit, whatever is turned, covered or uncovered. */
function measureOf(snapshot: Snapshot, mode: string): Snapshot {
  const { start, settings, solution, course } = snapshot;
  const [first] = extremesOf(start);
  return first && (mode === 'blank' || mode === 'part')
    ? { start, settings, solution, course, ...first, covered: false }
    : snapshot;
}

/** A row for each component (and one for the whole), a column for each quantity; and which wishes cannot be had. */
export function readingsGrid(snapshot: Snapshot, wish: ReadingsWish): Made {
  const wanted = columnsOf(wish.columns);
  const chosen = rowsOf(snapshot, wish.of);
  const heads = wish.totals ? [...chosen.found, 'total'] : chosen.found;
  const names = wanted.found.flatMap(({ letter }) => heads.map((head) => `${letter}_${head}`));
  const given = givenOf(wish.mode, wish.given, names);
  const has = (name: string): boolean =>
    !meaningless.includes(snapshot.readings.reason(sourceOf(snapshot, name))?.code ?? '');

  const measure = measureOf(snapshot, wish.mode);
  const columns = wanted.found.flatMap(({ letter, prefix }) => {
    const entries = heads.map((head) => {
      const name = `${letter}_${head}`;
      return { name, entry: has(name) ? entryOf(snapshot, sourceOf(snapshot, name)) : undefined };
    });
    const present = entries.flatMap(({ name, entry }) =>
      entry ? entryOf(measure, sourceOf(snapshot, name)) : [],
    );
    if (present.length === 0) return [];
    const column = columnOf(snapshot, present, unitOf(letter), prefix);
    const cells = entries.map(({ name, entry }): Cell => {
      if (!entry) return { name, text: '—' };
      if (!given.found.includes(name)) return { name, text: undefined };
      const change = snapshot.comparison?.changeOf(snapshot, sourceOf(snapshot, name), {
        as: isSigned(snapshot, name) ? 'signed' : 'magnitude',
        prefix: column.prefix,
      });
      return { name, text: entry.words || numberIn(column, entry.value ?? 0), change: change?.text ?? '' };
    });
    const shown = letter === 'V' ? snapshot.course.letter : letter;
    return { heading: { letter: shown, of: '', unit: column.prefix + column.unit }, cells };
  });
  const rows = heads.map((id, place) => ({
    head: id === 'total' ? say({ code: 'total', data: {} }) : id,
    cells: columns.flatMap(({ cells }) => cells[place] ?? []),
  }));
  const corner = say({ code: 'component', data: {} });
  return {
    grid: { corner, headings: columns.map(({ heading }) => heading), rows },
    wrong: [...wanted.wrong, ...chosen.wrong, ...given.wrong],
  };
}
