import { exactText, quantity, type Fraction, type Quantity, type Unit } from '../quantity/index.ts';
import { refuse } from './fields.ts';
import { field, object } from './json-fields.ts';
import type { Circuit, Kind, Range, Surroundings } from './model.ts';
import { outside } from './outside.ts';
import { usualSurroundings } from './sensor.ts';

/** What can be said of the surroundings: their temperature and their light. */
export type Surrounding = 'temperature' | 'light';

/** What surroundings may be: what thermistors and LDRs are made for (common practice). A slider steps through whole degrees, and through 24 lights a decade. */
export const surroundingRanges: Readonly<Record<Surrounding, Range>> = {
  temperature: { min: quantity(-40, '°C'), max: quantity(125, '°C'), step: quantity(1, '°C') },
  light: { min: quantity('0.1', 'lx'), max: quantity(100_000, 'lx'), scale: 'E24' },
};

const feelers: Readonly<Partial<Record<Kind, Surrounding>>> = { thermistor: 'temperature', ldr: 'light' };

/** The names of the surroundings. */
export const surroundingNames: readonly Surrounding[] = ['temperature', 'light'];

/** Whether a name is one of the surroundings, and not of a component. */
export function isSurrounding(name: string): name is Surrounding {
  return Object.hasOwn(surroundingRanges, name);
}

const unitOf = (name: Surrounding): Unit => surroundingRanges[name].min.unit;

/** What of the surroundings a circuit feels: with a thermistor the temperature, with an LDR the light. */
export function feltBy({ components }: Circuit): readonly Surrounding[] {
  return surroundingNames.filter((name) => components.some(({ kind }) => feelers[kind] === name));
}

/** The temperature or the light where a circuit stands. */
export function surroundingOf({ surroundings }: Circuit, name: Surrounding): Quantity {
  return surroundings?.[name] ?? quantity(usualSurroundings[name], unitOf(name));
}

/** Checks that sensors are made for it. Throws CircuitFormatError. */
export function checkSurrounding(name: Surrounding, value: Quantity, path: string): Quantity {
  const { min, max } = surroundingRanges[name];
  if (value.value.compare(min.value) >= 0 && value.value.compare(max.value) <= 0) return value;
  return refuse(path, 'out of range', outside(value, min, max));
}

/** The same circuit somewhere else. Throws CircuitFormatError; its path is the name. */
export function withSurrounding(circuit: Circuit, name: Surrounding, exact: Fraction): Circuit {
  const value = checkSurrounding(name, quantity(exact, unitOf(name)), name);
  const before = surroundingOf(circuit, name);
  if (before.value.equals(value.value)) return circuit;
  return { ...circuit, surroundings: { ...circuit.surroundings, [name]: value } };
}

/** Where surroundings differ from those of the start, as exact texts by name. */
export function surroundingsSince(
  circuit: Circuit,
  start: Circuit,
): readonly (readonly [Surrounding, string])[] {
  return surroundingNames.flatMap((name) => {
    const [now, before] = [surroundingOf(circuit, name).value, surroundingOf(start, name).value];
    return now.equals(before) ? [] : [[name, exactText(now)] as const];
  });
}

/** Reads the surroundings of the JSON form. Throws CircuitFormatError. */
export function surroundingsFrom(json: unknown): Surroundings | undefined {
  if (json === undefined) return undefined;
  const fields = object(json, 'surroundings', surroundingNames);
  const told = surroundingNames.flatMap((name) => {
    const value = field(fields, name, 'surroundings', unitOf(name), 'any');
    return value ? [[name, checkSurrounding(name, value, `surroundings.${name}`)] as const] : [];
  });
  return told.length > 0 ? Object.fromEntries(told) : undefined;
}
