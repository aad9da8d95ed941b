import type { NumberReading, Quantity } from '../quantity/index.ts';
import type { Wrong } from './mistake.ts';

/** What a token is; signs stand for themselves whatever their spelling (`–` is any dash, `∥` also `||`). */
export type TokenType =
  | '+'
  | '∥'
  | '('
  | ')'
  | '['
  | ']'
  | ';'
  | '–'
  | '..'
  | '±'
  | '%'
  | '×'
  | '@'
  | 'label'
  | 'word'
  | 'number'
  | 'quantity'
  | 'code'
  | 'quote'
  | 'stray'
  | 'end';

/** The smallest piece of a line that means something. */
export interface Token {
  readonly type: TokenType;
  /** As written; of a label and a junction its plain name. */
  readonly text: string;
  /** Where it starts and ends in the text. */
  readonly at: number;
  readonly end: number;
  /** Of a number, with a unit or without. */
  readonly number?: Omit<NumberReading, 'end'>;
  /** Of a number with its unit, of a code, and of a label that could be a code (`R47`). */
  readonly quantity?: Quantity;
  /** What is wrong with it; said when the parser comes to it. */
  readonly mistake?: Wrong;
}
