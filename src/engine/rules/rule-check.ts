import type { Said } from '../words/index.ts';

/** The rules of series and parallel circuits, Kirchhoff's two laws, Ohm's law and the balance of power. */
export type Rule =
  | 'series current'
  | 'series p.d.'
  | 'series resistance'
  | 'parallel p.d.'
  | 'parallel current'
  | 'parallel resistance'
  | 'junction law'
  | 'loop law'
  | 'V = IR'
  | 'power balance';

/** A quantity in an equation, with its value in SI units. */
export interface Term {
  /** Quantity name: `I_R1`. */
  readonly name: string;
  readonly value: number;
}

/** An equation with its numbers: the sum (or product, or sum of reciprocals) of `left` equals that of `right`, or all of `left` are equal. */
export interface Equation {
  readonly form: 'all equal' | 'sum' | 'product' | 'reciprocals';
  readonly left: readonly Term[];
  readonly right: readonly Term[];
}

/** One rule at one place of a circuit. */
export interface RuleCheck {
  readonly rule: Rule;
  /** The components it is about. */
  readonly about: readonly string[];
  /** The numbers substituted; absent where it does not apply. */
  readonly substituted?: Equation;
  readonly status: 'holds' | 'does not apply';
  /** The largest difference of the two sides, relative to the largest term (0 for exact readings). */
  readonly within: number;
  /** Why it applies, or why it does not. */
  readonly why: Said;
}
