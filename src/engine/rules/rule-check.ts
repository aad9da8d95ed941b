import type { Fraction } from '../quantity/index.ts';
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

/** A number in SI units: exact where the circuit was solved exactly. */
export type Value = number | Fraction;

/** A quantity in an equation. */
export interface Term {
  /**
   * Quantity name: `I_R1`. A block of components is named by how it is put together, `R_(R1∥(R2+L1))`, or by its first and
   * last component where there are more than five, `R_(R1…R9)`.
   */
  readonly name: string;
  /** Its magnitude, for the side of an equation tells the direction; negative where it is taken away. */
  readonly value: Value;
  /** The pupil is to find it: its value must not be shown. */
  readonly hidden?: true;
}

/** An equation with its numbers. */
export interface Equation {
  /** Each side is the sum, or the product, of its terms; or, on all sides, the sum of their reciprocals. */
  readonly form: 'sum' | 'product' | 'reciprocals';
  /** All sides are equal; with 'less', the first is less than the second. */
  readonly relation: 'equal' | 'less';
  readonly sides: readonly (readonly Term[])[];
}

/** One rule at one place of a circuit. */
export interface RuleCheck {
  readonly rule: Rule;
  /** The components it is about. */
  readonly about: readonly string[];
  /** The numbers substituted; absent where it does not apply. */
  readonly substituted?: Equation;
  readonly status: 'holds' | 'does not apply';
  /** The largest difference of two sides, relative to the largest quantity of its kind in the circuit (0 for exact readings). */
  readonly within: number;
  /** Why it applies, or why it does not. */
  readonly why: Said;
}
