/** Pixels. Columns are as wide as their texts, as "12.0 mV" and, `letter` by letter, a label; or as narrow as can still be pointed at. */
const size = { left: 52, right: 8, text: 62, letter: 9.5, least: 20 };

/** Where a component stands from side to side. */
export interface Place {
  readonly x: number;
  /** The middle of its texts: nearly always `x`. */
  readonly middle: number;
  /** The row of texts that has room for its own, from 0. */
  readonly row: number;
}

/** How a level diagram uses the room it has from side to side. */
export interface Sideways {
  readonly left: number;
  readonly width: number;
  readonly column: number;
  /** One for each column. */
  readonly places: readonly Place[];
  /** The rows of texts under the diagram. */
  readonly rows: number;
}

/** Columns for these labels in so many pixels: side by side where there is room, else closer, with their texts in several rows. */
export function sideways(labels: readonly string[], room: number): Sideways {
  const { left, right, text, letter, least } = size;
  const texts = labels.map(({ length }) => Math.max(text, length * letter));
  const fair = ((room || Infinity) - left - right) / labels.length;
  const column = Math.max(least, Math.min(fair, Math.max(...texts)));
  const width = left + labels.length * column + right;
  const ends: number[] = [];
  const places = texts.map((wide, place): Place => {
    const x = left + (place + 0.5) * column;
    const middle = Math.max(wide / 2, Math.min(x, width - wide / 2));
    const free = ends.findIndex((end) => end <= middle - wide / 2);
    const row = free < 0 ? ends.length : free;
    ends[row] = middle + wide / 2;
    return { x, middle, row };
  });
  return { left, width, column, places, rows: ends.length };
}
