import type { Prefix, Unit } from '../quantity/index.ts';

/** What the elements say of themselves: names of controls, states and what goes wrong on a page. */
export interface ElementData {
  /** No board of the wanted name ('' if none was named), and the ids of those there are. */
  'no board': { readonly wanted: string; readonly present: readonly string[] };
  'no circuit to show': Record<never, never>;
  /** A number and its unit, to be heard. */
  spoken: { readonly number: string; readonly prefix: Prefix; readonly unit: Unit };
  /** In place of readings that the pupil is to predict. */
  covered: Record<never, never>;
  /** What a meter measures: the letter of the quantity, of what ('' for a p.d. between ends without a name), and its own resistance ('' if none). */
  measures: {
    readonly letter: string;
    readonly of: string;
    readonly wording: 'p.d.' | 'voltage';
    readonly ohms: string;
  };
  /** A meter by its unit, its label in the circuit and its caption ('' if none), with its reading in words. */
  meter: {
    readonly unit: Unit;
    readonly id: string;
    readonly caption: string;
    readonly reading: string;
  };
  'not a meter': { readonly id: string };
  /** Nothing says which of these meters is meant; there may be none. */
  'which meter': { readonly meters: readonly string[] };
  'not its unit': { readonly found: string; readonly unit: Unit };
}
