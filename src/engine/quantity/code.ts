import { inUnit } from './number.ts';
import { Fraction, powerOfTen } from './fraction.ts';
import type { Prefix } from './prefix.ts';
import type { Quantity } from './quantity.ts';

/** A resistance in the letter code of IEC 60062, and where in the text it ends. */
export interface CodeReading {
  readonly quantity: Quantity;
  readonly end: number;
}

// The letter stands where the decimal point would; an ohm sign may follow, no other letter or digit.
const pattern = /(?:(\d{1,30})([RkKM])(\d{0,30})|R(\d{2,30}))(?:\s*[Ω\u2126])?(?![\p{L}\d])/uy;
const prefixes: Readonly<Record<string, Prefix>> = { k: 'k', K: 'k', M: 'M' };

/** Reads the code that starts at a place in a text: `4k7`, `470R`, `R47`, `1M0`; undefined where there is none. */
export function scanCode(text: string, at: number): CodeReading | undefined {
  pattern.lastIndex = at;
  const [all, whole = '0', letter = 'R', part, after = part ?? ''] = pattern.exec(text) ?? [];
  if (all === undefined) return undefined;
  const value: Fraction = powerOfTen(-after.length).mul(BigInt(whole + after));
  const number = { value, decimals: after.length, end: at + all.length };
  return { quantity: inUnit(number, 'Ω', prefixes[letter] ?? ''), end: number.end };
}
