import { Fraction } from '../../quantity/index.ts';
import type { Draft } from './draft.ts';
import {
  equationText,
  factorInAmperes,
  inAmperes,
  inVolts,
  isSum,
  negated,
  replaced,
  scaled,
  upright,
  without,
  type Writing,
} from './linear.ts';
import { valueText } from '../write.ts';

/** An unknown current alone on the left; with its value, where nothing else is unknown. */
function alone(row: Draft, unknown: string, writing: Writing): Draft {
  const factor = row.says.of.get(unknown) ?? new Fraction(1);
  const { number } = row.says;
  const rest = { number, of: negated(without(row.says, unknown)).of };
  const isLast = rest.of.size === 0;
  const says = scaled(rest, factor.inverse());
  const above = inVolts(rest, writing);
  const left = writing.name(unknown);
  const ohms = bracketed(valueText('R', factor, writing.style));
  const quotient = `${left} = ${isSum(rest) ? `(${above})` : above} ÷ ${ohms}`;
  return {
    rule: isLast ? 'one unknown left' : 'one alone',
    about: row.about,
    uses: [row.gives],
    gives: isLast ? unknown : `${row.gives} for ${unknown}`,
    equation: row.substituted,
    rearranged: quotient,
    substituted: isLast ? quotient : `${left} = ${inAmperes(says, writing)}`,
    names: [row.gives, unknown],
    says,
    alone: unknown,
    ...(isLast && { value: says.number }),
  };
}

/** A value in a product. */
const bracketed = (text: string): string => (text.startsWith('−') ? `(${text})` : text);

/** What is alone, or has its value, put into an equation. */
function putIn(row: Draft, one: Draft, writing: Writing): Draft {
  const unknown = one.alone ?? '';
  const text = factorInAmperes(one.says, writing);
  const name = (each: string): string => (each === unknown ? text : writing.name(each));
  const { number, of } = replaced({ ...row.says, number: row.says.number.neg() }, unknown, one.says);
  const says = upright({ number: number.neg(), of });
  return {
    rule: 'put in',
    about: [...row.about, ...one.about],
    uses: [row.gives, one.gives],
    gives: `${row.gives} with ${one.gives}`,
    equation: row.substituted,
    rearranged: equationText(row.says, { ...writing, name }),
    substituted: equationText(says, writing),
    names: [one.gives, row.gives],
    says,
  };
}

/** What is alone, with the values of all that it holds. */
function worth(one: Draft, values: ReadonlyMap<string, Draft>, { name, style }: Writing): Draft | undefined {
  const found = [...one.says.of.keys()].map((unknown) => values.get(unknown));
  const known = found.filter((each) => each !== undefined);
  if (known.length < found.length) return undefined;
  const says = known.reduce((sum, each) => replaced(sum, each.alone ?? '', each.says), one.says);
  const text = (each: string): string =>
    bracketed(valueText('I', values.get(each)?.says.number ?? new Fraction(0), style));
  const left = `${name(one.alone ?? '')} = `;
  return {
    rule: 'put back',
    about: one.about,
    uses: [one.gives, ...known.map(({ gives }) => gives)],
    gives: one.alone ?? '',
    equation: one.substituted,
    rearranged: one.substituted,
    substituted: left + inAmperes(one.says, { name: text, style }),
    names: [one.gives, ...known.map(({ gives }) => gives)],
    says,
    alone: one.alone ?? '',
    value: says.number,
  };
}

/**
 * Solves equations in volts by substitution, the one with the fewest unknowns first; `last` is kept as long as may be, so that its value
 * comes first. Then what the junctions say of the other currents. Gives the drafts of all its steps.
 */
export function eliminate(
  rows: readonly Draft[],
  junctions: readonly Draft[],
  last: string,
  writing: Writing,
): readonly Draft[] {
  const drafts: Draft[] = [];
  const solved: Draft[] = [];
  let left = rows;
  while (left.length > 0) {
    const row = left.reduce((best, one) => (one.says.of.size < best.says.of.size ? one : best));
    const others = left.filter((one) => one !== row);
    const spread = (unknown: string): number =>
      others.filter(({ says }) => says.of.has(unknown)).length + (unknown === last ? others.length : 0);
    const unknowns = [...row.says.of.keys()].toSorted((a, b) => spread(a) - spread(b));
    const [unknown] = unknowns;
    left = others;
    if (unknown === undefined) continue;
    const one = alone(row, unknown, writing);
    drafts.push(one);
    solved.push(one);
    left = others.map((other) => {
      if (!other.says.of.has(unknown)) return other;
      const next = putIn(other, one, writing);
      drafts.push(next);
      return next;
    });
  }
  const values = new Map<string, Draft>();
  for (const one of [...solved.toReversed(), ...junctions]) {
    const valued = one.value ? one : worth(one, values, writing);
    if (!valued) continue;
    values.set(one.alone ?? '', valued);
    if (valued !== one) drafts.push(valued);
  }
  return drafts;
}
