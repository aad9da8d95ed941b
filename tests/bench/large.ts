// Large circuits beside the sparse solvers of general-purpose libraries, interleaved in one process: the ratios count.
import { graphOf } from '../../src/engine/solve/graph.ts';
import { parseCircuit, solve, track } from '../../src/engine/index.ts';
import { sparseFlow } from '../../src/engine/sparse/index.ts';
import { exponentOf } from '../engine/topology/growth.ts';
import { leftOver } from '../engine/sparse/left-over.ts';
import { measure, once, type Timing } from './measure.ts';
import { against, atMost, noMore, title, took } from './report.ts';
import { prepared, sparseRivals } from './sparse-rivals.ts';
import { hugeWorkload, largeWorkloads, type Workload } from './workloads.ts';

// Times faster than the best library that are asked of a cold solution.
const asked: Readonly<Record<string, number>> = { 'ladder 10000': 4, 'grid 32': 8, 'grid 100': 25 };
// And of a step of the slider than a library’s new solve.
const askedOfStep: Readonly<Record<string, number>> = { 'ladder 10000': 250, 'grid 100': 10_000 };

/** A bridge: solved in between, it takes the place of the analysis that is kept for the next circuit of the same form. */
const other = graphOf(
  parseCircuit('B1 6 V + ((R1 1 Ω + @p + R2 2 Ω) ∥ (R3 3 Ω + @q + R4 4 Ω)); R5 5 Ω @p–@q'),
);

const cold = new Map<string, readonly [resistors: number, least: number]>();

function leastOf(...timings: readonly Timing[]): Timing {
  return timings.reduce((best, timing) => (timing.least < best.least ? timing : best));
}

/** What is left over at the nodes, as a share of the largest current (Kirchhoff’s current law). */
function residual({ name, circuit }: Workload): void {
  const flow = sparseFlow(graphOf(circuit));
  const left = leftOver(circuit, (branch) => flow.current(branch));
  noMore('left over at a node', left, name.startsWith('ladder') ? 1e-15 : 1e-14);
}

/** The steps of a slider, twelve readings and all currents, beside a new solution by the best library. */
function stepsOf({ name, circuit, edges }: Workload, rival: Timing): void {
  const all = edges.map((_, at) => `I_R${at + 1}`);
  const [few, every] = [track(circuit, 'R1', all.slice(0, 12)), track(circuit, 'R1', all)];
  const [fewOut, everyOut] = [new Float64Array(12), new Float64Array(all.length)];
  let ohms = 1;
  const turn = (): number => (ohms = ohms === 100 ? 1 : ohms + 1);
  const step = measure({
    twelve: () => few.at(turn(), fewOut),
    every: () => every.at(turn(), everyOut),
  });
  atMost('12 readings at a step of the slider', step.twelve, 0.025);
  atMost('every current at a step', step.every, 0.0013 * edges.length);
  const target = askedOfStep[name];
  if (target) against('every current against the best', step.every, rival, target);
}

for (const workload of largeWorkloads()) {
  const { name, circuit, edges } = workload;
  const equations = prepared(workload);
  const potentials = sparseRivals['numeric ccsLUP'](equations);
  const ours = solve(circuit);
  const off = potentials.reduce(
    (most, volts, at) => Math.max(most, Math.abs(volts - (ours.potential(`n${at + 1}`) ?? NaN))),
    0,
  );
  title(`${name}, ${edges.length} resistors (agree within ${off.toExponential(0)} V)`);
  const graph = graphOf(circuit);
  const times = measure({
    'from the list of components': () =>
      solve({ ...circuit, components: [...circuit.components] }).current('R1'),
    'equations and currents, cold': () => {
      sparseFlow(other);
      sparseFlow(graph).current(1);
    },
    'the same, values changed': () => sparseFlow(graph).current(1),
    'numeric ccsLUP': () => sparseRivals['numeric ccsLUP'](equations),
    'mathjs slu': () => sparseRivals['mathjs slu'](equations),
    'equations made, and the faster': () => sparseRivals['numeric ccsLUP'](prepared(workload)),
  });
  for (const [task, timing] of Object.entries(times)) took(task, timing);
  residual(workload);
  const own = times['equations and currents, cold'];
  const rival = leastOf(times['numeric ccsLUP'], times['mathjs slu']);
  cold.set(name, [edges.length, own.least]);
  against('equations, cold, against the best', own, rival, asked[name] ?? 1);
  against(
    'from the list, against numeric',
    times['from the list of components'],
    times['equations made, and the faster'],
    1,
  );
  if (asked[name]) stepsOf(workload, rival);
}

{
  const workload = hugeWorkload();
  title(`grid 300, ${workload.edges.length} resistors (once each)`);
  const graph = graphOf(workload.circuit);
  const equations = prepared(workload);
  const own = once(() => sparseFlow(graph).current(1), 2);
  const rival = once(() => sparseRivals['mathjs slu'](equations), 1);
  took('equations and currents', own);
  took('mathjs slu', rival);
  residual(workload);
  against('equations against mathjs slu', own, rival, 22);
}

title('how cost grows, as a power of the number of resistors');
for (const [family, limit] of [
  ['ladder', 1.05],
  ['grid', 1.6],
] as const)
  noMore(
    family,
    exponentOf([...cold].filter(([name]) => name.startsWith(family)).map(([, point]) => point)),
    limit,
  );
