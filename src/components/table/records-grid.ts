import { say, type Said } from '../../engine/core.ts';
import { unitOf, type Snapshot } from '../link/index.ts';
import { columnOf, entryOf, numberIn } from './entry.ts';
import type { Made, Row } from './grid.ts';
import type { RecordedRow } from './records.ts';
import { wordsOf } from './wish.ts';

/** The quantities that are recorded, by name (U is a V), and the sentences of those there are not. */
function recorded(
  { readings }: Snapshot,
  record: string,
): { readonly names: readonly string[]; readonly wrong: readonly Said[] } {
  const words = wordsOf(record).map((name) => name.replace(/^U_/, 'V_'));
  const missing = (name: string): readonly Said[] => {
    const reason = readings.reason(name);
    return reason?.code === 'no such quantity' ? [reason] : [];
  };
  return { names: words.filter((name) => missing(name).length === 0), wrong: words.flatMap(missing) };
}

/** What a circuit reads at its present setting, exactly, also while something moves. */
export function rowNow(snapshot: Snapshot, record: string): RecordedRow {
  const { start, circuit, settings, solution, course, covered } = snapshot;
  const rest = { start, circuit, settings, solution, readings: solution, course, covered };
  return Object.fromEntries(recorded(rest, record).names.map((name) => [name, entryOf(rest, name)]));
}

/** A numbered row for each setting that was recorded, a column for each quantity; and which quantities there are not. */
export function recordsGrid(snapshot: Snapshot, record: string, rows: readonly RecordedRow[]): Made {
  const { course } = snapshot;
  const { names, wrong } = recorded(snapshot, record);
  const columns = names.map((name) => {
    const present = rows.flatMap((row) => row[name] ?? []);
    const entries = present.length > 0 ? present : [entryOf(snapshot, name)];
    return { name, column: columnOf(snapshot, entries, unitOf(name)) };
  });
  const headings = columns.map(({ name, column }) => {
    const [letter = '', ...of] = name.split('_');
    const unit = column.prefix + column.unit;
    return { letter: letter === 'V' ? course.letter : letter, of: of.join('_'), unit };
  });
  const cells = (row: RecordedRow): Row['cells'] =>
    columns.map(({ name, column }) => {
      const { value, words } = row[name] ?? { value: undefined, words: '' };
      return { name, text: value === undefined ? words : numberIn(column, value) };
    });
  return {
    grid: {
      corner: say({ code: 'row number', data: {} }),
      headings,
      rows: rows.map((row, place) => ({ head: `${place + 1}`, cells: cells(row) })),
    },
    wrong,
  };
}
