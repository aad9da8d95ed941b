import type { Said } from '../../engine/core.ts';

/** The head of a column: "V / mV", or "V_R1 / mV" with a component. */
export interface Heading {
  /** As the course writes it: `U` for a p.d. in some. */
  readonly letter: string;
  /** The component, '' where the rows say which. */
  readonly of: string;
  /** With its prefix. */
  readonly unit: string;
}

/** One cell: a reading, or room for the pupil to write one. */
export interface Cell {
  /** The quantity, such as `V_R1`. */
  readonly name: string;
  /** A number without its unit, "no current", "—", "?"; undefined where the pupil writes. */
  readonly text: string | undefined;
  /** What the reading has done since it was held; '' where there is nothing to compare. */
  readonly change?: string;
}

/** A row with its head: a component's label, or a number. */
export interface Row {
  readonly head: string;
  readonly cells: readonly Cell[];
}

/** A table, whatever is in it. */
export interface Grid {
  /** The head of the heads of the rows. */
  readonly corner: string;
  readonly headings: readonly Heading[];
  readonly rows: readonly Row[];
}

/** A table, and which of the page's wishes cannot be had. */
export interface Made {
  readonly grid: Grid;
  readonly wrong: readonly Said[];
}

/** "V / mV": a quantity divided by its unit is the number in the cell. */
export function headingText({ letter, of, unit }: Heading): string {
  return `${letter}${of && `_${of}`} / ${unit}`;
}
