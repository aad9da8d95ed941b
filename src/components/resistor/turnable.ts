import type { Circuit, Range, Resistor, Said } from '../../engine/core.ts';
import { componentOf } from '../control/index.ts';

/** A resistor that a slider can turn. */
export interface Turnable extends Resistor {
  readonly range: Range;
}

/** The resistor that is meant: the one of this label, else the only one with a range; or why there is none. */
export function turnableOf(circuit: Circuit, of: string): Turnable | Said {
  const resistors = circuit.components.filter((each) => each.kind === 'resistor');
  const turnable = resistors.filter((each): each is Turnable => each.range !== undefined);
  const found = componentOf(circuit, of, 'resistor', turnable);
  const isFixed = of && 'code' in found && found.code === 'which component';
  return isFixed ? { code: 'cannot be turned', data: { id: of } } : found;
}
