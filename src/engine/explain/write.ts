import { thinSpace, writeReading, type Fraction, type Unit } from '../quantity/index.ts';
import type { Course } from '../words/index.ts';
import type { rearranged, Term } from './relation.ts';

const units: Readonly<Record<string, Unit>> = { I: 'A', V: 'V', E: 'V', R: 'Ω', r: 'Ω', P: 'W' };
const others: Readonly<Record<string, string>> = { W: 'J', Q: 'C', t: 's' };

/** How a course writes the values of quantities; `figures` is already a number. */
export type Style = Pick<Course, 'letter' | 'decimalSign'> & { readonly figures: number };

/** A quantity's value with its unit, rounded. */
export function valueText(name: string, value: Fraction, { figures, decimalSign }: Style): string {
  const unit = units[name.charAt(0)];
  if (unit) return writeReading(value, unit, { figures, decimalSign }).text;
  const { number } = writeReading(value, 'W', { figures, prefix: '', decimalSign });
  return number + thinSpace + (others[name.charAt(0)] ?? '');
}

/** The name of a quantity in the letters of a course. */
export const symbol = (name: string, { letter }: Pick<Style, 'letter'>): string => name.replace(/^V/, letter);

/** A relation with what stands for each quantity. */
export function written(
  { form, left, right, root }: ReturnType<typeof rearranged>,
  text: (name: string) => string,
): string {
  const bracketed = (name: string): string => (text(name).startsWith('−') ? `(${text(name)})` : text(name));
  const of = ({ name, power }: Term): string => {
    if (form === 'reciprocals') return `1/${bracketed(name)}`;
    if (Math.abs(power) !== 2) return bracketed(name);
    return `${/[ \u202f]/.test(text(name)) ? `(${text(name)})` : text(name)}²`;
  };
  const pieces = right.map((one, index) => {
    const sign = one.sign < 0 ? '−' : '';
    if (form !== 'product') return index === 0 ? sign + of(one) : `${one.sign < 0 ? ' − ' : ' + '}${of(one)}`;
    const between = index === 0 ? sign : one.power < 0 ? ' ÷ ' : ' × ';
    return between + of(one);
  });
  const whole = root ? `√(${pieces.join('')})` : pieces.join('');
  return `${form === 'reciprocals' ? '1/' : ''}${left} = ${whole}`;
}

/** The fewest of the givens' figures cannot be told from fractions: three stand for `as given`. */
export const styleOf = (course: Course): Style => ({
  letter: course.letter,
  decimalSign: course.decimalSign,
  figures: course.figures === 'as given' ? 3 : course.figures,
});
