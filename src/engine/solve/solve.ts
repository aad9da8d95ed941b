import type { Circuit, Supply } from '../circuit/index.ts';
import { Fraction, quantity } from '../quantity/index.ts';
import { Answer, type Arithmetic } from './answer.ts';
import { exactFlow } from './exact.ts';
import { faultsOf } from './faults.ts';
import type { Flow } from './flow.ts';
import { graphOf, type Graph } from './graph.ts';
import { liveFlow } from './live.ts';
import type { ExactSolution, Fault, Readings, Solution } from './solution.ts';

const one = new Fraction(1);

/** Loops beyond these take longer than a page can wait. */
const limits = { live: 1000, exact: 200 } as const;

/** A network without a supply gets one of 1 V and 1 Ω inside between its terminals, to find its resistance by. */
function tested(circuit: Circuit): Circuit {
  const { components, terminals } = circuit;
  if (!terminals) return circuit;
  const [from, to] = terminals;
  const emf = quantity(one, 'V');
  const internalResistance = quantity(one, 'Ω');
  const supply: Supply = { id: '', kind: 'supply', from, to, emf, internalResistance };
  return { components: [...components, supply] };
}

function answer<N extends number | Fraction>(
  circuit: Circuit,
  limit: number,
  flow: (graph: Graph) => Flow<N>,
  arithmetic: Arithmetic<N>,
): Readings<N> {
  const graph = graphOf(tested(circuit));
  const count = graph.chords.length;
  const faults: readonly Fault[] =
    count > limit
      ? [{ code: 'too many loops', data: { count, limit }, ids: [] }]
      : circuit.terminals
        ? []
        : faultsOf(graph);
  return new Answer(circuit, graph, faults, faults.length > 0 ? undefined : flow(graph), arithmetic);
}

const live: Arithmetic<number> = {
  of: Number,
  sum: (a, b) => a + b,
  // Adding 0 makes 0 of −0.
  product: (a, b) => a * b + 0,
  quotient: (a, b) => a / b,
  zero: 0,
  solve,
};

const exact: Arithmetic<Fraction> = {
  of: (value) => value,
  sum: (a, b) => a.add(b),
  product: (a, b) => a.mul(b),
  quotient: (a, b) => a.div(b),
  zero: new Fraction(0),
  solve: solveExact,
};

/** Solves a circuit in floating-point numbers, each reading right to a rounding or two of the largest of its kind. */
export function solve(circuit: Circuit): Solution {
  return answer(circuit, limits.live, liveFlow, live);
}

/** Solves a circuit exactly, in fractions. */
export function solveExact(circuit: Circuit): ExactSolution {
  return answer(circuit, limits.exact, exactFlow, exact);
}
