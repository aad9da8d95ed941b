import { readFileSync } from 'node:fs';
import type { Component } from '../../../src/engine/circuit/index.ts';
import { resistor } from './planted.ts';

/** A network of resistors with its exact resistance between two nodes, and where that was published. */
export interface ReferenceNetwork {
  readonly id: string;
  readonly nodes: readonly [string, string];
  readonly edges: readonly (readonly [string, string] | readonly [string, string, string])[];
  readonly answer: string;
  readonly source: unknown;
}

/** The networks of `tests/reference/effective-resistance.json`. */
export const networks = JSON.parse(
  readFileSync('tests/reference/effective-resistance.json', 'utf8'),
) as readonly ReferenceNetwork[];

/** Its resistors, R1 onwards in the order of its edges. */
export const resistors = ({ edges }: ReferenceNetwork): readonly Component[] =>
  edges.map(([from, to, ohms = '1'], index) => resistor(`R${index + 1}`, from, to, ohms));
