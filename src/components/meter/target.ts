import { isMeter, nearest, type Circuit, type Meter, type Said } from '../../engine/core.ts';

/** What a meter reads: a quantity by its name, and the components that it is about. */
export interface Target {
  readonly quantity: string;
  readonly about: readonly string[];
  /** The circuit's own meter; absent where a quantity is read that no meter of the circuit shows. */
  readonly meter?: Meter;
}

/** What `of` asks for: a meter by its id, a quantity by its name, or ('') the only meter; else why that cannot be read. */
export function targetOf({ components }: Circuit, of: string): Target | Said {
  const meters = components.filter(isMeter);
  const [first, second] = of ? meters.filter(({ id }) => id === of) : meters;
  if (first && !second) {
    const { kind, id } = first;
    return { quantity: `${kind === 'ammeter' ? 'I' : 'V'}_${id}`, about: [id], meter: first };
  }
  const ids = components.map(({ id }) => id);
  if (of.includes('_')) {
    const id = of.slice(of.indexOf('_') + 1);
    return { quantity: of, about: ids.filter((each) => each === id) };
  }
  const names = meters.map(({ id }) => id);
  if (!of) return { code: 'which meter', data: { meters: names } };
  if (ids.includes(of)) return { code: 'not a meter', data: { id: of } };
  return { code: 'no such component', data: { id: of, suggestion: nearest(of, names) } };
}
