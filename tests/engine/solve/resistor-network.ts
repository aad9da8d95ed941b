import assert from 'node:assert/strict';
import type fc from 'fast-check';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import { solveExact } from '../../../src/engine/solve/index.ts';
import { circuit, parts, resistor, type Part } from './random-circuit.ts';

export const zero: Fraction = new Fraction(0);
export const one: Fraction = new Fraction(1);

/** Random networks of resistors in one piece, of two to six nodes, `a` and `b` among them. */
export const networks: fc.Arbitrary<Part[]> = parts(resistor(), resistor());

/** The resistance of a resistor, or inside a supply. */
export const ohmsOf = (part: Part): Fraction =>
  new Fraction(String(part[part.kind === 'supply' ? 'internalResistance' : 'resistance']));

/** A resistor between two nodes. */
export const part = (id: string, from: string, to: string, ohms: Fraction | number | string): Part => ({
  id,
  kind: 'resistor',
  from,
  to,
  resistance: new Fraction(ohms).toFraction(),
});

/** The same branches with every e.m.f. at 0. */
export const passive = (list: readonly Part[]): Part[] =>
  list.map((each) => part(each.id, each.from, each.to, ohmsOf(each)));

export const total = (fractions: readonly Fraction[]): Fraction =>
  fractions.reduce((sum, each) => sum.add(each), zero);

export const nodesOf = (list: readonly Part[]): string[] => [
  ...new Set(list.flatMap(({ from, to }) => [from, to])),
];

/** Loops of one component carry nothing and count nowhere. */
export const proper = (list: readonly Part[]): Part[] => list.filter(({ from, to }) => from !== to);

/** A reading that must be there. */
export function exact(value: Fraction | undefined): Fraction {
  assert.ok(value, 'a reading is missing');
  return value;
}

/** The resistance between two nodes. */
export const between = (list: readonly Part[], p: string, q: string): Fraction =>
  p === q ? zero : exact(solveExact(circuit(list, [p, q])).totalResistance());

/** The potentials of all nodes against `to`, and the currents of all resistors, while 1 A flows in at `from` and out at `to`. */
export function unitFlow(
  list: readonly Part[],
  from: string,
  to: string,
): { readonly potential: (node: string) => Fraction; readonly current: (part: Part) => Fraction } {
  const driven = solveExact(circuit([...list, { id: 'B99', kind: 'supply', from, to, emf: '1' }]));
  const main = exact(driven.current('B99'));
  return {
    potential: (node) =>
      exact(driven.potential(node))
        .sub(exact(driven.potential(to)))
        .div(main),
    current: ({ id }) => exact(driven.current(id)).div(main),
  };
}

/** The parts with two nodes made one. */
export const merged = (list: readonly Part[], kept: string, gone: string): Part[] =>
  proper(
    list.map((each) => ({
      ...each,
      from: each.from === gone ? kept : each.from,
      to: each.to === gone ? kept : each.to,
    })),
  );

/** The sum over all spanning trees of the product of their conductances, by brute force. */
export function trees(list: readonly Part[], count: number): Fraction {
  const [first, ...rest] = list;
  if (count === 1) return one;
  if (!first) return zero;
  return trees(merged(rest, first.from, first.to), count - 1)
    .div(ohmsOf(first))
    .add(trees(rest, count));
}
