import { thinSpace, writeReading, type Fraction, type Unit } from '../quantity/index.ts';
import type { Course } from '../words/index.ts';
import type { Term, Turned } from './relation.ts';

const units: Readonly<Record<string, Unit>> = { I: 'A', V: 'V', E: 'V', R: 'Ω', r: 'Ω', P: 'W' };
const others: Readonly<Record<string, string>> = { W: 'J', Q: 'C', t: 's' };

/** The unit of a quantity that a board can show; undefined of an energy, a charge, a time. */
export const unitOf = (name: string): Unit | undefined => units[name.charAt(0)];

/** How a course writes the values of quantities; `figures` is already a number. */
export type Style = Pick<Course, 'letter' | 'decimalSign'> & { readonly figures: number };

/** A quantity's value with its unit, rounded. */
export function valueText(name: string, value: Fraction, { figures, decimalSign }: Style): string {
  const unit = unitOf(name);
  if (unit) return writeReading(value, unit, { figures, decimalSign }).text;
  const { number } = writeReading(value, 'W', { figures, prefix: '', decimalSign });
  return number + thinSpace + (others[name.charAt(0)] ?? '');
}

/** The name of a quantity in the letters of a course. */
export const symbol = (name: string, { letter }: Pick<Style, 'letter'>): string => name.replace(/^V/, letter);

/** Terms one after another, each with its sign between. */
export const chained = (terms: readonly (readonly [sign: number, text: string])[]): string =>
  terms
    .map(([sign, text], index) => (index === 0 ? (sign < 0 ? '−' : '') : sign < 0 ? ' − ' : ' + ') + text)
    .join('');

/** A relation with what stands for each quantity. */
export function written({ form, left, right, root, trial }: Turned, text: (name: string) => string): string {
  const bracketed = (name: string): string => (text(name).startsWith('−') ? `(${text(name)})` : text(name));
  const factor = ({ name, power }: Term): string => {
    if (Math.abs(power) !== 2) return bracketed(name);
    return `${text(name).includes(thinSpace) ? `(${text(name)})` : text(name)}²`;
  };
  if (form === 'sum') {
    if (right.length === 0) return `${text(left)} = 0${thinSpace}A`; // only a current is said to be nothing
    const terms = right.toSorted((a, b) => b.sign - a.sign);
    const [first, ...others] = terms;
    const alone = first && others.length === 0 && first.sign > 0 ? text(first.name) : undefined;
    return `${text(left)} = ${alone ?? chained(terms.map(({ name, sign }) => [sign, bracketed(name)]))}`;
  }
  if (form === 'balance') {
    const [one = '', two = '', three = '', four = ''] = right.map(({ name }) => bracketed(name));
    return `${one} ÷ ${two} = ${three} ÷ ${four}`;
  }
  if (trial) {
    const currents = right.map(({ name }) => `${text(trial)} ÷ ${bracketed(name)}`).join(' + ');
    return `${text(left)} = ${text(trial)} ÷ (${currents})`;
  }
  if (form === 'reciprocals')
    return `1/${text(left)} = ${chained(right.map(({ name, sign }) => [sign, `1/${bracketed(name)}`]))}`;
  if (form === 'product over sum') {
    const above = right.map(({ name }) => bracketed(name)).join(' × ');
    const terms = right.toSorted((a, b) => b.sign - a.sign);
    return `${text(left)} = ${above} ÷ (${chained(terms.map(({ name, sign }) => [sign, bracketed(name)]))})`;
  }
  const isNegative = right.filter(({ sign, power }) => sign < 0 && Math.abs(power) !== 2).length % 2 > 0;
  const product = right
    .map((one, index) => (index > 0 ? (one.power < 0 ? ' ÷ ' : ' × ') : isNegative ? '−' : '') + factor(one))
    .join('');
  return `${text(left)} = ${root ? `${root < 0 ? '−' : ''}√(${product})` : product}`;
}

/** How a course writes; three figures where it leaves them to what is given, and that is not known here. */
export const styleOf = (course: Course): Style => ({
  letter: course.letter,
  decimalSign: course.decimalSign,
  figures: course.figures === 'as given' ? 3 : course.figures,
});
