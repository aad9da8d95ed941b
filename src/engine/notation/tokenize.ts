import { inLatin } from '../circuit/index.ts';
import { scanCode } from '../quantity/index.ts';
import { mistake } from './mistake.ts';
import { numberToken } from './number-token.ts';
import type { Token, TokenType } from './token.ts';

const blank = /(?:[\s\u200b\u2060]|<(?:br|\/?p)\b[^<>]*>|#(?:(?!<(?:br|\/p)\b)[^\n\r\u2028\u2029])*)+/iy;
const piece =
  /(\p{Lu}[\p{L}\p{N}_]*(?:[.,]\d[\p{L}\d]*)?)|(\p{Ll}+)|@([\p{L}\p{N}]*)|\+\/?[-‐-―−﹘﹣－]|\|\||\/\/|\.{2,3}|./suy;
/** Bounded as in the JSON form. */
const label = /^[A-Z]{1,20}[a-z]{0,20}\d{0,9}[a-z]?$/;

const signs: readonly TokenType[] = ['+', '∥', '(', ')', '[', ']', ';', '..', '±', '%', '×'];
const spellings: Readonly<Record<string, TokenType>> = {
  '‖': '∥',
  '||': '∥',
  '//': '∥',
  '…': '..',
  '...': '..',
  x: '×',
};
/** Signs that are not read, and what is probably meant. */
const instead: Readonly<Record<string, TokenType>> = {
  '|': '∥',
  '∣': '∥',
  '/': '∥',
  '{': '(',
  '}': ')',
  '*': '×',
  ',': '+',
  '→': '+',
};
/** What people put between a label and its value, or between two values. */
const between = /^[,/=:]$/;

type Piece = Omit<Token, 'at' | 'end'>;

function labelPiece(found: string): Piece {
  const text = found.replace(/[₀-₉]/g, (digit) => String.fromCharCode(digit.charCodeAt(0) - 0x2050));
  const code = scanCode(text, 0);
  if (label.test(text)) return { type: 'label', text, ...(code && { quantity: code.quantity }) };
  const plain = inLatin(text).replaceAll('_', '');
  if (label.test(plain)) {
    const code = text.includes('_') ? 'write instead' : 'look-alike';
    return { type: 'label', text: plain, mistake: mistake(code, found, plain) };
  }
  const [, letters, digit = '', value = ''] = /^([A-Z]+[a-z]*)(\d)(.+)$/u.exec(text) ?? [];
  const glued = /^\d/.test(value) ? `${letters}${digit} ${value}` : `${letters}1 ${digit}${value}`;
  const wrong = letters
    ? mistake('space after label', found, glued)
    : mistake('expected', found, '', found === 'Ω' ? 'number' : 'label');
  return { type: 'stray', text, mistake: wrong };
}

function junctionPiece(text: string): Piece {
  if (/^[A-Za-z][A-Za-z\d]{0,63}$/.test(text)) return { type: '@', text };
  const wrong = mistake('write instead', `@${text}`, `@p${text.replace(/\D/g, '').slice(0, 9)}`);
  return { type: '@', text: '', mistake: wrong };
}

/** A sign, and whether a digit stands behind it. */
function signPiece(text: string, valued: boolean): Piece {
  const plain = inLatin(text);
  if (valued && between.test(plain)) return { type: 'stray', text, mistake: mistake('one too many', text) };
  const meant = instead[plain] ?? signs.find((sign) => sign === plain && plain !== text);
  if (meant) return { type: meant, text, mistake: mistake('write instead', text, meant) };
  const type = signs.find((sign) => sign === text) ?? spellings[text];
  if (type) return { type, text };
  if (/^[-‐-―−﹘﹣－]/.test(text)) return { type: '–', text };
  if (text.length > 1 && text.startsWith('+')) return { type: '±', text };
  const quote = /^["'“”„‟‘’‚‛«»]/.test(text);
  const other = text === '?' ? 'hidden' : /^\w+$/.test(plain) ? plain : '';
  const wrong = mistake(other ? 'write instead' : 'unexpected character', text, other);
  return { type: quote ? 'quote' : 'stray', text, mistake: wrong };
}

function pieceOf(all: string, valued: boolean, capital?: string, small?: string, name?: string): Piece {
  if (capital) return labelPiece(capital);
  if (small && small !== 'x') return { type: 'word', text: small };
  return name === undefined ? signPiece(all, valued) : junctionPiece(name);
}

/** Cuts a text into its longest tokens; blanks, remarks, stray tags and quotes round the whole fall away. The last is `end`. */
export function tokenize(text: string): readonly Token[] {
  const tokens: Token[] = [];
  let at = 0;
  for (;;) {
    blank.lastIndex = at;
    at += blank.exec(text)?.[0].length ?? 0;
    piece.lastIndex = at;
    const [all = '', capital, small, name] = piece.exec(text) ?? [];
    if (!all) break;
    const rest = at + all.length;
    const found =
      numberToken(text, at) ?? pieceOf(all, /^\s*\d/.test(text.slice(rest, rest + 9)), capital, small, name);
    const token = { end: at + all.length, ...found, at };
    tokens.push(token);
    at = token.end;
  }
  const end = tokens.at(-1)?.end ?? 0;
  if (tokens.length > 1 && tokens[0]?.type === 'quote' && tokens.at(-1)?.type === 'quote') {
    tokens.shift();
    tokens.pop();
  }
  return [...tokens, { type: 'end', text: '', at: end, end }];
}
