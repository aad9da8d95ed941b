import type { Unit } from '../quantity/index.ts';

/** What is set otherwise somewhere: `R_R1` is "2 Ω", S1 is "open". */
export interface SettingThere {
  readonly id: string;
  /** '' for a switch. */
  readonly quantity: string;
  readonly text: string;
}

/** What went wrong with a number that a pupil filled in. */
export type GapMistake =
  'not a number' | 'unit' | 'sign' | 'power of ten' | 'upside down' | 'rounding' | 'other';

/** What the elements say that reason: of a claim, of a worked solution, of what depends on what. */
export interface ReasoningElementData {
  /** A statement to be tested, by its name on the page. */
  statement: Record<never, never>;
  'claim button': { readonly does: 'test' | 'go' };
  /** A button that writes what was probably meant. */
  'write so': { readonly text: string };
  /** What was found out of a claim, and what can be turned. */
  verdict: {
    readonly verdict: 'always' | 'never' | 'sometimes';
    readonly proved: boolean;
    readonly tried: number;
    readonly turned: readonly string[];
  };
  /** Where a claim fails: what would be set otherwise there; nothing where it fails as it is. */
  'fails at': { readonly settings: readonly SettingThere[] };
  /** Both sides of a claim as the board stands, and whether it holds; `alike` where they differ in no figure that is written. */
  'claim now': {
    readonly left: string;
    readonly right: string;
    readonly holds: boolean;
    readonly alike: boolean;
  };
  /** A sign of a statement or an equation, to be heard. */
  sign: { readonly sign: string };
  /** A quantity of a worked solution, to be heard; `of` is a component, a block, or '' (`t`). */
  quantity: { readonly letter: string; readonly of: string; readonly wording: 'p.d.' | 'voltage' };
  /** What stands before what is given, and before what is asked. */
  'solution heading': { readonly part: 'given' | 'find' };
  /** A worked solution, by its name on the page. */
  'worked solution': Record<never, never>;
  /** What an equation is called that others are put into; its number stands in brackets. */
  'equation number': { readonly number: string };
  'steps button': { readonly does: 'step' | 'hint' | 'answer' | 'back' };
  'step count': { readonly shown: number; readonly steps: number };
  /** What is asked is among what is given. */
  'is given': Record<never, never>;
  /** A page does not say what is asked. */
  'which quantity': { readonly names: readonly string[] };
  /** In place of a solution that would tell the readings that the pupil is to predict. */
  'solution covered': Record<never, never>;
  /** A number to be filled in, by its name on the page; `unit` '' where it has none. */
  gap: { readonly of: string; readonly unit: string };
  /** What is wrong with a number that was filled in. */
  'gap mistake': { readonly mistake: GapMistake };
  'gap right': Record<never, never>;
  /** The columns of a table of predictions. */
  'prediction heading': { readonly column: 'quantity' | 'predicted' | 'shown' };
  'prediction verdict': { readonly right: boolean };
  'prediction button': { readonly does: 'reveal' | 'again' };
  /** What `given="…"` says and nobody can read. */
  'given not read': { readonly found: string };
  /** The name of a graph: what is drawn, against what, each as it is called. */
  graph: { readonly names: readonly string[]; readonly against: string };
  /** A point of a graph to be heard: what is turned, and the readings there. */
  'graph point': { readonly at: string; readonly values: readonly string[] };
  'graph values': Record<never, never>;
  /** Two quantities that one axis cannot show. */
  'one unit': { readonly names: readonly string[]; readonly units: readonly Unit[] };
  /** A characteristic is of one component alone. */
  'only its own': { readonly name: string; readonly suggestion: string };
  /** Nothing says what a graph goes along, or that cannot be turned ('' if nothing was named); there may be nothing. */
  'which is turned': { readonly found: string; readonly names: readonly string[] };
}
