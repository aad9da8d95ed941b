import { exactText, type Fraction, type Quantity } from '../quantity/index.ts';
import type { Circuit } from './model.ts';

/** A component of the JSON form: texts, true or false, whole numbers, and a range. */
export type ComponentJSON = Readonly<
  Record<string, string | number | boolean | Readonly<Record<string, string>>>
>;

/** The JSON form of a circuit, version 1; its schema is published with the documentation. */
export interface CircuitJSON {
  readonly version: 1;
  readonly components: readonly ComponentJSON[];
  readonly terminals?: readonly [string, string];
  readonly zero?: string;
  readonly surroundings?: Readonly<Record<string, string>>;
}

function isQuantity(value: object): value is Quantity {
  return 'unit' in value;
}

function isFraction(value: object): value is Fraction {
  return 'n' in value;
}

type Value = ComponentJSON[string];

function scalar(value: unknown): string | number | boolean | undefined {
  if (typeof value === 'string' || typeof value === 'boolean' || typeof value === 'number') return value;
  if (typeof value !== 'object' || value === null) return undefined;
  if (isQuantity(value)) return exactText(value.value);
  return isFraction(value) ? exactText(value) : undefined;
}

function valueToJSON(value: unknown): Value | undefined {
  const single = scalar(value);
  if (single !== undefined || typeof value !== 'object' || value === null) return single;
  return Object.fromEntries(Object.entries(value).map(([key, part]) => [key, `${scalar(part) ?? ''}`]));
}

/** The circuit as JSON, its values as exact texts in SI units. `circuitFrom` reads it back. */
export function circuitToJSON({ components, terminals, zero, surroundings }: Circuit): CircuitJSON {
  return {
    version: 1,
    components: components.map((component) => {
      const fields = Object.entries(component).map(([key, value]) => [key, valueToJSON(value)] as const);
      return Object.fromEntries(fields.filter((entry): entry is [string, Value] => entry[1] !== undefined));
    }),
    ...(terminals && { terminals }),
    ...(zero !== undefined && { zero }),
    ...(surroundings && {
      surroundings: Object.fromEntries(
        Object.entries<Quantity>({ ...surroundings }).map(([name, { value }]) => [name, exactText(value)]),
      ),
    }),
  };
}
