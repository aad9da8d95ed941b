import type { Flow } from './flow.ts';
import type { Graph } from './graph.ts';
import { factorise, substitute } from './ldl.ts';
import { Twofold } from './twofold.ts';

/** The matrix of the loop equations, upper triangle; what it holds matters within one call only. */
let matrix = new Float64Array(1024);

/** What is less than this share of the largest current or e.m.f. is a zero that rounding has hidden. */
const nothing = 2 ** -80;

/** Writes the matrix of the loop equations, and gives the e.m.f. round each loop. */
function equations({ branches, chords }: Graph): Twofold[] {
  const { length } = chords;
  if (matrix.length < length ** 2) matrix = new Float64Array(length ** 2);
  else matrix.fill(0, 0, length ** 2);
  const emfs = chords.map(() => new Twofold());
  for (const { loops, resistance, volts } of branches) {
    for (const { row, along } of loops) {
      if (volts) emfs[row]?.add(Number(along ? volts : -volts));
      for (const other of loops) {
        const at = row * length + other.row;
        if (other.row >= row)
          matrix[at] = (matrix[at] ?? 0) + (along === other.along ? resistance : -resistance);
      }
    }
  }
  return emfs;
}

/** The potential of each node. */
function potentials({ nodes }: Graph, currents: readonly Twofold[]): Twofold[] {
  const found: Twofold[] = [];
  for (const { up } of nodes) {
    const potential = new Twofold();
    found.push(potential);
    const below = up && found[up.node.place];
    const current = up && currents[up.branch.place];
    if (!below || !current) continue;
    const sign = up.branch.tail === up.node ? 1 : -1;
    potential.add(below.high, below.low);
    potential.addProduct(-sign * up.branch.resistance, current);
    potential.add(sign * Number(up.branch.volts));
  }
  return found;
}

/**
 * Solves the loop equations in floating-point numbers: L·D·Lᵀ, then once more for what is left of the e.m.f.s, which is kept to
 * twice the precision (iterative refinement: J. H. Wilkinson, "Rounding Errors in Algebraic Processes", 1963; from memory).
 */
export function liveFlow(graph: Graph): Flow<number> {
  const { branches, chords, supplies } = graph;
  const [ohm, volt] = [Number(graph.ohm), Number(graph.volt)];
  const left = equations(graph);
  const currents = branches.map(() => new Twofold());
  factorise(matrix, chords.length);
  for (let round = 0; round < 2; round++) {
    const found = left.map(({ high, low }) => high + low);
    substitute(matrix, found);
    for (const { loops, resistance, place } of branches) {
      if (loops.length === 0) continue;
      const more = new Twofold();
      for (const { row, along } of loops) more.add(along ? (found[row] ?? 0) : -(found[row] ?? 0));
      currents[place]?.add(more.high, more.low);
      if (round > 0 || resistance === 0) continue;
      const drop = new Twofold();
      drop.addProduct(-resistance, more);
      for (const { row, along } of loops)
        left[row]?.add(along ? drop.high : -drop.high, along ? drop.low : -drop.low);
    }
  }
  let noCurrent = 0;
  let noVolts = 0;
  for (const { high } of currents) noCurrent = Math.max(noCurrent, nothing * Math.abs(high));
  for (const { volts } of supplies) noVolts = Math.max(noVolts, nothing * Math.abs(Number(volts)));
  let known: Twofold[] | undefined;
  return {
    current({ place }) {
      const { high = 0, low = 0 } = currents[place] ?? {};
      return Math.abs(high + low) > noCurrent ? ((high + low) * ohm) / volt : 0;
    },
    between(p, q) {
      known ??= potentials(graph, currents);
      const a = known[p.place];
      const b = known[q.place];
      if (!a || !b) return 0;
      const difference = a.high - b.high + (a.low - b.low);
      return Math.abs(difference) > noVolts ? difference / volt : 0;
    },
  };
}
