import type { Said } from '../words/index.ts';
import { add, negate, total, zero } from './arithmetic.ts';
import type { Equation, Rule, RuleCheck, Term, Value } from './rule-check.ts';
import { flipped } from './terms.ts';

/** A rule that applies. */
export function holds(
  rule: Rule,
  about: readonly string[],
  substituted: Equation,
  why: Said,
  within: number,
): RuleCheck {
  return { rule, about, substituted, status: 'holds', within, why };
}

/** A rule that does not apply. */
export function fails(rule: Rule, about: readonly string[], why: Said): RuleCheck {
  return { rule, about, status: 'does not apply', within: 0, why };
}

/** Sides that are equal sums. */
export const sums = (...sides: readonly (readonly Term[])[]): Equation => ({
  form: 'sum',
  relation: 'equal',
  sides,
});

/** Whether a term is negative. */
export const isTaken = ({ value }: Term): boolean => Number(value) < 0;

/** Two equal sums with nothing negative in them: what is negative goes to the other side. */
export function balance(left: readonly Term[], right: readonly Term[]): Equation {
  const isBackwards = Number(total(left)) < 0;
  const [a, b] = isBackwards ? [flipped(left), flipped(right)] : [left, right];
  const kept = (side: readonly Term[]): readonly Term[] => side.filter((one) => !isTaken(one));
  const moved = (side: readonly Term[]): readonly Term[] => flipped(side.filter(isTaken));
  const [here, there] = [
    [...kept(a), ...moved(b)],
    [...kept(b), ...moved(a)],
  ];
  // Where all are 0, one side may be empty.
  if (here.length === 0) here.push(...there.splice(0, 1));
  if (there.length === 0) there.push(...here.splice(1));
  return sums(here, there);
}

/** The largest difference of some values from the first, relative to `scale`. */
export function spread([first = zero, ...others]: readonly Value[], scale: number): number {
  return Math.max(0, ...others.map((value) => Math.abs(Number(add(value, negate(first)))))) / scale;
}

/** How far the sides of equal sums differ, relative to `scale`. */
export const spreadOf = ({ sides }: Equation, scale: number): number => spread(sides.map(total), scale);
