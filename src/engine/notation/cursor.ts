import { CircuitFormatError } from '../circuit/index.ts';
import type { Expected } from './codes.ts';
import { kindOfWord } from './fields.ts';
import { mistake, mistakeLimit, type Found, type Wrong } from './mistake.ts';
import type { Token, TokenType } from './token.ts';

/** Thrown where a mistake, noted already, ends the reading of a component; one for all, since a stack trace takes its time. */
const halted = new Error('A mistake is noted.');

/** The labels that stand where a component is named: first in a branch or a statement, or behind a kind word. */
export function named(tokens: readonly Token[]): readonly Token[] {
  return tokens.filter(({ type }, index) => {
    const { type: before = ';', text = '' } = tokens[index - 1] ?? {};
    return type === 'label' && ('+∥(;'.includes(before) || (before === 'word' && kindOfWord(text)));
  });
}

/** A token as it stands in the line. */
export function written({ type, text }: Token): string {
  return type === '@' ? `@${text}` : text;
}

/** The place in a line that is being read, and the mistakes found so far. */
export class Cursor {
  readonly mistakes: Found[] = [];
  readonly text: string;
  readonly tokens: readonly Token[];
  /** Every label that stands where a component is named. */
  readonly labels: ReadonlySet<string>;
  #place = 0;

  constructor(text: string, tokens: readonly Token[]) {
    this.text = text;
    this.tokens = tokens;
    this.labels = new Set(named(tokens).map((label) => label.text));
  }

  /** The token to be read next. */
  get token(): Token {
    return this.ahead(0);
  }

  /** A token further on, or back; the last is `end`. */
  ahead(steps: number): Token {
    const end = this.text.length;
    return this.tokens[this.#place + steps] ?? { type: 'end', text: '', at: end, end };
  }

  /** The first label of a letter that no component has. */
  free(letter: string): string {
    let number = 1;
    while (this.labels.has(`${letter}${number}`)) number++;
    return `${letter}${number}`;
  }

  /** Whether one of these is next. */
  is(...types: readonly TokenType[]): boolean {
    return types.includes(this.token.type);
  }

  /** Reads a token of this type (and, if given, this text), if it is next; what is wrong with it is noted. */
  take(type: TokenType, text: string = this.token.text): Token | undefined {
    const { token } = this;
    if (token.type !== type || token.text !== text) return undefined;
    this.#place += 1;
    if (token.mistake) this.note(token, token.mistake);
    if (token.mistake && type === 'quantity') throw halted;
    return token;
  }

  /** Reads a token of this type, which must be next. */
  expect(type: TokenType, expected: Expected, suggestion?: string): Token {
    return this.take(type) ?? this.fail(expected, suggestion);
  }

  /** The text from a token up to the place reached. */
  since({ at }: Token): string {
    return this.text.slice(at, this.ahead(-1).end);
  }

  /** Notes a mistake and reads on, unless it is the last that anyone reads. */
  note({ at }: { readonly at: number }, wrong: Wrong): void {
    this.mistakes.push({ at, wrong });
    if (this.mistakes.length >= mistakeLimit) this.#place = this.tokens.length;
  }

  /** The same for a mistake of the notation. */
  flag(at: { readonly at: number }, ...of: Parameters<typeof mistake>): void {
    this.note(at, mistake(...of));
  }

  /** Notes a mistake that ends the reading of what it is in. */
  halt(at: Token, wrong: Wrong): never {
    this.note(at, wrong);
    throw halted;
  }

  /** The same for a mistake of the notation; what is found is what has been read, unless said. */
  wrong(at: Token, ...[code, found = this.since(at), ...rest]: Parameters<typeof mistake>): never {
    this.halt(at, mistake(code, found, ...rest));
  }

  /** Does what refuses what does not fit, and says so where it stands. */
  guard<T>(at: Token, check: () => T): T {
    try {
      return check();
    } catch (error) {
      if (!(error instanceof CircuitFormatError)) throw error;
      return this.halt(at, { code: error.code, data: error.data } as Wrong);
    }
  }

  /** Says that something else was expected here. */
  fail(expected: Expected, suggestion?: string): never {
    const { token } = this;
    this.halt(token, token.mistake ?? mistake('expected', written(token), suggestion, expected));
  }

  /** Reads something; a mistake leads on to the next of `stops` that is not inside brackets, or to the end of the statement. */
  attempt<T>(read: () => T, stops = '+∥)'): T | undefined {
    try {
      return read();
    } catch (error) {
      if (error !== halted) throw error;
    }
    for (let depth = 0; !this.is(';', 'end'); this.#place += 1) {
      const { type } = this.token;
      if (depth === 0 && stops.includes(type)) break;
      if (type === '(') depth += 1;
      if (type === ')') depth -= 1;
    }
    return undefined;
  }
}
