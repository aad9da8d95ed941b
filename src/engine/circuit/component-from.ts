import type { Fraction, Quantity } from '../quantity/index.ts';
import { checkRange } from './check-range.ts';
import { conditions, isCondition } from './condition.ts';
import { exactNumber, refuse, refuseType, shown } from './fields.ts';
import { field, object, refuseJson, requiredField, truth, type Fields } from './json-fields.ts';
import type { Component, Condition, Range, Supply, SupplyForm } from './model.ts';
import { nearest } from './nearest.ts';
import { inForm, isCounted, supplyForms } from './supply-form.ts';

const always = ['id', 'kind', 'from', 'to', 'hidden', 'condition', 'fault'];
const label = /^[A-Z]{1,20}[a-z]{0,20}\d{0,9}[a-z]?$/;

/** The fields of each kind, besides those that all have. */
const fieldsOf = {
  supply: ['emf', 'internalResistance', 'cells', 'range', 'internalRange', 'form'],
  source: ['current', 'range'],
  resistor: ['resistance', 'range', 'tolerance', 'ratedPower'],
  potentiometer: ['resistance', 'range', 'ratedPower'],
  lamp: ['resistance', 'ratedVoltage', 'ratedPower', 'ratedCurrent', 'filament'],
  heater: ['resistance', 'ratedVoltage', 'ratedPower', 'ratedCurrent'],
  motor: ['resistance', 'ratedVoltage', 'ratedPower', 'ratedCurrent'],
  diode: ['forwardVoltage', 'ratedCurrent'],
  led: ['forwardVoltage', 'ratedCurrent'],
  thermistor: ['resistance'],
  ldr: ['resistance'],
  fuse: ['ratedCurrent', 'resistance', 'blown'],
  switch: ['closed'],
  push: ['closed'],
  changeover: ['closed'],
  ammeter: ['resistance'],
  voltmeter: ['resistance'],
  wire: [],
} as const satisfies Record<Component['kind'], readonly string[]>;

/** All the fields of each kind: for a thousand components they are put together once. */
const knownOf = new Map(Object.entries(fieldsOf).map(([kind, own]) => [kind, [...always, ...own]]));
/** All that a component may have, whatever its kind. */
const fieldsOfAny = [...always, ...new Set(Object.values(fieldsOf).flat())];

function isKind(value: unknown): value is Component['kind'] {
  return typeof value === 'string' && Object.hasOwn(fieldsOf, value);
}

/** Whether it is marked so: false is as good as absent. */
const marked = (...where: Parameters<typeof truth>): true | undefined => (truth(...where) ? true : undefined);

function text(fields: Fields, name: string, path: string): string {
  const found = fields[name];
  if (found === undefined) refuseJson(path, 'missing field', { field: name });
  if (typeof found === 'string') return found;
  refuseType(`${path}.${name}`, 'a text', found);
}

/** Reads the name of a node: any text of 1 to 64 characters. */
export function node(found: unknown, path: string): string {
  if (typeof found === 'string' && found.length > 0 && found.length <= 64) return found;
  refuseJson(path, 'not a node name', { found: shown(found) || 'an empty text' });
}

function labelOf(fields: Fields, path: string): string {
  const id = text(fields, 'id', path);
  if (label.test(id)) return id;
  refuseJson(`${path}.id`, 'not a label', { found: shown(id), suggestion: 'R1' });
}

function conditionOf(
  fields: Fields,
  name: 'condition' | 'fault',
  id: string,
  path: string,
): Condition | undefined {
  const found = fields[name];
  if (found === undefined || isCondition(found)) return found;
  const suggestion = nearest(shown(found), conditions);
  refuse(`${path}.${name}`, 'not a setting', { id, found: shown(found), suggestion });
}

/** Reads the range of a value, which must lie in it. */
function rangeOf(fields: Fields, name: string, path: string, value: Quantity | undefined): Range | undefined {
  if (fields[name] === undefined) return undefined;
  if (!value) refuseJson(path, 'missing field', { field: 'internalResistance' });
  const where = `${path}.${name}`;
  const range = object(fields[name], where, ['min', 'max', 'step', 'scale']);
  const scale = range['scale'];
  if (scale !== undefined && scale !== 'log' && scale !== 'E12' && scale !== 'E24') {
    refuseType(`${where}.scale`, '"log", "E12" or "E24"', scale);
  }
  // A scale tells its own steps.
  if (scale) object(range, where, ['min', 'max', 'scale']);
  const { unit } = value;
  const isOhms = unit === 'Ω';
  const any = isOhms ? 'not negative' : 'any';
  const step = field(range, 'step', where, unit, 'positive');
  const written: Range = {
    min: requiredField(range, 'min', where, unit, scale ? 'positive' : any),
    max: requiredField(range, 'max', where, unit, isOhms ? 'positive' : any),
    ...(step && { step }),
    ...(scale && { scale }),
  };
  return checkRange(written, value, where);
}

function cellsOf(fields: Fields, path: string): number | undefined {
  const found = fields['cells'];
  if (
    found === undefined ||
    (typeof found === 'number' && Number.isInteger(found) && found > 0 && found <= 1000)
  )
    return found;
  refuseType(`${path}.cells`, 'a whole number from 1 to 1000', found);
}

/** What a supply is said to be. */
function supplyFormOf(fields: Fields, path: string): SupplyForm | undefined {
  const found = fields['form'];
  const form = supplyForms.find((each) => each === found);
  if (found !== undefined && !form) {
    refuseType(`${path}.form`, '"cell", "battery" or "supply"', found);
  }
  return form;
}

function percent(fields: Fields, path: string): Fraction | undefined {
  const found = fields['tolerance'];
  if (found === undefined) return undefined;
  const number = exactNumber(found);
  if (!number) refuse(`${path}.tolerance`, 'not a number', { found: shown(found) });
  if (number.exact.compare(0) <= 0) refuse(`${path}.tolerance`, 'must be positive', { found: shown(found) });
  if (number.exact.compare(100) >= 0)
    refuse(`${path}.tolerance`, 'not below', { found: shown(found), high: '100' });
  return number.exact;
}

/** Leaves out the fields that are absent. */
function present<T extends object>(fields: T): { [K in keyof T]?: Exclude<T[K], undefined> } {
  const kept: { [K in keyof T]?: Exclude<T[K], undefined> } = {};
  for (const key in fields) {
    const value = fields[key];
    if (value !== undefined) kept[key] = value as Exclude<T[typeof key], undefined>;
  }
  return kept;
}

/** Reads one component of the JSON form. Throws CircuitFormatError. */
export function componentFrom(json: unknown, path: string): Component {
  const all = object(json, path, fieldsOfAny);
  const kind = text(all, 'kind', path);
  if (!isKind(kind)) {
    refuseJson(`${path}.kind`, 'unknown kind', {
      found: shown(kind),
      suggestion: nearest(kind, Object.keys(fieldsOf)),
    });
  }
  const fields = object(json, path, knownOf.get(kind) ?? always);
  const hidden = marked(fields, 'hidden', path);
  const id = labelOf(fields, path);
  const condition = conditionOf(fields, 'condition', id, path);
  const fault = conditionOf(fields, 'fault', id, path);
  // Where a literal begins with a spread, Node 20 gives each object a hidden class of its own, and all that reads it is slow: so `kind` is first.
  const ends = {
    id,
    from: node(text(fields, 'from', path), `${path}.from`),
    to: node(text(fields, 'to', path), `${path}.to`),
    ...present({ hidden, condition, fault }),
  };
  const ohms = (name: string): ReturnType<typeof field> => field(fields, name, path, 'Ω', 'not negative');
  switch (kind) {
    case 'supply': {
      const emf = requiredField(fields, 'emf', path, 'V', 'any');
      const internalResistance = ohms('internalResistance');
      const supply: Supply = {
        kind,
        ...ends,
        emf,
        ...present({
          internalResistance,
          cells: cellsOf(fields, path),
          range: rangeOf(fields, 'range', path, emf),
          internalRange: rangeOf(fields, 'internalRange', path, internalResistance),
        }),
      };
      const form = supplyFormOf(fields, path);
      if (!isCounted(supply, form)) refuseJson(path, 'unknown field', { field: 'cells', suggestion: '' });
      return inForm(supply, form);
    }
    case 'source': {
      const current = requiredField(fields, 'current', path, 'A', 'any');
      return { kind, ...ends, current, ...present({ range: rangeOf(fields, 'range', path, current) }) };
    }
    case 'resistor':
    case 'potentiometer': {
      const resistance = requiredField(fields, 'resistance', path, 'Ω', 'not negative');
      return {
        kind,
        ...ends,
        resistance,
        ...present({
          tolerance: kind === 'resistor' ? percent(fields, path) : undefined,
          range: rangeOf(fields, 'range', path, resistance),
          ratedPower: field(fields, 'ratedPower', path, 'W', 'positive'),
        }),
      };
    }
    case 'lamp':
    case 'heater':
    case 'motor': {
      const filament = truth(fields, 'filament', path);
      const ratings = present({
        resistance: field(fields, 'resistance', path, 'Ω', 'positive'),
        ratedVoltage: field(fields, 'ratedVoltage', path, 'V', 'positive'),
        ratedPower: field(fields, 'ratedPower', path, 'W', 'positive'),
        ratedCurrent: field(fields, 'ratedCurrent', path, 'A', 'positive'),
      });
      if (Object.keys(ratings).length !== (ratings.resistance ? 1 : 2)) {
        refuse(path, 'lamp needs two ratings', { id });
      }
      if (filament && ratings.resistance) {
        refuse(path, 'filament needs two ratings', { id });
      }
      return filament && kind === 'lamp'
        ? { kind, ...ends, ...ratings, filament }
        : { kind, ...ends, ...ratings };
    }
    case 'diode':
    case 'led':
      return {
        kind,
        ...ends,
        ...present({
          forwardVoltage: field(fields, 'forwardVoltage', path, 'V', 'positive'),
          ratedCurrent: field(fields, 'ratedCurrent', path, 'A', 'positive'),
        }),
      };
    case 'thermistor':
    case 'ldr':
      return { kind, ...ends, resistance: requiredField(fields, 'resistance', path, 'Ω', 'positive') };
    case 'fuse':
      return {
        kind,
        ...ends,
        ratedCurrent: requiredField(fields, 'ratedCurrent', path, 'A', 'positive'),
        ...present({
          resistance: ohms('resistance'),
          blown: marked(fields, 'blown', path),
        }),
      };
    case 'switch':
    case 'push':
    case 'changeover':
      return { kind, ...ends, closed: truth(fields, 'closed', path) ?? false };
    case 'ammeter':
    case 'voltmeter':
      return { kind, ...ends, ...present({ resistance: ohms('resistance') }) };
    case 'wire':
      return { kind, ...ends };
  }
}
