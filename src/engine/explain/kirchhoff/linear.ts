import { Fraction, writeReading } from '../../quantity/index.ts';
import { chained, valueText, type Style } from '../write.ts';

/** Something that is so much of each of some quantities, and a number. */
export interface Linear {
  readonly number: Fraction;
  readonly of: ReadonlyMap<string, Fraction>;
}

const none = new Fraction(0);
/** No e.m.f. at all. */
export const noVolts: string = writeReading(0, 'V').text;

/** A number alone. */
export const constant = (number: Fraction): Linear => ({ number, of: new Map() });

/** Nothing at all. */
export const nothing: Linear = constant(none);

/** One quantity alone. */
export const amount = (name: string): Linear => ({ number: none, of: new Map([[name, new Fraction(1)]]) });

/** So many times something. */
export const scaled = ({ number, of }: Linear, by: Fraction): Linear => ({
  number: number.mul(by),
  of: new Map([...of].map(([name, factor]) => [name, factor.mul(by)])),
});

/** Two added; what adds up to nothing is left out. */
export function plus(a: Linear, b: Linear): Linear {
  const of = new Map(a.of);
  for (const [name, factor] of b.of) of.set(name, (of.get(name) ?? none).add(factor));
  return { number: a.number.add(b.number), of: new Map([...of].filter(([, factor]) => !factor.equals(0))) };
}

/** The other way round. */
export const negated = (one: Linear): Linear => scaled(one, new Fraction(-1));

/** Something without one of its quantities. */
export const without = ({ number, of }: Linear, name: string): Linear => ({
  number,
  of: new Map([...of].filter(([other]) => other !== name)),
});

/** Something with a quantity replaced by what it is. */
export function replaced(whole: Linear, name: string, by: Linear): Linear {
  const factor = whole.of.get(name);
  return factor ? plus(without(whole, name), scaled(by, factor)) : whole;
}

/** Whether it has more than one term. */
export const isSum = ({ number, of }: Linear): boolean => of.size + (number.equals(0) ? 0 : 1) > 1;

/** What stands for a quantity, and how values are written. */
export interface Writing {
  readonly name: (name: string) => string;
  readonly style: Style;
}

/** All terms with their signs, the number first where there is one; `termOf` gives a term without its sign. */
function text(
  { number, of }: Linear,
  numberOf: (size: Fraction) => string,
  termOf: (name: string, size: Fraction) => string,
): string {
  const terms = [...of].map(([name, factor]) => [factor.compare(0), termOf(name, factor.abs())] as const);
  const alone = [number.compare(0), numberOf(number.abs())] as const;
  return chained(number.equals(0) && terms.length > 0 ? terms : [alone, ...terms]);
}

/** So much of each current as p.d.s: its factors are resistances. */
export const inVolts = (says: Linear, { name, style }: Writing): string =>
  text(
    says,
    (size) => valueText('E', size, style),
    (one, size) => `${valueText('R', size, style)} × ${name(one)}`,
  );

/** So much of each current as a current: its factors are pure numbers. */
export const inAmperes = (says: Linear, { name, style }: Writing): string =>
  text(
    says,
    (size) => valueText('I', size, style),
    (one, size) => (size.equals(1) ? name(one) : `${numberAlone(size, style)} × ${name(one)}`),
  );

/** The same, in brackets where it stands in a product and needs them. */
export function factorInAmperes(says: Linear, writing: Writing): string {
  const factor = inAmperes(says, writing);
  return isSum(says) || factor.startsWith('−') ? `(${factor})` : factor;
}

const numberAlone = (value: Fraction, { figures, decimalSign }: Style): string =>
  writeReading(value, 'W', { figures, prefix: '', decimalSign }).number;

/** An equation turned so that its number, or else its first term, is not negative. */
export function upright(says: Linear): Linear {
  const [first] = says.of.values();
  const leading = says.number.equals(0) ? first : says.number;
  return leading && leading.compare(0) < 0 ? negated(says) : says;
}

/** An equation in volts: its number is so much of each current. */
export function equationText(says: Linear, writing: Writing): string {
  const left = says.number.equals(0) ? noVolts : inVolts(constant(says.number), writing);
  return `${left} = ${inVolts({ ...says, number: none }, writing)}`;
}
