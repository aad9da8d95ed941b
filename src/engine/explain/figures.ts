import type { Circuit } from '../circuit/index.ts';
import { figuresWritten, Fraction, type Quantity } from '../quantity/index.ts';
import type { Question } from './explain.ts';

const isQuantity = (value: unknown): value is Quantity =>
  typeof value === 'object' && value !== null && 'unit' in value;

/** The significant figures of a value as it was given; none of a fraction, which is exact, nor of 0. */
function figuresIn(given: Fraction | number | string): readonly number[] {
  if (given instanceof Fraction || Number(given) === 0) return [];
  const [, digits] = /^-?0*([\d.]+)$/.exec(`${given}`) ?? [];
  return digits === undefined ? [] : [digits.replace(/^\.0*/, '').replace('.', '').length];
}

/** The fewest significant figures that something was given with, at least two; three where nothing says. */
export function figuresGiven({ components }: Circuit, given: Question['given']): number {
  const all = given
    ? Object.values(given).flatMap(figuresIn)
    : components
        .filter(({ hidden }) => !hidden)
        .flatMap((component) => Object.values(component).filter(isQuantity).map(figuresWritten));
  return all.length > 0 ? Math.max(2, Math.min(...all)) : 3;
}
