import { readFileSync } from 'node:fs';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

/** Where an example was published. */
interface Source {
  readonly title: string;
  readonly section?: string;
  readonly number?: string;
}

/** A worked example of a textbook: a circuit, and the quantities asked with their exact answers. */
export interface WorkedExample {
  readonly id: string;
  readonly source: Source;
  readonly circuit: { readonly components: readonly { readonly kind: string }[] };
  /** What the book gives in place of what is asked. */
  readonly given?: readonly { readonly quantity: string; readonly value: string }[];
  readonly asked: readonly {
    readonly quantity: string;
    readonly value: number;
    readonly published: string;
    readonly exact: string | null;
    readonly agrees: boolean;
  }[];
}

/** A network of resistors with its published or computed resistance between two of its nodes. */
export interface Network {
  readonly id: string;
  readonly name: string;
  readonly nodes: readonly [string, string];
  readonly edges: readonly (readonly [from: string, to: string, ohms?: string])[];
  readonly answer: string;
  readonly source: Source | readonly Source[];
}

function read(name: string): unknown {
  return JSON.parse(readFileSync(`tests/reference/${name}.json`, 'utf8'));
}

/** The worked examples that are d.c. circuits at rest: those without a capacitor. */
export const workedExamples: readonly WorkedExample[] = (read('worked-examples') as WorkedExample[]).filter(
  ({ circuit }) => circuit.components.every(({ kind }) => kind !== 'capacitor'),
);

/** The networks. */
export const networks: readonly Network[] = read('effective-resistance') as Network[];

/** The circuit of a worked example. */
export function circuitOf({ circuit }: WorkedExample): Circuit {
  return circuitFrom({ version: 1, ...circuit });
}

/** A network between its two nodes; with an e.m.f., between the terminals of a supply of so many volts. */
export function networkOf({ edges, nodes }: Network, emf?: string): Circuit {
  const [from, to] = nodes;
  const resistors = edges.map(([tail, head, resistance = '1'], k) => {
    return { id: `R${k + 1}`, kind: 'resistor', from: tail, to: head, resistance };
  });
  if (emf === undefined) return circuitFrom({ version: 1, components: resistors, terminals: nodes });
  const supply = { id: 'B1', kind: 'supply', from, to, emf };
  return circuitFrom({ version: 1, components: [supply, ...resistors] });
}

/** The titles of what an entry was taken from. */
export function titlesOf({ source }: { readonly source: Source | readonly Source[] }): string {
  return [source]
    .flat()
    .map(({ title, section, number }) => [title, section, number].filter(Boolean).join(', '))
    .join('; ');
}
