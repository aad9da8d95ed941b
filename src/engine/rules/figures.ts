import {
  exponentOf,
  fixed,
  Fraction,
  leadingPower,
  powerOfTen,
  sharedPrefix,
  thinSpace,
  type Unit,
} from '../quantity/index.ts';
import { absolute, add, negate, zero } from './arithmetic.ts';
import { valueOf } from './equation.ts';
import type { Equation, Term, Value } from './rule-check.ts';

const units: Readonly<Record<string, Unit>> = { I: 'A', V: 'V', R: 'Ω', P: 'W' };

/** How numbers of one unit are written beside each other: one prefix, equal decimals. */
class Scale {
  readonly unit: string;
  readonly #shift: number;
  readonly #decimals: number;

  /** The largest gets `figures` significant figures, all get more decimals where one would else stand as 0. */
  constructor(terms: readonly Term[], figures: number) {
    const unit = units[terms[0]?.name.charAt(0) ?? ''] ?? 'W';
    const sizes = terms.map(({ value }) => Math.abs(Number(value)));
    const largest = sizes.reduce((a, b) => Math.max(a, b), 0);
    const prefix = sharedPrefix(sizes, unit, figures);
    const power = exponentOf(prefix);
    // What is below a ten-thousandth of the largest may.
    const least = sizes.reduce((a, b) => (b > largest / 1e4 ? Math.min(a, b) : a), largest);
    this.unit = prefix + unit;
    this.#shift = -power;
    this.#decimals = Math.max(
      0,
      figures - 1 - leadingPower(largest, figures) + power,
      power - leadingPower(least, 1),
    );
  }

  write(value: Value): string {
    return fixed(value, this.#decimals, this.#shift);
  }

  /** The value as it stands written. */
  rounded(value: Value): Fraction {
    return new Fraction(this.write(value).replace('−', '-')).mul(powerOfTen(-this.#shift));
  }
}

/** A number as it is written, its unit, and both with a thin space between. */
export interface Figure {
  readonly term: Term;
  readonly number: string;
  readonly unit: string;
  readonly text: string;
}

/** The numbers of an equation, and whether they close as they stand. */
export interface Figures {
  readonly sides: readonly (readonly Figure[])[];
  readonly closes: boolean;
}

/** Writes the numbers of an equation: with equal decimals, but each factor of a product on its own. */
export function figuresOf(
  { form, relation, sides }: Equation,
  figures: number,
  decimalSign: '.' | ',',
): Figures {
  const shared = new Scale(
    sides.flat().filter(({ hidden }) => !hidden),
    figures,
  );
  const scaleOf = (term: Term): Scale => (form === 'product' ? new Scale([term], figures) : shared);
  const [whole = zero, ...others] = sides.map((side) => {
    const written = side.map((term) => ({ ...term, value: scaleOf(term).rounded(term.value) }));
    return valueOf(form, written);
  });
  // A sum closes to the last figure; a product, or a sum of reciprocals, when it rounds to what is written.
  const first = sides[0]?.[0];
  const last = (value: Value): string => (first ? scaleOf(first).write(value) : '');
  const closes =
    relation === 'less'
      ? others.every((other) => Number(whole) < Number(other))
      : others.every((other) =>
          form === 'sum' ? Number(add(whole, negate(other))) === 0 : last(whole) === last(other),
        );
  const write = (term: Term): Figure => {
    const scale = scaleOf(term);
    const number = scale.write(absolute(term.value)).replace('.', decimalSign);
    return { term, number, unit: scale.unit, text: number + thinSpace + scale.unit };
  };
  return { sides: sides.map((side) => side.map(write)), closes };
}
