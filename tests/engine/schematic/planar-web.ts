import fc from 'fast-check';
import type { Circuit } from '../../../src/engine/circuit/index.ts';
import { joined } from './random-web.ts';

/**
 * Circuits that lie in a plane because they were laid there: a triangle, then in any face a vertex joined to its three corners, again
 * and again; then joins left out, and some doubled.
 */
export const planarWeb: fc.Arbitrary<Circuit> = fc
  .tuple(
    fc.array(fc.nat(99), { minLength: 1, maxLength: 9, size: 'max' }),
    fc.array(fc.nat({ max: 4095 }), { minLength: 40, maxLength: 40 }),
    fc.boolean(),
  )
  .map(([steps, seeds, open]) => {
    const joins: [number, number][] = [
      [0, 1],
      [1, 2],
      [2, 0],
    ];
    const faces: [number, number, number][] = [
      [0, 1, 2],
      [0, 1, 2],
    ];
    steps.forEach((step, i) => {
      const [face] = faces.splice(step % faces.length, 1);
      if (!face) return;
      const vertex = i + 3;
      const [a, b, c] = face;
      joins.push([a, vertex], [vertex, b], [c, vertex]);
      faces.push([a, b, vertex], [b, c, vertex], [c, a, vertex]);
    });
    const kept = joins.flatMap(([from, to], i) => {
      const seed = seeds[i] ?? 0;
      const join = [from, to, seed] as const;
      if (i > 0 && seed % 5 === 0) return [];
      return seed % 7 === 0 ? [join, join] : [join];
    });
    return joined(kept.slice(0, 40), open);
  });
