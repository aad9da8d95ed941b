import { inUnit, scanCode, scanNumber, type Prefix, type Unit } from '../quantity/index.ts';
import { mistake, type Wrong } from './mistake.ts';
import type { Token } from './token.ts';

const unitPattern = /\s*([pnu\u00b5\u03bcmkMG]?)(Ω|\u2126|ohms?|[VAWF]|\u00b0\s?C|lx)(?![\p{L}\p{N}])/uy;
/** A word that may be a unit misread. */
const wordPattern = /(\s*)([A-Za-zΩω][A-Za-zΩω\d]{0,9})(?![\p{L}\p{N}])/uy;
const tolerances = { F: 1, G: 2, J: 5, K: 10 };

/** A number and a word behind it that is no unit, what is probably meant, and what else it could be. */
const misreadings: readonly (readonly [RegExp, suggestion: string, other?: string])[] = [
  [/(.*\d) ?R$/, '$1 Ω', '$1 Ω + R'],
  [/(.*\d) ?M$/, '$1 MΩ', '$1 mΩ'],
  [/^(\d+)L(\d+)$/, '$1.$2 mΩ', '$1 Ω + L$2'],
  [/^(\d+)([VAW])(\d+)$/, '$1.$3 $2', '$1 $2'],
  ...Object.entries(tolerances).map(
    ([letter, percent]) =>
      [RegExp(`^(\\d+)([kM])(\\d+)${letter}$`), `$1.$3 $2Ω ±${percent}%`, '$1.$3 $2Ω'] as const,
  ),
  [/(.*\d) ?k(Ω|ohms?)?$/i, '$1 kΩ'],
  [/(.*\d) ?([pnumg]?)(Ω|ohms?)$/i, '$1 $2Ω'],
  [/(.*\d) ?(deg(rees)?)? ?C(elsius)?$/, '$1 °C'],
  ...['V(olt)?', 'A(mp(ere)?)?', 'W(att)?'].map(
    (unit) => [RegExp(`(.*\\d) ?([pnumkg]?)${unit}s?$`, 'i'), `$1 $2${unit.charAt(0)}`] as const,
  ),
];

function misread(found: string): Wrong | undefined {
  for (const [pattern, suggestion, other] of misreadings) {
    if (!pattern.test(found)) continue;
    const about = other && found.replace(pattern, other);
    return mistake(
      about ? 'two readings' : 'write instead',
      found,
      found.replace(pattern, suggestion),
      about,
    );
  }
  return undefined;
}

/** A value as most are written, which is one token whatever stands round it. */
const valuePattern = /\d[\d.]* ?[mkM]?[ΩVAW](?![\p{L}\p{N}])/uy;
/** Such values as have been read: circuits have many in common. */
const known = new Map<string, Token>();
const mostKnown = 500;

/**
 * The token of a number that starts at a place: with its unit a quantity, else a code (IEC 60062), else a bare number;
 * undefined where no number stands there.
 */
export function numberToken(text: string, at: number): Token | undefined {
  valuePattern.lastIndex = at;
  const [written = ''] = valuePattern.exec(text) ?? [];
  const before = known.get(written);
  if (before) return { ...before, at, end: at + written.length };
  const token = read(text, at);
  if (token?.text === written && token.quantity && known.size < mostKnown) known.set(written, token);
  return token;
}

function read(text: string, at: number): Token | undefined {
  const number = scanNumber(text, at);
  const token = (type: Token['type'], end: number, rest: Partial<Token>): Token => ({
    type,
    text: text.slice(at, end),
    at,
    end,
    ...rest,
  });
  if (!number) {
    const after = /^[.,]\d/.test(text.slice(at, at + 2)) && numberToken(text, at + 1);
    if (!after) return undefined;
    const written = text.slice(at, after.end);
    return token('quantity', after.end, {
      mistake: mistake('write instead', written, `0.${written.slice(1)}`),
    });
  }
  const { end, trouble } = number;
  const written = text.slice(at, end);
  unitPattern.lastIndex = wordPattern.lastIndex = end;
  const [all = '', prefix = '', name] = unitPattern.exec(text) ?? [];
  const si = prefix && (/[u\u03bc]/.test(prefix) ? 'µ' : (prefix as Prefix));
  const unit = name && (/^(\u2126|ohm)/.test(name) ? 'Ω' : (name.replace(/\s/, '') as Unit));
  if (trouble) {
    const both = (sign: string): string => `${written.replace(',', sign)} ${si}${unit ?? ''}`.trim();
    const wrong =
      trouble === 'thousands'
        ? mistake('two readings', written, both(''), both('.'))
        : mistake(trouble === 'too long' ? 'number too long' : 'zero below', written);
    return token('quantity', end + all.length, { mistake: wrong });
  }
  if (unit) return token('quantity', end + all.length, { number, quantity: inUnit(number, unit, si) });
  const code = scanCode(text, at);
  if (code) return token('code', code.end, { quantity: code.quantity });
  const [rest = '', space, word] = wordPattern.exec(text) ?? [];
  const wrong = word && misread(`${written}${space && ' '}${word}`);
  return wrong ? token('quantity', end + rest.length, { mistake: wrong }) : token('number', end, { number });
}
