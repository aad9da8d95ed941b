import { absolute, negate, parallel, product, total } from './arithmetic.ts';
import type { Equation, Term, Value } from './rule-check.ts';

/** Whether a term is taken away. */
export const isTaken = ({ value }: Term): boolean => Number(value) < 0;

/** The same terms, each the other way round. */
export const flipped = (terms: readonly Term[]): readonly Term[] =>
  terms.map((one) => ({ ...one, value: negate(one.value) }));

/** The same terms without their signs. */
export const magnitudes = (terms: readonly Term[]): readonly Term[] =>
  terms.map((one) => ({ ...one, value: absolute(one.value) }));

/** Sides that are equal sums. */
export const sums = (...sides: readonly (readonly Term[])[]): Equation => ({
  form: 'sum',
  relation: 'equal',
  sides,
});

/** Two equal sums with nothing negative in them: what is negative goes to the other side. */
export function balance(left: readonly Term[], right: readonly Term[]): Equation {
  const [a, b] = Number(total(left)) < 0 ? [flipped(left), flipped(right)] : [left, right];
  const gathered = (stays: readonly Term[], comes: readonly Term[]): Term[] => [
    ...stays.filter((one) => !isTaken(one)),
    ...flipped(comes.filter(isTaken)),
  ];
  const [here, there] = [gathered(a, b), gathered(b, a)];
  // Where all are 0, one side may be empty.
  if (here.length === 0) here.push(...there.splice(0, 1));
  if (there.length === 0) there.push(...here.splice(1));
  return sums(here, there);
}

/** What a side is worth. */
export const valueOf = (form: Equation['form'], side: readonly Term[]): Value =>
  ({ sum: total, product, reciprocals: parallel })[form](side);
