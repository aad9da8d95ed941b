import type { Said } from '../reasons/index.ts';

/** What is wrong with a claim. */
export interface ClaimData {
  /** Something else should stand here: `found` is what does, '' at the end. */
  readonly 'claim expects': {
    readonly expected: 'value' | 'comparison' | 'end' | 'bracket';
    readonly found: string;
  };
  /** No quantity of this circuit; '' where none is near. */
  readonly 'not in this circuit': { readonly found: string; readonly suggestion: string };
  /** Values with different units are added or compared: the units of both. */
  readonly 'units differ': { readonly left: string; readonly right: string };
  /** More quantities and numbers than `limit`, a square counted twice. */
  readonly 'claim too large': { readonly limit: number };
  /** What is claimed has no value at any setting. */
  readonly 'claim has no value': Readonly<Record<never, never>>;
}

/** Why a claim is not understood; what is wrong with a number is as in the notation. */
export type ClaimWrong = Said<
  | keyof ClaimData
  | 'unexpected character'
  | 'two readings'
  | 'number too long'
  | 'zero below'
  | 'text too long'
  | 'too deep'
>;

/** What is wrong with a claim, and where. */
export interface ClaimMistake {
  readonly wrong: ClaimWrong;
  /** The piece of the text, in UTF-16 units from 0. */
  readonly at: number;
  readonly end: number;
  /** What to write in place of the piece; '' where nothing is sure. */
  readonly suggestion: string;
}
