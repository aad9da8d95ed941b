import type { Component, Switch } from './model.ts';
import { twinOf } from './twin-of.ts';

/** A contact of a changeover switch. */
export type Contact = Switch & { readonly kind: 'changeover' };

/** Whether a component is a contact of a changeover (two-way) switch. */
export const isContact = (component: Component): component is Contact => component.kind === 'changeover';

/** The components with the other contact of a changeover switch put the other way. */
export function changedOver(components: readonly Component[], { id, closed }: Contact): readonly Component[] {
  const other = twinOf(id);
  return components.map((each) =>
    each.id === other && isContact(each) && each.closed === closed ? { ...each, closed: !closed } : each,
  );
}
