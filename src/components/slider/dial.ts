import { exactText, type Component, type Fraction, type Quantity, type Range } from '../../engine/core.ts';

/** A quantity of a component that a slider turns. */
export interface Dial {
  readonly component: Component;
  /** R, E or r, as in the name of the quantity: `r_B1`. */
  readonly letter: 'R' | 'E' | 'r';
  readonly quantity: Quantity;
  readonly range: Range;
}

/** A value of a dial as a board is asked for it: "20", "r 0.5". */
export function settingText({ letter, quantity }: Dial, value: Fraction = quantity.value): string {
  return (letter === 'r' ? 'r ' : '') + exactText(value);
}
