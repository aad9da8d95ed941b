import type { Fraction } from '../../quantity/index.ts';
import type { Linear } from './linear.ts';
import type { Reasoning } from '../codes.ts';

/** A step of solving equations before they are numbered: an equation is called by any name that is no quantity's. */
export interface Draft {
  readonly rule: Reasoning;
  readonly about: readonly string[];
  /** Quantities and equations. */
  readonly uses: readonly string[];
  readonly gives: string;
  readonly equation: string;
  readonly rearranged: string;
  readonly substituted: string;
  /** What its sentence names. */
  readonly names: readonly string[];
  /** The value that it gives; absent where it gives an equation. */
  readonly value?: Fraction;
  /** What an equation says: 0 is all this, or, with `alone`, that quantity is. */
  readonly says: Linear;
  readonly alone?: string;
}

/** Those drafts that lead to a quantity, in their order. */
export function leadingTo(drafts: readonly Draft[], names: readonly string[]): readonly Draft[] {
  const needed = new Set(names);
  return drafts
    .toReversed()
    .filter(({ gives, uses }) => {
      if (!needed.has(gives)) return false;
      for (const name of uses) needed.add(name);
      return true;
    })
    .reverse();
}
