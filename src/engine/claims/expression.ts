import type { Fraction } from '../quantity/index.ts';

/** What joins two values. */
export type Operation = '+' | '-' | '*' | '/';

/** One side of a claim. */
export type Expression =
  | { readonly kind: 'number'; readonly value: Fraction }
  | { readonly kind: 'name'; readonly name: string }
  | { readonly kind: Operation; readonly left: Expression; readonly right: Expression };

/** Where an expression may be worked out: in exact numbers, or in ratios of polynomials. */
export interface Field<T> {
  number(value: Fraction): T;
  /** Undefined where the quantity has no value. */
  name(name: string): T | undefined;
  /** Undefined for a division by zero. */
  join(operation: Operation, left: T, right: T): T | undefined;
}

/** The value of an expression in a field; undefined where it has none. */
export function evaluate<T>(expression: Expression, field: Field<T>): T | undefined {
  if (expression.kind === 'number') return field.number(expression.value);
  if (expression.kind === 'name') return field.name(expression.name);
  const [left, right] = [evaluate(expression.left, field), evaluate(expression.right, field)];
  return left === undefined || right === undefined ? undefined : field.join(expression.kind, left, right);
}

/** The exact numbers. */
export const exactly = (name: (name: string) => Fraction | undefined): Field<Fraction> => ({
  number: (value) => value,
  name,
  join(operation, left, right) {
    if (operation === '+') return left.add(right);
    if (operation === '-') return left.sub(right);
    if (operation === '*') return left.mul(right);
    return right.n ? left.div(right) : undefined;
  },
});
