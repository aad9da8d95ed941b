import { asMarked, bridges, hasCurve, inState, type Circuit, type State } from '../circuit/index.ts';
import { Fraction } from '../quantity/index.ts';
import { Answer, type Arithmetic } from './answer.ts';
import { solverFor } from './equip.ts';
import { exactFlow, mostExact } from './exact.ts';
import { faultsOf } from './faults.ts';
import type { Flow } from './flow.ts';
import { graphOf, type Graph } from './graph.ts';
import { isEquippedLarge, liveFlow } from './live.ts';
import { round } from './round.ts';
import type { ExactSolution, Fault, Readings, Solution } from './solution.ts';
import { tested } from './terminals.ts';

/** Loops beyond these take longer than a page can wait: written out, solved as a large circuit, and exactly. */
const limits = { dense: 1000, large: 1_000_000, exact: mostExact } as const;

const mostLive = (): number => (isEquippedLarge() ? limits.large : limits.dense);

/** Why there is no answer; where that is not to be seen in the drawing, only that something is not as it is marked. */
function faultsTold(circuit: Circuit, graph: Graph): readonly Fault[] {
  const faults = faultsOf(graph);
  const drawn = asMarked(circuit);
  if (faults.length === 0 || drawn === circuit) return faults;
  const seen = faultsOf(graphOf(bridges(drawn)));
  return seen.length > 0 ? seen : [{ code: 'not as marked', data: {}, ids: [] }];
}

function answer<N extends number | Fraction>(
  circuit: Circuit,
  limit: number,
  flow: (graph: Graph) => Flow<N>,
  arithmetic: Arithmetic<N>,
  at?: ReadonlyMap<string, Fraction>,
): Readings<N> {
  const graph = graphOf(tested(bridges(circuit)), at);
  const count = graph.chords.length;
  const curved = at ? [] : circuit.components.filter(hasCurve).map(({ id }) => id);
  const faults: readonly Fault[] =
    curved.length > 0
      ? [{ code: 'not ohmic', data: { ids: curved }, ids: curved }]
      : count > limit
        ? [{ code: 'too many loops', data: { count, limit }, ids: [] }]
        : circuit.terminals
          ? []
          : faultsTold(circuit, graph);
  return new Answer(circuit, graph, faults, faults.length > 0 ? undefined : flow(graph), arithmetic);
}

const live: Arithmetic<number> = {
  zero: 0,
  of: ({ s, n, d }) => (Number(s) * Number(n)) / Number(d),
  sum: (a, b) => a + b,
  // Adding 0 makes 0 of −0.
  product: (a, b) => a * b + 0,
  quotient: (a, b) => a / b,
  solve,
};

const exact: Arithmetic<Fraction> = {
  zero: new Fraction(0),
  of: (value) => value,
  sum: (a, b) => a.add(b),
  product: (a, b) => a.mul(b),
  quotient: (a, b) => a.div(b),
  solve: solveExact,
};

const fraction = (n: bigint | number, d: bigint | number): Fraction => new Fraction(n, d);

/**
 * Solves a circuit in floating-point numbers, each reading right to a rounding or two of the largest of its kind; as time has left it,
 * where a state is given (see `next`).
 */
export function solve(circuit: Circuit, { state }: { readonly state?: State } = {}): Solution {
  const now = state ? inState(circuit, state) : circuit;
  return solverFor(now)?.solve(now) ?? answer(now, mostLive(), liveFlow, live);
}

/** Solves a circuit in which what has a curve has these resistances, by id: those of its operating point. */
export function solveAt(circuit: Circuit, resistances: ReadonlyMap<string, Fraction>): Solution {
  return answer(circuit, mostLive(), liveFlow, live, resistances);
}

/** Solves a circuit exactly, in fractions. */
export function solveExact(circuit: Circuit): ExactSolution {
  return answer(circuit, limits.exact, (graph) => exactFlow(graph, fraction), exact);
}

/** Solves a circuit exactly and rounds each current and p.d. once; live where it is too large for that. */
export function solveRounded(circuit: Circuit): Solution {
  const rounded = answer(circuit, limits.exact, (graph) => exactFlow(graph, round), {
    ...live,
    solve: solveRounded,
  });
  return rounded.faults.some(({ code }) => code === 'too many loops') ? solve(circuit) : rounded;
}
