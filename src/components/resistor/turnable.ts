import {
  isResistor,
  isSecondTwin,
  type Circuit,
  type Component,
  type Range,
  type Resistor,
  type Said,
  type Track,
} from '../../engine/core.ts';
import { componentOf } from '../control/index.ts';

/** A resistor that a slider can turn, or a part of a potentiometer. */
export type Turnable = (Resistor | Track) & { readonly range: Range };

/** The resistor that is meant: the one of this label, else the only one with a range; or why there is none. */
export function turnableOf(circuit: Circuit, of: string): Turnable | Said {
  // The two parts of a potentiometer have one slider, unless the other part is named.
  const isMeant = (each: Component): boolean => each.id === of || !isSecondTwin(each);
  const turnable = circuit.components
    .filter(isResistor)
    .filter((each): each is Turnable => each.range !== undefined && isMeant(each));
  const found = componentOf(circuit, of, 'resistor', turnable);
  const isFixed = of && 'code' in found && found.code === 'which component';
  return isFixed ? { code: 'cannot be turned', data: { id: of } } : found;
}
