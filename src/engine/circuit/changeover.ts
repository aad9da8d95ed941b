import type { FormatData } from './codes.ts';
import type { Component, Switch } from './model.ts';

/** A contact of a changeover switch. */
type Contact = Switch & { readonly kind: 'changeover' };

/** Whether a component is a contact of a changeover (two-way) switch. */
export const isContact = (component: Component): component is Contact => component.kind === 'changeover';

/** The label of the other contact of a changeover switch: S1b of S1a; '' where a label is not that of a contact. */
export const otherContact = (id: string): string =>
  /[ab]$/.test(id) ? id.slice(0, -1) + (id.endsWith('a') ? 'b' : 'a') : '';

/** What can be wrong with the contacts of changeover switches. */
type ContactCode = 'contact missing' | 'contacts apart' | 'contacts alike';

/** A contact, and what is wrong with it and the other one of its switch. */
export interface WrongContact {
  readonly id: string;
  readonly code: ContactCode;
  readonly data: FormatData[ContactCode];
}

/** The contacts that do not make changeover switches: each has another one, with an end in common, and one of the two is closed. */
export function wrongContacts(components: readonly Component[]): readonly WrongContact[] {
  const contacts = new Map(components.filter(isContact).map((each) => [each.id, each]));
  return [...contacts.values()].flatMap((one): readonly WrongContact[] => {
    const { id } = one;
    const data = { id, other: otherContact(id) };
    const other = contacts.get(data.other);
    if (!other) return [{ id, code: 'contact missing', data }];
    if (id > data.other) return [];
    const meet = [one.from, one.to].some((node) => node === other.from || node === other.to);
    if (!meet) return [{ id, code: 'contacts apart', data }];
    return one.closed === other.closed ? [{ id, code: 'contacts alike', data }] : [];
  });
}

/** The components with the other contact of a changeover switch put the other way. */
export function changedOver(components: readonly Component[], { id, closed }: Contact): readonly Component[] {
  const other = otherContact(id);
  return components.map((each) =>
    each.id === other && isContact(each) && each.closed === closed ? { ...each, closed: !closed } : each,
  );
}

/** Whether a component is the second contact of a changeover switch, which its first one is turned with. */
export const isSecondContact = (component: Component): boolean =>
  isContact(component) && component.id.endsWith('b');
