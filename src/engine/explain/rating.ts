import type { Component } from '../circuit/index.ts';
import type { Quantity } from '../quantity/index.ts';
import { relation, term, type Relation, type Term } from './relation.ts';

/** The two things marked on a component that its resistance follows from, by their letters; none where a resistance is written. */
function marks(component: Component): readonly (readonly [letter: string, mark: Quantity, power: number])[] {
  const { kind } = component;
  if ((kind !== 'lamp' && kind !== 'heater' && kind !== 'motor') || component.resistance) return [];
  const { ratedVoltage: volts, ratedPower: watts, ratedCurrent: amperes } = component;
  if (volts && watts)
    return [
      ['V', volts, 2],
      ['P', watts, -1],
    ];
  if (volts && amperes)
    return [
      ['V', volts, 1],
      ['I', amperes, -1],
    ];
  if (!watts || !amperes) return [];
  return [
    ['P', watts, 1],
    ['I', amperes, -2],
  ];
}

const nameOf = (letter: string, { id }: Component): string => `${letter}_${id} rated`;

/** What is marked on a component: `V_L1 rated`, with its value. */
export const ratingsOf = (component: Component): readonly (readonly [string, Quantity['value']])[] =>
  marks(component).map(([letter, { value }]) => [nameOf(letter, component), value]);

/** That the resistance of what is marked, "12 V, 24 W", follows from it. */
export function fromRating(component: Component): readonly Relation[] {
  const factors = marks(component).map(([letter, , power]): Term =>
    term(nameOf(letter, component), 1, power),
  );
  const { id } = component;
  return factors.length > 0 ? [relation('rating', 'product', [id], `R_${id}`, ...factors)] : [];
}
