import { exactText, quantity, writeQuantity, type Quantity } from '../quantity/index.ts';
import { exactNumber, field, object, refuse } from './fields.ts';
import type { Circuit, Surroundings } from './model.ts';
import { usualSurroundings } from './sensor.ts';

/** What surroundings may be: what thermistors and LDRs are made for (common practice). */
const bounds = {
  temperature: { unit: '°C', least: -40, most: 125 },
  light: { unit: 'lx', least: 0.1, most: 100_000 },
} as const;

/** What can be said of the surroundings: their temperature and their light. */
export type Surrounding = keyof typeof bounds;

/** The names of the surroundings. */
export const surroundingNames: readonly Surrounding[] = ['temperature', 'light'];

/** Whether a name is one of the surroundings, and not of a component. */
export function isSurrounding(name: string): name is Surrounding {
  return name in bounds;
}

/** The temperature or the light where a circuit stands. */
export function surroundingOf({ surroundings }: Circuit, name: Surrounding): Quantity {
  return surroundings?.[name] ?? quantity(usualSurroundings[name], bounds[name].unit);
}

/** Checks that sensors are made for it. Throws CircuitFormatError. */
export function checkSurrounding(name: Surrounding, value: Quantity, path: string): Quantity {
  const { least, most, unit } = bounds[name];
  if (value.value.compare(least) >= 0 && value.value.compare(most) <= 0) return value;
  const [low, high] = [least, most].map((end) => writeQuantity(quantity(end, unit)).text);
  return refuse(path, {
    code: 'out of range',
    data: { found: writeQuantity(value).text, low: low ?? '', high: high ?? '' },
  });
}

/** The same circuit somewhere else. Throws CircuitFormatError; its path is the name. */
export function withSurrounding(circuit: Circuit, name: Surrounding, setting: unknown): Circuit {
  const exact = exactNumber(setting)?.exact;
  if (!exact) refuse(name, { code: 'not a number', data: { found: String(setting) } });
  const value = checkSurrounding(name, quantity(exact, bounds[name].unit), name);
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
    const value = field(fields, name, 'surroundings', bounds[name].unit, 'any');
    return value ? [[name, checkSurrounding(name, value, `surroundings.${name}`)] as const] : [];
  });
  return told.length > 0 ? Object.fromEntries(told) : undefined;
}
