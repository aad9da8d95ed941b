import type { Fraction } from '../quantity/index.ts';
import type { Said } from '../reasons/index.ts';
import type { Reasoning, ReasoningData } from './codes.ts';

/** What a hint may say. */
export type HintCode = 'look at' | 'hint equation' | 'hint numbers' | 'hint answer' | Reasoning;

/** What else is to be said with a step. */
export type Note = Said<'equations set up' | 'current counted' | 'flows the other way' | 'left out'>;

/** One step: a rule, its equation, and what it gives. Equations are plain text. */
export interface Step {
  readonly rule: Reasoning;
  /** The components that it is about. */
  readonly about: readonly string[];
  /** The quantities that it needs, all known before. */
  readonly uses: readonly string[];
  readonly gives: string;
  readonly equation: string;
  /** With what it gives alone on the left. */
  readonly rearranged: string;
  /** The same with numbers. */
  readonly substituted: string;
  /** In SI units, exact. */
  readonly value: Fraction;
  /** Rounded, with its unit. */
  readonly text: string;
  readonly why: Said<keyof ReasoningData>;
  /**
   * Of a step that gives an equation, the unknown currents that it holds. `gives` is then its number, such as "(3)", `text` the
   * equation with numbers, and `value` the number in it that stands without a current.
   */
  readonly unknowns?: readonly string[];
  /** What else is to be said with it: why equations are set up, the way a current is counted, that one flows the other way, what may be left out. */
  readonly notes?: readonly Note[];
}

/** The way from what is given to what is asked. */
export interface Derivation {
  readonly status: 'found' | 'not enough' | 'contradiction';
  readonly answer?: { readonly quantity: string; readonly value: Fraction; readonly text: string };
  readonly steps: readonly Step[];
  /** Of each step: what to look at, which rule, which equation, the equation with numbers, the answer. In English. */
  readonly hints: readonly string[];
  /** The same five of each step as codes and data, for any language. */
  readonly rungs: readonly Said<HintCode>[];
  /** Why nothing was found. */
  readonly reason?: Said;
}
