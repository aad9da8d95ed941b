import { formulaTokens, type FormulaToken } from './formula-token.ts';

/** An equation, or a part of it, to be set for the eye. */
export type Formula =
  | FormulaToken
  /** One after another. */
  | { readonly kind: 'row'; readonly parts: readonly Formula[] }
  | { readonly kind: 'fraction'; readonly above: Formula; readonly below: Formula }
  | { readonly kind: 'square' | 'root' | 'brackets'; readonly of: Formula };

/** What stands over or under a line needs no brackets, nor does what stands under a root. */
const bare = (formula: Formula): Formula => (formula.kind === 'brackets' ? formula.of : formula);

const row = (parts: readonly Formula[]): Formula => {
  const [only] = parts;
  return only && parts.length === 1 ? only : { kind: 'row', parts };
};

/** Reads tokens from the first on. */
class Reader {
  readonly #tokens: readonly FormulaToken[];
  #at = 0;

  constructor(tokens: readonly FormulaToken[]) {
    this.#tokens = tokens;
  }

  /** Everything up to the end, or inside brackets up to the one that closes them: terms, and the signs between them. */
  all(isInside: boolean): readonly Formula[] {
    const parts: Formula[] = [];
    for (let next = this.#next; next && !(isInside && this.#is(')')); next = this.#next) {
      if (next.kind !== 'sign' || this.#is('(', '√')) parts.push(this.#product());
      else {
        parts.push(next);
        this.#at += 1;
      }
    }
    return parts;
  }

  get #next(): FormulaToken | undefined {
    return this.#tokens[this.#at];
  }

  #is(...signs: readonly string[]): boolean {
    const next = this.#next;
    return next?.kind === 'sign' && signs.includes(next.sign);
  }

  /** Factors; what is divided by stands under all that came before it. */
  #product(): Formula {
    let parts = [this.#factor()];
    while (this.#is('×', '÷', '/')) {
      const isTimes = this.#is('×');
      this.#at += 1;
      const next = this.#factor();
      if (isTimes) parts.push({ kind: 'sign', sign: '×' }, next);
      else parts = [{ kind: 'fraction', above: bare(row(parts)), below: bare(next) }];
    }
    return row(parts);
  }

  #factor(): Formula {
    const base = this.#base();
    if (!this.#is('²')) return base;
    this.#at += 1;
    return { kind: 'square', of: base };
  }

  #base(): Formula {
    if (this.#is('√')) {
      this.#at += 1;
      return { kind: 'root', of: this.#next ? bare(this.#base()) : row([]) };
    }
    const token = this.#next;
    this.#at += 1;
    if (!token) return row([]);
    if (token.kind !== 'sign' || token.sign !== '(') return token;
    const of = row(this.all(true));
    this.#at += 1;
    return { kind: 'brackets', of };
  }
}

/**
 * An equation of a derivation, written as plain text, as terms and the signs between them: `×` and `÷` bind more than `+` and `−`,
 * which bind more than `=`. What is no equation comes out as its pieces one after another.
 */
export const formulaOf = (text: string): readonly Formula[] => new Reader(formulaTokens(text)).all(false);
