import fc from 'fast-check';
import { patternOf, type Pattern } from '../../../src/engine/sparse/pattern.ts';

/** Nodes by number, and which two each edge joins. */
export interface Joined {
  readonly size: number;
  readonly edges: readonly (readonly [number, number])[];
}

const every = (size: number): readonly number[] => Array.from({ length: size }, (_, node) => node);

/** Any graph: some edges several times over, some nodes without any, some edges from a node to itself. */
export const anyGraph: fc.Arbitrary<Joined> = fc.integer({ min: 1, max: 16 }).chain((size) => {
  const node = fc.nat({ max: size - 1 });
  return fc.record({ size: fc.constant(size), edges: fc.array(fc.tuple(node, node), { maxLength: 40 }) });
});

/** Each node but the first hangs on an earlier one. */
export const anyTree: fc.Arbitrary<Joined> = fc.array(fc.nat(), { maxLength: 30 }).map((picks) => ({
  size: picks.length + 1,
  edges: picks.map((pick, at) => [pick % (at + 1), at + 1] as const),
}));

/** All nodes in a circle. */
export const ring = (size: number): Joined => ({
  size,
  edges: every(size).map((node) => [node, (node + 1) % size] as const),
});

/** A ring of rim nodes, each also joined to the hub, which has the last number. */
export const wheel = (rim: number): Joined => ({
  size: rim + 1,
  edges: [...ring(rim).edges, ...every(rim).map((node) => [node, rim] as const)],
});

/** Every node joined to all before it. */
export const complete = (size: number): Joined => ({
  size,
  edges: every(size).flatMap((one) => every(one).map((other) => [one, other] as const)),
});

/** Rows and columns of nodes. */
export const lattice = (side: number): Joined => ({
  size: side * side,
  edges: every(side * side).flatMap((node) => [
    ...(node % side < side - 1 ? [[node, node + 1] as const] : []),
    ...(node + side < side * side ? [[node, node + side] as const] : []),
  ]),
});

/** The first `size` nodes of a graph as a pattern; all of them unless said. */
export function patternFor({ size: all, edges }: Joined, size: number = all): Pattern {
  return patternOf(
    size,
    Int32Array.from(edges, ([one]) => one),
    Int32Array.from(edges, ([, other]) => other),
  );
}

/** Of each node the others it is joined to. */
export function neighbours({ size, edges }: Joined): Set<number>[] {
  const near = every(size).map(() => new Set<number>());
  for (const [one, other] of edges)
    if (one !== other) {
      near[one]?.add(other);
      near[other]?.add(one);
    }
  return near;
}
