import { nearest, type Circuit, type Range, type Resistor, type Said } from '../../engine/index.ts';

/** A resistor that a slider can turn. */
export interface Turnable extends Resistor {
  readonly range: Range;
}

/** The resistor that is meant: the one of this label, else the only one with a range; or why there is none. */
export function turnableOf({ components }: Circuit, of: string): Turnable | Said {
  const resistors = components.filter((each) => each.kind === 'resistor');
  const turnable = resistors.filter((each): each is Turnable => each.range !== undefined);
  const named = turnable.find(({ id }) => id === of);
  if (named) return named;
  const [only] = turnable;
  if (only && turnable.length === 1 && !of) return only;
  const ids = components.map(({ id }) => id);
  if (!of) return { code: 'which resistor', data: { ids: turnable.map(({ id }) => id) } };
  if (ids.includes(of)) return { code: 'cannot be turned', data: { id: of } };
  return { code: 'no such component', data: { id: of, suggestion: nearest(of, ids) } };
}
