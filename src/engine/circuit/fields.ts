import { Fraction, powerOfTen } from '../quantity/index.ts';
import { say, type Said } from '../words/index.ts';
import type { FormatData } from './codes.ts';
import { CircuitFormatError } from './format-error.ts';

/** Refuses what stands at a path. */
export function refuse<Code extends keyof FormatData>(
  path: string,
  code: Code,
  data: FormatData[Code],
): never {
  const said = { code, data } as Said<keyof FormatData>;
  throw new CircuitFormatError(path, said, say(said));
}

/** Refuses a value of another type than is expected at a path. */
export function refuseType(path: string, expected: string, found: unknown): never {
  refuse(path, 'wrong type', { expected, found: shown(found) });
}

/** What a value is, for a sentence: short, and never the whole of a long text. */
export function shown(value: unknown): string {
  if (value === null || value === undefined || typeof value === 'number' || typeof value === 'boolean')
    return String(value);
  if (typeof value === 'string') return value.length > 40 ? `${value.slice(0, 40)}…` : value;
  return Array.isArray(value) ? 'a list' : 'an object';
}

const decimal = /^(-?\d{1,30}(?:\.(\d{1,30}))?)(?:[eE]([+-]?\d{1,2}))?$/;
const ratio = /^-?\d{1,30}\/\d{1,30}$/;
const exponentLimit = 30;

/** An exact number from a JSON number or from a text such as "4.7" or "1/3"; undefined where it is neither. */
export function exactNumber(
  value: unknown,
): { readonly exact: Fraction; readonly decimals: number } | undefined {
  const text = typeof value === 'number' ? String(value) : typeof value === 'string' ? value.trim() : '';
  if (ratio.test(text) && !/\/0+$/.test(text)) return { exact: new Fraction(text), decimals: 0 };
  const [, mantissa, places = '', power = '0'] = decimal.exec(text) ?? [];
  if (mantissa === undefined || Math.abs(Number(power)) > exponentLimit) return undefined;
  const exact = new Fraction(mantissa).mul(powerOfTen(Number(power)));
  return { exact, decimals: power === '0' ? places.length : 0 };
}
