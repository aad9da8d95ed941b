/** A contact of a changeover switch, or a part of a potentiometer, and the label of the other one: '' where its own is none of theirs. */
interface Twin {
  readonly id: string;
  readonly other: string;
}

/** What can be wrong with the two contacts of a changeover switch, or the two parts of a potentiometer. */
export type TwinData = Readonly<
  Record<
    // The other one is missing; they have no end in common; both contacts are open, or closed.
    | 'contact missing'
    | 'contacts apart'
    | 'contacts alike'
    | 'part missing'
    | 'parts apart'
    // Both parts state a range, or a power rating, and these do not fit together.
    | 'parts at odds'
    // Both parts are of 0 Ω.
    | 'track without resistance'
    // A range that is not even steps.
    | 'scale of a track',
    Twin
  >
>;

/** What can be wrong with a circuit given as JSON alone. */
export interface JsonData {
  'unknown version': { readonly found: string };
  'unknown field': { readonly field: string; readonly suggestion: string };
  'missing field': { readonly field: string };
  'unknown kind': { readonly found: string; readonly suggestion: string };
  'not a label': { readonly found: string; readonly suggestion: string };
  'not a node name': { readonly found: string };
  'terminals missing': Record<never, never>;
  'terminal unknown': { readonly found: string };
  'zero unknown': { readonly found: string };
}

/** What can be wrong with a circuit given as JSON or as notation, or with a new value for a component. */
export interface FormatData extends TwinData {
  /** Not the type of value that belongs here. */
  'wrong type': { readonly expected: string; readonly found: string };
  'label used twice': { readonly id: string };
  'not a number': { readonly found: string };
  'out of range': { readonly found: string; readonly low: string; readonly high: string };
  'not below': { readonly found: string; readonly high: string };
  'not on a step': { readonly found: string; readonly nearest: string };
  'must be positive': { readonly found: string };
  'must not be negative': { readonly found: string };
  'no step fits': { readonly low: string; readonly high: string };
  'lamp needs two ratings': { readonly id: string };
  /** Its resistance is that of one temperature only. */
  'filament needs two ratings': { readonly id: string };
  'terminals with a supply': Record<never, never>;
  'too many components': { readonly count: number; readonly limit: number };
  'no such component': { readonly id: string; readonly suggestion: string };
  'cannot be set': { readonly id: string };
  /** A word that sets nothing, or a second one for the same thing. */
  'not a setting': { readonly id: string; readonly found: string; readonly suggestion: string };
}
