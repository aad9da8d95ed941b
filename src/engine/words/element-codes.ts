import type { Condition, Surrounding } from '../circuit/index.ts';
import type { Prefix, ReadingUnit, Unit } from '../quantity/index.ts';

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
    readonly unit: ReadingUnit;
    readonly id: string;
    readonly caption: string;
    readonly reading: string;
  };
  'not a meter': { readonly id: string };
  /** One of the two lists of points of a movable voltmeter. */
  lead: { readonly end: 'from' | 'to' };
  /** A movable voltmeter finds no two labelled points. */
  'no points': Record<never, never>;
  /** Nothing says which of these meters is meant; there may be none. */
  'which meter': { readonly meters: readonly string[] };
  /** Nothing says which quantity is meant. */
  'what to read': Record<never, never>;
  'not its unit': { readonly found: string; readonly unit: Unit };
  /** Names of a slider's box and two buttons. */
  typed: { readonly id: string };
  less: { readonly id: string };
  more: { readonly id: string };
  /** What a slider turns, by its letter or its name, and what that belongs to ('' where nothing has a name). */
  turns: { readonly letter: 'E' | 'r' | 'I' | Surrounding; readonly of: string };
  /** No sensor of the circuit feels any of these. */
  'nothing feels': { readonly names: readonly Surrounding[] };
  'cannot be turned': { readonly id: string };
  /** Nothing says which component of a kind is meant, or one of another kind was found ('' if none); there may be none. */
  'which component': {
    readonly found: string;
    readonly kind: 'resistor' | 'supply' | 'switch';
    readonly ids: readonly string[];
  };
  /** A button of a board. */
  button: {
    readonly does:
      | 'reset'
      | 'undo'
      | 'redo'
      | 'hold'
      | 'release'
      | 'reveal'
      | 'copy'
      | 'link'
      | 'text'
      | 'png'
      | 'print'
      | 'svg';
  };
  /** What has been copied, or that the browser refused and the text stands selected. */
  copied: { readonly done: boolean };
  /** A picture has been saved, or the page may not save files. */
  saved: { readonly done: boolean };
  'address not read': Record<never, never>;
  'switch state': { readonly closed: boolean };
  /** What was done to a component, or undone. */
  condition: { readonly condition: Condition | undefined };
  /** A button that does it to one component. */
  alter: { readonly id: string; readonly condition: Condition };
  diagram: Record<never, never>;
  /** In the caption strip, while no component is pointed at. */
  'caption hint': Record<never, never>;
  was: { readonly text: string };
  /** The name of the table of what has changed since. */
  compared: Record<never, never>;
  /** The readings were held, or let go. */
  held: { readonly held: boolean };
  'not drawn': { readonly reason: 'empty' | 'too many' | 'part missing' };
  'board without circuit': Record<never, never>;
  /** A mistake in a board's circuit, with its sentence. */
  'mistake at': { readonly line: number; readonly column: number; readonly sentence: string };
  /** The thickness of a ribbon that stands for a current. */
  'ribbon key': { readonly current: string };
  component: Record<never, never>;
  holds: { readonly rounded: boolean };
  'do not apply': { readonly count: number };
  total: Record<never, never>;
  /** On a meter's digits, beyond its range. */
  overload: Record<never, never>;
  /** Below or above the end of a meter's range. */
  beyond: { readonly below: boolean; readonly limit: string };
  /** A button that shows how the numbers of a rule follow from what is given. */
  'work it out': Record<never, never>;
  /** A word that an attribute does not have: of which (`face`), what was probably meant, and all there are. */
  'not a choice': {
    readonly found: string;
    readonly of: string;
    readonly suggestion: string;
    readonly choices: readonly string[];
  };
  'not a range': { readonly found: string; readonly unit: Unit };
  'not a resolution': { readonly found: string; readonly unit: Unit };
  /** The name of a table. */
  readings: Record<never, never>;
  /** The head of the numbers of rows. */
  'row number': Record<never, never>;
  'delete row': { readonly row: number };
  'table button': { readonly does: 'record' | 'clear' | 'undo' | 'copy' | 'save' };
  /** How many rows a table has now. */
  recorded: { readonly rows: number };
}
