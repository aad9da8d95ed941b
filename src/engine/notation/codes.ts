import type { FormatData, TwinData } from '../circuit/index.ts';

/** What the grammar may expect in a place. */
export type Expected =
  | 'component'
  | 'label'
  | 'join'
  | 'number'
  | 'percent'
  | 'dots'
  | 'junction'
  | 'dash'
  | 'place'
  | 'statement'
  | 'surrounding';

/** What a sentence about a line needs; '' where a code has no use for a field, or nothing is sure. */
export interface MistakeDetail {
  /** The piece of the line, as written. */
  readonly found: string;
  /** What to write instead. */
  readonly suggestion: string;
  /** What else it is about: the component, the other reading, the other junction, the limit, what was expected. */
  readonly about: string;
}

/** The mistakes that only a line of notation can hold. */
export type MistakeData = Readonly<
  Record<
    // A character or a word that has no meaning; something else in its place (`about` is of type Expected).
    | 'unexpected character'
    | 'expected'
    // What is meant is clear, but it is written another way; or there are two readings.
    | 'write instead'
    | 'two readings'
    | 'number too long'
    | 'zero below'
    // A letter of another alphabet that looks like the usual one.
    | 'look-alike'
    | 'space after label'
    | 'text too long'
    | 'too deep'
    // A bracket that is never closed or was never opened.
    | 'bracket alone'
    | 'join missing'
    | 'dash in series'
    | 'kind not understood'
    | 'kind missing'
    | 'label reserved'
    | 'unit missing'
    // A property that another kind of component has.
    | 'unsuitable'
    | 'one too many'
    | 'value missing'
    | 'range backwards'
    | 'junction alone'
    | 'junction twice'
    // Named once in the whole line.
    | 'junction once'
    | 'same point'
    | 'placed in chain'
    | 'across itself'
    // A group stands behind `across`.
    | 'across several'
    | 'ends missing',
    MistakeDetail
  >
>;

/** All that can be wrong with a line: some mistakes are the same in the JSON form. */
export type MistakeCode =
  | keyof MistakeData
  | keyof TwinData
  | Extract<
      keyof FormatData,
      | 'label used twice'
      | 'out of range'
      | 'not below'
      | 'not on a step'
      | 'no step fits'
      | 'must be positive'
      | 'must not be negative'
      | 'lamp needs two ratings'
      | 'filament needs two ratings'
      | 'terminals with a supply'
      | 'too many components'
      | 'no such component'
    >;
