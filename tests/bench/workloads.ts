import { circuitFrom, type Circuit } from '../../src/engine/index.ts';

/** A resistor between two numbered nodes. */
export interface Edge {
  readonly from: number;
  readonly to: number;
  readonly ohms: number;
}

/** A network of resistors with an ideal supply: its positive terminal is the last node, its negative one node 0. */
export interface Workload {
  readonly name: string;
  readonly nodes: number;
  readonly volts: number;
  readonly edges: readonly Edge[];
  readonly circuit: Circuit;
}

// IEC 60063, series E24, the first decade.
const e24 = [10, 11, 12, 13, 15, 16, 18, 20, 22, 24, 27, 30, 33, 36, 39, 43, 47, 51, 56, 62, 68, 75, 82, 91];

/** Pairs of nodes with preferred values, taken in turn with a stride that is prime to 24. */
function workload(name: string, nodes: number, pairs: readonly (readonly [number, number])[]): Workload {
  return supplied(
    name,
    nodes,
    pairs.map(([from, to], at) => ({ from, to, ohms: e24[(7 * at) % 24] ?? 10 })),
  );
}

function supplied(name: string, nodes: number, edges: readonly Edge[]): Workload {
  const circuit = circuitFrom({
    version: 1,
    components: [
      { id: 'B1', kind: 'supply', from: `n${nodes - 1}`, to: 'n0', emf: 6 },
      ...edges.map(({ from, to, ohms }, at) => ({
        id: `R${at + 1}`,
        kind: 'resistor',
        from: `n${from}`,
        to: `n${to}`,
        resistance: ohms,
        // The first resistor is the slider of the slider's benchmark.
        ...(at === 0 && { range: { min: 1, max: 100, step: 1 } }),
      })),
    ],
  });
  return { name, nodes, volts: 6, edges, circuit };
}

/** The same network with resistances spread over so large a factor. */
export function spreadOver({ name, nodes, edges }: Workload, factor: number): Workload {
  const spread = edges.map(({ ohms, ...ends }, at) => ({
    ...ends,
    ohms: Number((ohms * factor ** (((7 * at) % 11) / 10)).toPrecision(3)),
  }));
  return supplied(name, nodes, spread);
}

/** Sections of a series resistor towards the supply and one across to the negative rail. */
function ladder(sections: number): Workload {
  const pairs = Array.from({ length: sections }, (_, at) => at + 1).flatMap((node) => [
    [node + 1, node] as const,
    [node, 0] as const,
  ]);
  return workload(`ladder ${sections}`, sections + 2, pairs);
}

/** Nodes in a square, the supply across opposite corners. */
function grid(side: number): Workload {
  const nodes = Array.from({ length: side * side }, (_, at) => at);
  const right = nodes.filter((at) => at % side < side - 1).map((at) => [at, at + 1] as const);
  const down = nodes.filter((at) => at + side < side * side).map((at) => [at, at + side] as const);
  return workload(`grid ${side}`, side * side, [...right, ...down]);
}

/** The cube's edges: corners whose numbers differ in one bit, the supply across a body diagonal. */
function cube(): Workload {
  const corners = Array.from({ length: 8 }, (_, at) => at);
  const pairs = corners.flatMap((at) =>
    [1, 2, 4].filter((bit) => !(at & bit)).map((bit) => [at, at | bit] as const),
  );
  return workload('cube', 8, pairs);
}

/** Large circuits: ladders of so many sections, and squares of so many nodes to a side. */
export const largeWorkloads = (): readonly Workload[] => [
  ladder(1000),
  ladder(3000),
  ladder(10_000),
  grid(32),
  grid(56),
  grid(100),
];

/** The largest of all: 179,400 resistors. */
export const hugeWorkload = (): Workload => grid(300);

/** The circuits of the benchmark: a classroom's (R1 + (R2 ∥ R3) + (R4 ∥ R5)), a bridge, and three larger ones. */
export const workloads: readonly Workload[] = [
  workload('classroom', 4, [
    [3, 2],
    [2, 1],
    [2, 1],
    [1, 0],
    [1, 0],
  ]),
  workload('bridge', 4, [
    [3, 2],
    [3, 1],
    [2, 1],
    [2, 0],
    [1, 0],
  ]),
  cube(),
  ladder(20),
  grid(5),
];
