import fc from 'fast-check';
import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';
import { part } from './random-circuit.ts';

/** A join of two nodes, and the number that a component follows from. */
export type Join = readonly [from: number, to: number, seed: number];

/** A circuit whose first component is a supply, or else a network between the ends of its first component. */
export function joined(joins: readonly Join[], open: boolean): Circuit {
  const components = joins.map(([from, to, seed], i) => {
    const { id, kind, fields } = part(seed, i, !open);
    const ends = { from: `n${from}`, to: `n${to}` };
    return !open && i === 0
      ? { id: 'B0', kind: 'supply', emf: '12', ...ends }
      : { id, kind, ...fields, ...ends };
  });
  const [first] = components;
  return circuitFrom({ version: 1, components, ...(open && first && { terminals: [first.from, first.to] }) });
}

const seed = fc.nat({ max: 4095 });

/** Any joins at all: several pieces, dead ends and components that lead back to where they began among them. */
const anyJoins = fc
  .tuple(fc.integer({ min: 2, max: 14 }), fc.integer({ min: 1, max: 40 }))
  .chain(([nodes, count]) =>
    fc.array(fc.tuple(fc.nat({ max: nodes - 1 }), fc.nat({ max: nodes - 1 }), seed), {
      minLength: 1,
      maxLength: count,
      size: 'max',
    }),
  );

/** The joins of a grid of nodes, some left out, and one from corner to corner round it: they lie in a plane. */
export const grid: fc.Arbitrary<readonly Join[]> = fc
  .tuple(
    fc.integer({ min: 2, max: 5 }),
    fc.integer({ min: 2, max: 4 }),
    fc.array(seed, { minLength: 40, maxLength: 40 }),
  )
  .map(([width, height, seeds]) => {
    const joins: [number, number][] = [];
    for (let y = 0; y < height; y++) {
      for (let x = 0; x < width; x++) {
        if (x + 1 < width) joins.push([y * width + x, y * width + x + 1]);
        if (y + 1 < height) joins.push([y * width + x, y * width + x + width]);
      }
    }
    const kept = joins
      .map(([from, to], i) => [from, to, seeds[i] ?? 0] as Join)
      .filter(([, , by]) => by % 8 > 0);
    return [...kept, [0, width * height - 1, 16] as Join].slice(0, 40);
  });

/** A planar web: an edge is split, doubled, or joined to one beside it, again and again. */
const grown = fc
  .array(fc.tuple(fc.nat(99), fc.nat(2), seed), { minLength: 6, maxLength: 38, size: 'max' })
  .map((steps) => {
    const joins: [number, number, number][] = [
      [0, 1, 16],
      [1, 0, 8],
    ];
    let nodes = 2;
    const middles: number[] = [];
    for (const [at, how, by] of steps) {
      const join = joins[at % joins.length];
      if (!join) continue;
      if (how === 0 || middles.length < 2) {
        const middle = nodes++;
        middles.push(middle);
        joins.push([middle, join[1], by]);
        join[1] = middle;
      } else if (how === 1) joins.push([join[0], join[1], by]);
      else joins.push([middles[at % middles.length] ?? 0, middles[by % middles.length] ?? 1, by]);
    }
    return joins;
  });

/** Circuits of up to 40 components that no law of series and parallel binds. */
export const randomWeb: fc.Arbitrary<Circuit> = fc
  .tuple(
    fc.oneof(
      { arbitrary: anyJoins, weight: 3 },
      { arbitrary: grid, weight: 1 },
      { arbitrary: grown, weight: 3 },
    ),
    fc.boolean(),
  )
  .map(([joins, open]) => joined(joins, open && joins[0]?.[0] !== joins[0]?.[1]));
