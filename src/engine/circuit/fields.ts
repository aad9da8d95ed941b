import { Fraction, powerOfTen, quantity, type Quantity, type Unit } from '../quantity/index.ts';
import type { Said } from '../words/index.ts';
import type { FormatData } from './codes.ts';
import { CircuitFormatError } from './format-error.ts';
import { nearest } from './nearest.ts';

/** A JSON object whose fields are not known yet. */
export type Fields = Readonly<Record<string, unknown>>;

/** Refuses what stands at a path. */
export function refuse<Code extends keyof FormatData>(
  path: string,
  code: Code,
  data: FormatData[Code],
): never {
  throw new CircuitFormatError(path, { code, data } as Said<keyof FormatData>);
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

/** Reads a JSON object that holds none but the given fields. */
export function object(value: unknown, path: string, known: readonly string[]): Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    refuseType(path, 'an object', value);
  }
  const fields: Fields = { ...value };
  for (const field of Object.keys(fields)) {
    if (!known.includes(field)) {
      refuse(path, 'unknown field', { field: shown(field), suggestion: nearest(field, known) });
    }
  }
  return fields;
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

/** Reads the quantity of a field; `sign` says what values it may have. */
export function field(
  fields: Fields,
  name: string,
  path: string,
  unit: Unit,
  sign: 'any' | 'not negative' | 'positive',
): Quantity | undefined {
  const found = fields[name];
  if (found === undefined) return undefined;
  const number = exactNumber(found);
  const where = `${path}.${name}`;
  if (!number) refuse(where, 'not a number', { found: shown(found) });
  const { exact, decimals } = number;
  if (sign === 'positive' && exact.compare(0) <= 0) {
    refuse(where, 'must be positive', { found: shown(found) });
  }
  if (sign === 'not negative' && exact.compare(0) < 0) {
    refuse(where, 'must not be negative', { found: shown(found) });
  }
  return quantity(exact, unit, '', decimals);
}

/** The same, where the field must be there. */
export function requiredField(...[fields, name, path, unit, sign]: Parameters<typeof field>): Quantity {
  return field(fields, name, path, unit, sign) ?? refuse(path, 'missing field', { field: name });
}

/** Reads true or false; absent is undefined. */
export function truth(fields: Fields, name: string, path: string): boolean | undefined {
  const found = fields[name];
  if (found === undefined || typeof found === 'boolean') return found;
  refuseType(`${path}.${name}`, 'true or false', found);
}
