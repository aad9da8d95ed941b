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

/** So much of one quantity. */
export const amount = (name: string, factor: Fraction = new Fraction(1)): Linear => ({
  number: none,
  of: new Map([[name, factor]]),
});

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

/** Something with a quantity replaced by what it is. */
export function replaced(whole: Linear, name: string, by: Linear): Linear {
  const factor = whole.of.get(name);
  if (!factor) return whole;
  const others = new Map([...whole.of].filter(([other]) => other !== name));
  return plus({ number: whole.number, of: others }, scaled(by, factor));
}

/** How an equation is written: what stands for a quantity, what its factors are, and what its number. */
export interface Writer {
  readonly name: (name: string) => string;
  readonly style: Style;
  /** The letter of a quantity in the unit of the factors; '' where they are pure numbers. */
  readonly factor: 'R' | '';
  readonly number: 'E' | 'I';
}

const numberAlone = (value: Fraction, { figures, decimalSign }: Style): string =>
  writeReading(value, 'W', { figures, prefix: '', decimalSign }).number;

/** One term of it without its sign. */
function termText(name: string, factor: Fraction, { name: called, style, factor: letter }: Writer): string {
  const size = factor.abs();
  if (letter === '') return size.equals(1) ? called(name) : `${numberAlone(size, style)} × ${called(name)}`;
  return `${valueText(letter, size, style)} × ${called(name)}`;
}

/** All terms with their signs, the number first where there is one. */
export function linearText({ number, of }: Linear, writer: Writer): string {
  const terms = [...of].map(([name, factor]) => [factor.compare(0), termText(name, factor, writer)] as const);
  const alone = [number.compare(0), valueText(writer.number, number.abs(), writer.style)] as const;
  return chained(number.equals(0) && terms.length > 0 ? terms : [alone, ...terms]);
}

/** An equation turned so that its number, or else its first term, is not negative. */
export function upright(says: Linear): Linear {
  const [first] = says.of.values();
  const leading = says.number.equals(0) ? first : says.number;
  return leading && leading.compare(0) < 0 ? scaled(says, new Fraction(-1)) : says;
}

/** An equation in volts: its number is so much of each current. */
export const equationText = (says: Linear, name: Writer['name'], style: Style): string => {
  const writer: Writer = { name, style, factor: 'R', number: 'E' };
  return `${says.number.equals(0) ? noVolts : linearText(constant(says.number), writer)} = ${linearText({ ...says, number: none }, writer)}`;
};
