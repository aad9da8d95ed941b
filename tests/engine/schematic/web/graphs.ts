import fc from 'fast-check';
import type { Edge } from '../../../../src/engine/schematic/web/graph.ts';

/** Edges from pairs of vertices, each a part of its own. */
export const edgesOf = (ends: readonly (readonly [number, number])[]): Edge[] =>
  ends.map(([from, to], part) => ({ from, to, part }));

/** A square a–b–c–d with one of its diagonals; the first edge closes it. */
export const square: readonly Edge[] = edgesOf([
  [0, 1],
  [1, 2],
  [2, 3],
  [3, 0],
  [0, 2],
]);

/** All pairs of so many vertices. */
export const complete = (count: number): (readonly [number, number])[] =>
  Array.from({ length: count }, (_, i) => i).flatMap((i) =>
    Array.from({ length: i }, (_, j) => [j, i] as const),
  );

/** Each of so many vertices with each of so many others. */
export const bipartite = (few: number, many: number): (readonly [number, number])[] =>
  Array.from({ length: few }, (_, i) => i).flatMap((i) =>
    Array.from({ length: many }, (_, j) => [i, few + j] as const),
  );

/** Graphs that no vertex holds together alone: a ring, and chords. */
export const twoConnected: fc.Arbitrary<{ readonly count: number; readonly edges: readonly Edge[] }> = fc
  .tuple(fc.integer({ min: 3, max: 9 }), fc.array(fc.tuple(fc.nat(8), fc.nat(8)), { maxLength: 12 }))
  .map(([count, chords]) => {
    const ring = Array.from({ length: count }, (_, i) => [i, (i + 1) % count] as const);
    const across = chords.map(([a, b]) => [a % count, b % count] as const).filter(([a, b]) => a !== b);
    return { count, edges: edgesOf([...ring, ...across]) };
  });
