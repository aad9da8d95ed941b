import { nearest } from '../circuit/index.ts';
import { Fraction, scanNumber } from '../quantity/index.ts';
import type { ClaimData, ClaimMistake, ClaimWrong } from './codes.ts';
import type { Expression, Operation } from './expression.ts';
import { agree, bare, dimensionOf, scanUnit, unitOf, type Dimension } from './units.ts';

/** A claim: the left side less the right one has one of these signs. */
export interface Claim {
  readonly difference: Expression;
  readonly left: Expression;
  readonly right: Expression;
  readonly signs: readonly number[];
  /** Of both sides; '' for bare numbers. */
  readonly unit: string;
  /** No polynomial in one setting that decides the claim has a higher degree. */
  readonly degree: number;
}

const [characters, brackets, values] = [500, 30, 24];

const relations: readonly (readonly [RegExp, readonly number[]])[] = [
  [/<=|=<|[≤⩽]/y, [-1, 0]],
  [/>=|=>|[≥⩾]/y, [0, 1]],
  [/!=|≠/y, [-1, 1]],
  [/==?/y, [0]],
  [/</y, [-1]],
  [/>/y, [1]],
];

/** A part of a claim with its dimension. */
interface Part {
  readonly expression: Expression;
  readonly dimension: Dimension;
}

/** Ends the reading at a mistake. */
export class Mistaken extends Error {
  readonly mistake: ClaimMistake;
  constructor(mistake: ClaimMistake) {
    super(mistake.wrong.code);
    this.mistake = mistake;
  }
}

/** Reads a claim over quantities of these names by recursive descent. */
class Reader {
  readonly text: string;
  readonly names: ReadonlySet<string>;
  /** The name that was probably meant by what is none. */
  readonly meant: (name: string) => string;
  at = 0;
  degree = 0;
  #depth = 0;

  constructor(text: string, names: readonly string[], meant: (name: string) => string) {
    this.text = text;
    this.names = new Set(names);
    this.meant = meant;
  }

  /** Takes what matches here, after spaces. */
  take(pattern: RegExp): string | undefined {
    this.at += /^\s*/u.exec(this.text.slice(this.at))?.[0].length ?? 0;
    pattern.lastIndex = this.at;
    const found = pattern.exec(this.text)?.[0];
    this.at += found?.length ?? 0;
    return found;
  }

  fail(wrong: ClaimWrong, at = this.at, end = this.at, suggestion = ''): never {
    throw new Mistaken({ wrong, at, end, suggestion });
  }

  /** Something else should stand here. */
  expect(expected: ClaimData['claim expects']['expected']): never {
    const found = this.take(/[\p{L}\d_]+|./suy) ?? '';
    this.fail({ code: 'claim expects', data: { expected, found } }, this.at - found.length);
  }

  count(much: number): void {
    this.degree += much;
    if (this.degree > values) this.fail({ code: 'claim too large', data: { limit: values } });
  }

  joined(operation: Operation, left: Part, right: Part): Part {
    const sign = operation === '/' ? -1 : 1;
    const [a, b] = [left.dimension, right.dimension];
    if (!/[*/]/.test(operation)) this.like(a, b);
    const dimension =
      operation === '*' || operation === '/'
        ? {
            volts: a.volts + sign * b.volts,
            amperes: a.amperes + sign * b.amperes,
            ...(a.isBare && b.isBare && { isBare: a.isBare }),
          }
        : a.isBare
          ? b
          : a;
    return { dimension, expression: { kind: operation, left: left.expression, right: right.expression } };
  }

  like(a: Dimension, b: Dimension): void {
    if (agree(a, b)) return;
    this.fail({ code: 'units differ', data: { left: unitOf(a), right: unitOf(b) } }, 0, this.text.length);
  }

  sum(): Part {
    let part = this.term();
    for (let sign; (sign = this.take(/[+\-‐-―−]/y));)
      part = this.joined(sign === '+' ? '+' : '-', part, this.term());
    return part;
  }

  term(): Part {
    let part = this.product();
    for (let sign; (sign = this.take(/[*×·⋅∙/÷:]/y));)
      part = this.joined(/[/÷:]/.test(sign) ? '/' : '*', part, this.product());
    return part;
  }

  /** Factors side by side bind tighter than a sign: E² / 4 r is E² / (4 r). */
  product(): Part {
    let part = this.signed();
    while (this.take(/(?=[\p{L}\d(])/uy) !== undefined) part = this.joined('*', part, this.signed());
    return part;
  }

  signed(): Part {
    const minus = this.take(/[\-‐-―−]/y);
    const before = this.degree;
    const part = this.value();
    const squared = this.take(/²|\^\s*2(?!\d)/y) ? this.squared(part, this.degree - before) : part;
    const less: Part = { dimension: bare, expression: { kind: 'number', value: new Fraction(-1) } };
    return minus ? this.joined('*', less, squared) : squared;
  }

  squared(part: Part, degree: number): Part {
    this.count(degree);
    return this.joined('*', part, part);
  }

  value(): Part {
    if (this.take(/\(/y)) {
      if (++this.#depth > brackets)
        this.fail({ code: 'too deep', data: { found: '', suggestion: '', about: `${brackets}` } });
      const inner = this.sum();
      this.#depth -= 1;
      if (!this.take(/\)/y)) this.expect('bracket');
      return inner;
    }
    const name = this.take(/\p{L}[\p{L}\d_]*/uy);
    if (name) return this.named(name);
    const number = scanNumber(this.text, this.at);
    if (!number) this.expect('value');
    const found = this.text.slice(this.at, number.end);
    if (number.trouble) {
      const [code, suggestion, about] = {
        thousands: ['two readings', found.replace(',', ''), found.replace(',', '.')] as const,
        'too long': ['number too long', '', ''] as const,
        'zero below': ['zero below', '', ''] as const,
      }[number.trouble];
      this.fail({ code, data: { found, suggestion, about } }, this.at, number.end, suggestion);
    }
    const unit = scanUnit(this.text, number.end);
    this.at = unit?.end ?? number.end;
    this.count(1);
    const value = unit ? number.value.mul(unit.times) : number.value;
    return { dimension: unit?.dimension ?? bare, expression: { kind: 'number', value } };
  }

  named(name: string): Part {
    if (!this.names.has(name)) {
      const suggestion = this.meant(name);
      this.fail(
        { code: 'not in this circuit', data: { found: name, suggestion } },
        this.at - name.length,
        this.at,
        suggestion,
      );
    }
    this.count(name.startsWith('P') ? 2 : 1);
    return { dimension: dimensionOf(name), expression: { kind: 'name', name } };
  }

  claim(): Claim {
    const left = this.sum();
    const signs = relations.find(([pattern]) => this.take(pattern))?.[1];
    if (!signs) this.expect('comparison');
    const right = this.sum();
    if (this.at < this.text.trimEnd().length) this.expect('end');
    this.like(left.dimension, right.dimension);
    const [a, b] = [left.expression, right.expression];
    const unit = unitOf(left.dimension.isBare ? right.dimension : left.dimension);
    const difference = { kind: '-', left: a, right: b } as const;
    return { left: a, right: b, difference, signs, unit, degree: this.degree };
  }
}

/** Reads a claim such as `V_R1 = 2 V_R2`; throws Mistaken, with what was probably meant by a name that is none. */
export function readClaim(
  text: string,
  names: readonly string[],
  meant: (name: string) => string = (name) => nearest(name, names),
): Claim {
  const reader = new Reader(text, names, meant);
  if (text.length > characters) {
    reader.fail(
      { code: 'text too long', data: { found: '', suggestion: '', about: `${characters}` } },
      characters,
      text.length,
    );
  }
  return reader.claim();
}
