/** A piece of an equation written as plain text. */
export type FormulaToken =
  | { readonly kind: 'quantity'; readonly letter: string; readonly subscript: string }
  | { readonly kind: 'number'; readonly number: string; readonly unit: string }
  /** A sign, a bracket, `²`, `√`, or what is none of these. */
  | { readonly kind: 'sign'; readonly sign: string };

/** A number with its unit, if it has one; signs before it stand by themselves. */
const value = /(\d+(?:[.,]\d+)?)(?:[ \u202f\u00a0]?([\p{L}Ω°%]+))?/uy;
/** The name of a quantity up to its subscript, or a letter alone. */
const letter = /(\p{L}+)(_?)/uy;
/** A subscript that is no block, with the wire across a bridged component, or what is marked on one, as one. */
const plain = /[\p{L}\d_]+(?: bridge| rated)?/uy;

/** A block's name from its opening bracket to the one that closes it. */
function blockAt(text: string, start: number): string {
  let depth = 0;
  for (let at = start; at < text.length; at += 1) {
    if (text[at] === '(') depth += 1;
    else if (text[at] === ')' && --depth === 0) return text.slice(start, at + 1);
  }
  return text.slice(start);
}

/** The pieces of an equation that is written as plain text: `I_R1 = 12.0 V ÷ R_(R1+R2)`. */
export function formulaTokens(text: string): readonly FormulaToken[] {
  const tokens: FormulaToken[] = [];
  const match = (pattern: RegExp, at: number): RegExpExecArray | null => {
    pattern.lastIndex = at;
    return pattern.exec(text);
  };
  for (let at = 0; at < text.length;) {
    const number = match(value, at);
    const name = number ? null : match(letter, at);
    if (number) {
      tokens.push({ kind: 'number', number: number[1] ?? '', unit: number[2] ?? '' });
      at += number[0].length;
    } else if (name) {
      at += name[0].length;
      const subscript = !name[2] ? '' : text[at] === '(' ? blockAt(text, at) : (match(plain, at)?.[0] ?? '');
      tokens.push({ kind: 'quantity', letter: name[1] ?? '', subscript });
      at += subscript.length;
    } else {
      const sign = String.fromCodePoint(text.codePointAt(at) ?? 0);
      if (sign.trim()) tokens.push({ kind: 'sign', sign });
      at += sign.length;
    }
  }
  return tokens;
}
