import { exactText, type Fraction, type Quantity, type Range, type Surrounding } from '../../engine/core.ts';

/** A quantity that a slider turns. */
export interface Dial {
  /** What a board is asked to set: the label of a component, or the name of what surrounds the circuit. */
  readonly id: string;
  /** R, E, r or I, as in the name of a component's quantity: `r_B1`; else the same name. */
  readonly letter: 'R' | 'E' | 'r' | 'I' | Surrounding;
  readonly quantity: Quantity;
  /** The settings of the slider. */
  readonly range: Range;
  /** Whether it may be set between them as well. */
  readonly between?: true;
  /** Whether its value is kept from the pupil. */
  readonly hidden?: true | undefined;
}

/** A value of a dial as a board is asked for it: "20", "r 0.5". */
export function settingText({ letter, quantity }: Dial, value: Fraction = quantity.value): string {
  return (letter === 'r' ? 'r ' : '') + exactText(value);
}

/** The name of what it turns: `R_R1`, `temperature`. */
export function nameOf({ letter, id }: Dial): string {
  return letter === id ? id : `${letter}_${id}`;
}
