import { circuitFrom, type Circuit } from '../../../src/engine/circuit/index.ts';

/** Two ends and ohms. */
export type Edge = readonly [from: number, to: number, ohms: number];

/** Resistors between numbered nodes, a supply of 6 V from the last node to node 0. */
export function network(edges: readonly Edge[], last: number, inner?: number): Circuit {
  return circuitFrom({
    version: 1,
    components: [
      {
        id: 'B1',
        kind: 'supply',
        from: `n${last}`,
        to: 'n0',
        emf: 6,
        ...(inner !== undefined && { internalResistance: inner }),
      },
      ...edges.map(([from, to, resistance], at) => ({
        id: `R${at + 1}`,
        kind: 'resistor',
        from: `n${from}`,
        to: `n${to}`,
        resistance,
      })),
    ],
  });
}

/** Nodes in a square, the supply across opposite corners; the ohms are those of each edge in turn. */
export function grid(side: number, ohms: (at: number) => number = () => 1): Circuit {
  const edges: Edge[] = [];
  for (let node = 0; node < side * side; node++) {
    if (node % side < side - 1) edges.push([node, node + 1, ohms(edges.length)]);
    if (node + side < side * side) edges.push([node, node + side, ohms(edges.length)]);
  }
  return network(edges, side * side - 1);
}

/** Sections of a series resistor towards the supply and one across to the negative rail. */
export function ladder(sections: number, ohms: (at: number) => number = () => 1): Circuit {
  const edges: Edge[] = [];
  for (let node = 1; node <= sections; node++) {
    edges.push([node + 1, node, ohms(edges.length)]);
    edges.push([node, 0, ohms(edges.length)]);
  }
  return network(edges, sections + 1);
}
