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

  /**
   * The largest number gets `figures` significant figures. All get one decimal more, if that may be, where a smaller one
   * would else lose a figure that it has; and more where it would stand as 0 and is not small beside the largest. The prefix
   * suits the largest of `among`.
   */
  constructor(terms: readonly Term[], figures: number, among: readonly Term[], mayHaveMore: boolean) {
    const unit = units[terms[0]?.name.charAt(0) ?? ''] ?? 'W';
    const values = (some: readonly Term[]): readonly Value[] => some.map(({ value }) => absolute(value));
    const prefix = sharedPrefix(values(among), unit, figures);
    const power = exponentOf(prefix);
    const largest = values(terms).reduce<number>((a, b) => Math.max(a, Number(b)), 0);
    const decimals = (size: Value, wanted: number): number => power + wanted - 1 - leadingPower(size, wanted);
    const few = Math.max(0, decimals(largest, figures));
    const needed = values(terms).map((value) => {
      if (Number(value) <= largest / 1e4) return few;
      const isCut = Number(fixed(value, few, -power)) !== Number(fixed(value, few + 1, -power));
      const isMore = mayHaveMore && isCut && decimals(value, figures) > few;
      return Math.max(decimals(value, 1), isMore ? few + 1 : few);
    });
    this.unit = prefix + unit;
    this.#shift = -power;
    this.#decimals = Math.max(few, ...needed);
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

function written(
  { form, relation, sides }: Equation,
  figures: number,
  decimalSign: '.' | ',',
  mayHaveMore: boolean,
): Figures {
  const shown = sides.flat().filter(({ hidden }) => !hidden);
  const shared = new Scale(shown, figures, shown, mayHaveMore);
  const scaleOf = (term: Term): Scale =>
    form === 'sum' ? shared : new Scale([term], figures, form === 'product' ? [term] : shown, false);
  const [whole = zero, ...others] = sides.map((side) => {
    const rounded = side.map((term) => ({ ...term, value: scaleOf(term).rounded(term.value) }));
    return valueOf(form, rounded);
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

/**
 * Writes the numbers of an equation: of a sum with equal decimals, such that it closes if it can; else each number on its
 * own, resistances with one prefix.
 */
export function figuresOf(equation: Equation, figures: number, decimalSign: '.' | ','): Figures {
  const more = written(equation, figures, decimalSign, true);
  const few = more.closes ? more : written(equation, figures, decimalSign, false);
  return few.closes ? few : more;
}
