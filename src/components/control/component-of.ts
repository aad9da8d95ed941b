import { nearest, type Circuit, type Component, type Said } from '../../engine/core.ts';

/** The component that is meant: of those that may be, the one of this label, else the only one; or why there is none. */
export function componentOf<C extends Component>(
  { components }: Circuit,
  of: string,
  kind: 'resistor' | 'supply' | 'switch',
  may: readonly C[],
): C | Said<'no such component' | 'which component'> {
  const named = may.find(({ id }) => id === of);
  if (named) return named;
  const [only] = may;
  if (only && may.length === 1 && !of) return only;
  const ids = components.map(({ id }) => id);
  return of && !ids.includes(of)
    ? { code: 'no such component', data: { id: of, suggestion: nearest(of, ids) } }
    : { code: 'which component', data: { found: of, kind, ids: may.map(({ id }) => id) } };
}
