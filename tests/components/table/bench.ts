import '../../../src/components/table/define.ts';
import type { RheoletTable } from '../../../src/components/table/index.ts';
import { besideBoard, type BesideBoard } from '../beside-board.ts';

/** 6 V drive 0.3 A through 12 Ω and, behind them, 0.2 A and 0.1 A through 12 Ω and 24 Ω side by side. */
export const quay = 'B1 6 V + A1 + R1 [4..40] 12 Ω + (R2 12 Ω ∥ L1 24 Ω); V1 across R1';

/** A table with its attributes, beside a board with a circuit. */
export function bench(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<BesideBoard<RheoletTable>> {
  return besideBoard<RheoletTable>('rheolet-table', circuit, attributes);
}

/** The cells of a table as they are seen, row by row, heads included; a cell to be filled in is "_" and what is typed. */
export function cells(made: BesideBoard<RheoletTable>): string[][] {
  return made.all('tr').map((row) =>
    [...row.querySelectorAll<HTMLElement>('th, td:not(.act)')].map((cell) => {
      const input = cell.querySelector('input');
      return input ? `_${input.value}` : cell.textContent.replace(/\s+/g, ' ').trim();
    }),
  );
}

/** A button by its name. */
export function button(made: BesideBoard<RheoletTable>, name: string): HTMLButtonElement {
  const buttons = made.all('button') as HTMLButtonElement[];
  return buttons.find((each) => (each.ariaLabel ?? each.textContent).trim() === name)!;
}

/** The box of a cell, by its name. */
export function box(made: BesideBoard<RheoletTable>, name: string): HTMLInputElement {
  return (made.all('input') as HTMLInputElement[]).find((each) => each.ariaLabel === name)!;
}

/** Presses a button. */
export async function press(made: BesideBoard<RheoletTable>, name: string): Promise<void> {
  button(made, name).click();
  await made.element.updateComplete;
}
