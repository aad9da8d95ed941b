import { supplyForms, type Component, type Kind, type SupplyForm } from '../circuit/index.ts';
import type { Unit } from '../quantity/index.ts';

/** The unit, sign or word that tells a property in a line. */
export type Sign =
  | Unit
  | 'r'
  | '×'
  | '['
  | 'r['
  | '±'
  | 'open'
  | 'filament'
  | 'blown'
  | 'reversed'
  | 'condition'
  | 'fault'
  | 'hidden';

type FieldOf<K extends Kind, C = Component> = C extends { readonly kind: infer Kinds }
  ? K extends Kinds
    ? Exclude<keyof C, 'id' | 'kind' | 'from' | 'to' | 'condition' | 'fault' | 'hidden'>
    : never
  : never;

const rated = { Ω: 'resistance', V: 'ratedVoltage', W: 'ratedPower', A: 'ratedCurrent' } as const;
const forward = { V: 'forwardVoltage', A: 'ratedCurrent' } as const;

/** The field of a component that each sign tells. */
export const fields: { readonly [K in Kind]: Readonly<Partial<Record<Sign, FieldOf<K>>>> } = {
  supply: { '[': 'range', '×': 'cells', V: 'emf', 'r[': 'internalRange', r: 'internalResistance' },
  source: { '[': 'range', A: 'current' },
  resistor: { '[': 'range', Ω: 'resistance', W: 'ratedPower', '±': 'tolerance' },
  potentiometer: { '[': 'range', Ω: 'resistance', W: 'ratedPower' },
  lamp: { ...rated, filament: 'filament' },
  heater: rated,
  motor: rated,
  diode: forward,
  led: forward,
  thermistor: { Ω: 'resistance' },
  ldr: { Ω: 'resistance' },
  fuse: { A: 'ratedCurrent', Ω: 'resistance', blown: 'blown' },
  switch: { open: 'closed' },
  push: { open: 'closed' },
  changeover: { open: 'closed' },
  ammeter: { Ω: 'resistance' },
  voltmeter: { Ω: 'resistance' },
  wire: {},
};

/** The usual letters of labels (common practice), with those of kinds to come. */
const letters: Readonly<Record<string, string>> = {
  B: 'supply',
  I: 'source',
  R: 'resistor',
  L: 'lamp',
  S: 'switch',
  A: 'ammeter',
  V: 'voltmeter',
  W: 'wire',
  D: 'diode',
  LED: 'led',
  F: 'fuse',
  M: 'motor',
  H: 'heater',
  T: 'thermistor',
  LDR: 'ldr',
  C: 'capacitor',
};

/** Words that stand before a label to say its kind. */
export const kindWords: readonly string[] = [
  ...Object.values(letters),
  'push',
  'changeover',
  'potentiometer',
  'cell',
  'battery',
];

/** What a kind word says of a supply; undefined for another word. */
export function formOfWord(word: string | undefined): SupplyForm | undefined {
  return supplyForms.find((form) => form === word);
}

/** The kind that a kind word says; undefined for another word. */
export function kindOfWord(word: string): string | undefined {
  return formOfWord(word) ? 'supply' : kindWords.find((kind) => kind === word);
}

/** The kind that the capitals of a label say; undefined where they are none of the usual letters. */
export function kindOfLabel(label: string): string | undefined {
  return letters[label.replace(/[^A-Z].*/, '')];
}

/** The usual letter of a kind. */
export function letterOf(kind: string | undefined): string | undefined {
  return Object.keys(letters).find((letter) => letters[letter] === kind);
}

/** Whether a kind is told by its resistance, or by two of its ratings. */
export function isRated(kind: Kind): boolean {
  return 'W' in fields[kind] && 'V' in fields[kind];
}

/** Whether the engine knows a kind. */
export function isKind(kind: string): kind is Kind {
  return kind in fields;
}
