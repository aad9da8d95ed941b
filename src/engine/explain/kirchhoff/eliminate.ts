import { Fraction } from '../../quantity/index.ts';
import type { Draft } from './draft.ts';
import { equationText, linearText, replaced, scaled, upright, type Linear } from './linear.ts';
import type { Ground } from './set-up.ts';
import { valueText } from '../write.ts';

type Writing = Pick<Ground, 'name' | 'style'>;

/** An unknown current alone on the left; with its value, where nothing else is unknown. */
function alone(row: Draft, unknown: string, { name, style }: Writing): Draft {
  const factor = row.says.of.get(unknown) ?? new Fraction(1);
  const others = new Map([...row.says.of].filter(([other]) => other !== unknown));
  const rest: Linear = {
    number: row.says.number,
    of: scaled({ ...row.says, of: others }, new Fraction(-1)).of,
  };
  const says = scaled(rest, factor.inverse());
  const above = linearText(rest, { name, style, factor: 'R', number: 'E' });
  const bracketed = rest.of.size > 1 || (rest.of.size > 0 && !rest.number.equals(0)) ? `(${above})` : above;
  const left = name(unknown);
  const quotient = `${left} = ${bracketed} ÷ ${bracketedValue(factor, style)}`;
  return {
    rule: others.size === 0 ? 'one unknown left' : 'one alone',
    about: row.about,
    uses: [row.gives],
    gives: others.size === 0 ? unknown : `${row.gives} for ${unknown}`,
    equation: row.substituted,
    rearranged: quotient,
    substituted:
      others.size === 0
        ? quotient
        : `${left} = ${linearText(says, { name, style, factor: '', number: 'I' })}`,
    names: [row.gives, unknown],
    says,
    alone: unknown,
    ...(others.size === 0 && { value: says.number }),
  };
}

const bracketedValue = (value: Fraction, style: Ground['style']): string => {
  const text = valueText('R', value, style);
  return value.compare(0) < 0 ? `(${text})` : text;
};

/** What is alone, or has its value, put into an equation. */
function putIn(row: Draft, one: Draft, { name, style }: Writing): Draft {
  const unknown = one.alone ?? '';
  const text = linearText(one.says, { name, style, factor: '', number: 'I' });
  const isSum =
    one.says.of.size > 1 || (one.says.of.size > 0 && !one.says.number.equals(0)) || text.startsWith('−');
  const other = (each: string): string => (each === unknown ? (isSum ? `(${text})` : text) : name(each));
  const { number, of } = replaced({ ...row.says, number: new Fraction(0) }, unknown, one.says);
  const says = upright({ number: row.says.number.sub(number), of });
  return {
    rule: 'put in',
    about: [...row.about, ...one.about],
    uses: [row.gives, one.gives],
    gives: `${row.gives} with ${one.gives}`,
    equation: row.substituted,
    rearranged: equationText(row.says, other, style),
    substituted: equationText(says, name, style),
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
  const text = (each: string): string => {
    const value = valueText('I', values.get(each)?.says.number ?? new Fraction(0), style);
    return value.startsWith('−') ? `(${value})` : value;
  };
  const left = `${name(one.alone ?? '')} = `;
  return {
    rule: 'put back',
    about: one.about,
    uses: [one.gives, ...known.map(({ gives }) => gives)],
    gives: one.alone ?? '',
    equation: one.substituted,
    rearranged: one.substituted,
    substituted: left + linearText(one.says, { name: text, style, factor: '', number: 'I' }),
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
