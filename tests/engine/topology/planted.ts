import fc from 'fast-check';
import type { Circuit, Component, Resistor, Supply } from '../../../src/engine/circuit/index.ts';
import { Fraction } from '../../../src/engine/quantity/index.ts';
import type { Tree } from '../../../src/engine/topology/index.ts';

/** A way to put components together: a leaf, or parts of the other kind. */
export type Shape = 'leaf' | { readonly kind: 'series' | 'parallel'; readonly parts: readonly Shape[] };

const shapes = fc.letrec<{ any: Shape; series: Shape; parallel: Shape; inSeries: Shape; inParallel: Shape }>(
  (tie) => ({
    any: fc.oneof(fc.constant<Shape>('leaf'), tie('series'), tie('parallel')),
    series: fc
      .array(tie('inSeries'), { minLength: 2, maxLength: 4 })
      .map((parts): Shape => ({ kind: 'series', parts })),
    parallel: fc
      .array(tie('inParallel'), { minLength: 2, maxLength: 4 })
      .map((parts): Shape => ({ kind: 'parallel', parts })),
    inSeries: fc.oneof(
      { maxDepth: 4 },
      fc.constant<Shape>('leaf'),
      fc.constant<Shape>('leaf'),
      tie('parallel'),
    ),
    inParallel: fc.oneof(
      { maxDepth: 4 },
      fc.constant<Shape>('leaf'),
      fc.constant<Shape>('leaf'),
      tie('series'),
    ),
  }),
);

/** Any shape to about four levels deep, in its canonical form. */
export const shape: fc.Arbitrary<Shape> = shapes.any;

/** The whole numbers from 0, shuffled by a seed (a linear congruential generator, so that a failure can be run again). */
export function shuffled(count: number, seed: number): readonly number[] {
  const order = Array.from({ length: count }, (_, index) => index);
  let state = seed >>> 0;
  for (let last = count - 1; last > 0; last -= 1) {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    const other = state % (last + 1);
    [order[last], order[other]] = [order[other] ?? 0, order[last] ?? 0];
  }
  return order;
}

const ohms = (value: number | string) => ({ value: new Fraction(value), unit: 'Ω', prefix: '' }) as const;

/** A resistor between two nodes. */
export const resistor = (id: string, from: string, to: string, value: number | string = 1): Resistor => ({
  kind: 'resistor',
  id,
  from,
  to,
  resistance: ohms(value),
});

/** A supply between two nodes, positive at `from`. */
export const supply = (id: string, from: string, to: string, value = 6): Supply => ({
  kind: 'supply',
  id,
  from,
  to,
  emf: { value: new Fraction(value), unit: 'V', prefix: '' },
});

const size = (planted: Shape): number =>
  planted === 'leaf' ? 1 : planted.parts.reduce((sum, part) => sum + size(part), 0);

/**
 * Builds the circuit of a shape between nodes p and n, its components in a shuffled order, each either way round, its nodes
 * with names that tell nothing; and the tree that must come out, with the parts in parallel sorted as the components are.
 */
export function plant(
  planted: Shape,
  seed: number,
): { readonly components: readonly Component[]; readonly tree: Tree } {
  const order = shuffled(size(planted), seed);
  const components: Component[] = [];
  let leaf = 0;
  let nodes = 0;
  const grow = (part: Shape, from: string, to: string): { readonly tree: Tree; readonly first: number } => {
    if (part === 'leaf') {
      const place = order[leaf] ?? 0;
      leaf += 1;
      const id = `R${place + 1}`;
      const reversed = (place * 7 + seed) % 3 === 0;
      components[place] = reversed ? resistor(id, to, from) : resistor(id, from, to);
      return { tree: { kind: 'component', id, reversed, from, to }, first: place };
    }
    let node = from;
    const grown = part.parts.map((inner, index) => {
      if (part.kind === 'parallel') return grow(inner, from, to);
      const next = index === part.parts.length - 1 ? to : `n${(nodes += 1)}`;
      const result = grow(inner, node, next);
      node = next;
      return result;
    });
    const first = Math.min(...grown.map((result) => result.first));
    if (part.kind === 'parallel') grown.sort((a, b) => a.first - b.first);
    return { tree: { kind: part.kind, parts: grown.map(({ tree }) => tree), from, to }, first };
  };
  const { tree } = grow(planted, 'p', 'n');
  return { components, tree };
}

/** A network without a supply between p and n. */
export const network = (components: readonly Component[]): Circuit => ({ components, terminals: ['p', 'n'] });
