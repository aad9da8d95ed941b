import { quantity, type Quantity, type Unit } from '../quantity/index.ts';
import { json, type SaidOf } from '../words/index.ts';
import type { JsonData } from './codes.ts';
import { exactNumber, refuse, refuseType, shown } from './fields.ts';
import { CircuitFormatError } from './format-error.ts';
import { nearest } from './nearest.ts';

/** A JSON object whose fields are not known yet. */
export type Fields = Readonly<Record<string, unknown>>;

/** Refuses what only JSON can get wrong, at a path. */
export function refuseJson<Code extends keyof JsonData>(
  path: string,
  code: Code,
  data: JsonData[Code],
): never {
  throw new CircuitFormatError(path, { code, data } as SaidOf<JsonData>, json[code](data));
}

/** Reads a JSON object that holds none but the given fields. */
export function object(value: unknown, path: string, known: readonly string[]): Fields {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    refuseType(path, 'an object', value);
  }
  const fields: Fields = { ...value };
  for (const field of Object.keys(fields)) {
    if (!known.includes(field)) {
      refuseJson(path, 'unknown field', { field: shown(field), suggestion: nearest(field, known) });
    }
  }
  return fields;
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
  return field(fields, name, path, unit, sign) ?? refuseJson(path, 'missing field', { field: name });
}

/** Reads true or false; absent is undefined. */
export function truth(fields: Fields, name: string, path: string): boolean | undefined {
  const found = fields[name];
  if (found === undefined || typeof found === 'boolean') return found;
  refuseType(`${path}.${name}`, 'true or false', found);
}
