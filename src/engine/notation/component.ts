import { inForm, isCounted, isResistor, type Component, type Kind, type Range } from '../circuit/index.ts';
import type { Quantity } from '../quantity/index.ts';
import type { Cursor } from './cursor.ts';
import {
  fields,
  formOfWord,
  isKind,
  isRated,
  kindOfLabel,
  kindOfWord,
  letterOf,
  type Sign,
} from './fields.ts';
import { readProperties, type Properties } from './properties.ts';
import { rangeOf } from './range.ts';
import type { Token } from './token.ts';

/** A component as it stands in the line; where it is joined is not known yet. */
export interface Draft {
  readonly type: 'component';
  readonly label: Token;
  /** Its nodes are ''; absent after a mistake. */
  readonly component?: Component;
  readonly reversed: boolean;
}

/** The unit of the value that a kind must have, and an example of it. */
const needed: Readonly<Partial<Record<Kind, readonly [Sign, string]>>> = {
  supply: ['V', '6 V'],
  source: ['A', '0.5 A'],
  resistor: ['Ω', '12 Ω'],
  potentiometer: ['Ω', '12 Ω'],
  thermistor: ['Ω', '10 kΩ'],
  ldr: ['Ω', '10 kΩ'],
  fuse: ['A', '2 A'],
};

/** Makes the component of its properties. */
function assemble(
  cursor: Cursor,
  label: Token,
  kind: Kind,
  { values, coded }: Properties,
  word?: Token,
): Component {
  const id = label.text;
  const ratings = ['V', 'W', 'A'].filter((unit) => values.has(unit as Sign)).length;
  const [unit, example] = needed[kind] ?? [];
  if (unit && !values.has(unit)) cursor.wrong(label, 'value missing', id, `${id} ${example ?? ''}`);
  if (isRated(kind) && !values.has('Ω') && ratings < 2) {
    cursor.halt(label, { code: 'lamp needs two ratings', data: { id } });
  }
  if (values.has('filament') && values.has('Ω')) {
    cursor.halt(label, { code: 'filament needs two ratings', data: { id } });
  }
  const names: Readonly<Partial<Record<Sign, string | undefined>>> = fields[kind];
  const told: Record<string, unknown> = { id, kind, from: '', to: '' };
  if ('open' in names) told['closed'] = false;
  for (const [sign, value] of values) if (sign !== 'reversed') told[names[sign] ?? sign] = value;
  // The table of fields says which belong to which kind.
  const component = told as unknown as Component;
  const reading = values.get('[');
  const rangeFor = (value: Quantity): { readonly range?: Range } =>
    typeof reading === 'object' && 'open' in reading
      ? { range: rangeOf(cursor, id, value, reading, coded) }
      : {};
  if (isResistor(component)) return { ...component, ...rangeFor(component.resistance) };
  if (component.kind === 'source') return { ...component, ...rangeFor(component.current) };
  if (component.kind !== 'supply') return component;
  const form = formOfWord(word?.text);
  if (word && !isCounted(component, form)) cursor.wrong(word, 'write instead', word.text, 'battery');
  return inForm({ ...component, ...rangeFor(component.emf) }, form);
}

/** Whether a component starts with this token. */
export function startsComponent({ type, text }: Token): boolean {
  return type === 'label' || (type === 'word' && kindOfWord(text) !== undefined);
}

/** Reads `lamp L1 6 V 3 W`; the token to be read starts a component. */
export function readComponent(cursor: Cursor): Draft {
  const start = cursor.token;
  const word = cursor.take('word');
  const named = word && kindOfWord(word.text);
  if (cursor.token.text === 'total') cursor.wrong(cursor.token, 'label reserved', cursor.token.text);
  const label =
    cursor.take('label') ?? cursor.fail('label', `${start.text} ${cursor.free(letterOf(named) ?? '')}`);
  const id = label.text;
  const kind = named ?? kindOfLabel(id);
  if (!kind)
    return cursor.wrong(start, 'kind missing', id, `${kindOfLabel(id.charAt(0)) ?? 'resistor'} ${id}`);
  if (!isKind(kind)) return cursor.wrong(start, 'kind not understood', id, '', kind);
  const properties = readProperties(cursor, label, kind);
  const reversed = properties.values.has('reversed');
  // Where the next component starts without a join, that is the mistake, not what is missing here.
  if (startsComponent(cursor.token)) return { type: 'component', label, reversed };
  return { type: 'component', label, reversed, component: assemble(cursor, label, kind, properties, word) };
}
