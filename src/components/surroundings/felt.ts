import {
  feltBy,
  isSurrounding,
  nearest,
  surroundingNames,
  surroundingOf,
  type Circuit,
  type Quantity,
  type Said,
  type Surrounding,
} from '../../engine/core.ts';
import type { Subject } from '../control/index.ts';

/** What of a circuit's surroundings is to be turned, as it stands. */
export interface Felt extends Subject {
  readonly id: '';
  readonly quantities: readonly (readonly [Surrounding, Quantity])[];
}

/** What a circuit's sensors feel of its surroundings: what is named, else all of it; or why there is nothing to turn. */
export function feltIn(circuit: Circuit, of: string): Felt | Said {
  const all = surroundingNames;
  if (of && !isSurrounding(of)) {
    const data = { found: of, of: 'part of the surroundings', suggestion: nearest(of, all), choices: all };
    return { code: 'not a choice', data };
  }
  const wanted = all.filter((name) => !of || name === of);
  const felt = feltBy(circuit).filter((name) => wanted.includes(name));
  if (felt.length === 0) return { code: 'nothing feels', data: { names: wanted } };
  return { id: '', quantities: felt.map((name) => [name, surroundingOf(circuit, name)]) };
}
