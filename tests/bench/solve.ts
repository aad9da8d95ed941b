// The engine beside general-purpose libraries on the same circuits, interleaved in one process: the ratios count.
import { solve, solveExact, track, withValue, type Circuit } from '../../src/engine/index.ts';
import { exactFlow } from '../../src/engine/solve/exact.ts';
import { forestOf, graphOf } from '../../src/engine/solve/graph.ts';
import { liveFlow } from '../../src/engine/solve/live.ts';
import { measure } from './measure.ts';
import { against, atMost, noMore, title, took } from './report.ts';
import { exactNodal, rivals } from './rivals.ts';
import { spreadOver, workloads, type Workload } from './workloads.ts';

/** The same circuit as a new one, so that nothing kept from an earlier call helps. */
const fresh = (circuit: Circuit): Circuit => ({ ...circuit, components: [...circuit.components] });

/** From plain numbers between numbered nodes, which is what the libraries are given, to all potentials and currents: what they are asked for. */
function fromNumbers({ circuit, nodes }: Workload): () => void {
  const graph = graphOf(circuit);
  return () => {
    forestOf(graph, graph.ohms, graph);
    const flow = liveFlow(graph);
    for (let branch = 0; branch < graph.tails.length; branch++) flow.current(branch);
    for (let node = 0; node < nodes; node++) flow.between(node, 0);
  };
}

/** The same from the list of components, by the public function. */
function everyUnknown({ circuit, nodes }: Workload): void {
  const solution = solve(fresh(circuit));
  for (const { id } of circuit.components) solution.current(id);
  for (let node = 0; node < nodes; node++) solution.potential(`n${node}`);
}

/** The public function, with the current, the p.d. and the power of every component read. */
function everyReading({ circuit }: Workload): void {
  const solution = solve(fresh(circuit));
  for (const { id } of circuit.components) {
    solution.current(id);
    solution.voltage(id);
    solution.power(id);
  }
}

/** The exact solver, with every current read as a reduced fraction. */
function exactCurrents({ circuit }: Workload): void {
  const solution = solveExact(fresh(circuit));
  for (const { id } of circuit.components) solution.current(id);
}

/** The exact solver, with every current left as two whole numbers, as it comes. */
function unreducedCurrents({ circuit }: Workload): void {
  const flow = exactFlow(graphOf(fresh(circuit)), (numerator, denominator) => [numerator, denominator]);
  circuit.components.forEach((_, branch) => flow.current(branch));
}

/** The largest difference of ours from each other's currents, relative to the largest current. */
function disagreement(workload: Workload): number {
  const ours = solve(workload.circuit);
  const exact = exactNodal(workload).map((current) => current.valueOf());
  const all = [...Object.values(rivals).map((rival) => [...rival(workload)]), exact];
  const largest = Math.max(...exact.map(Math.abs));
  const differences = all.flatMap((currents) =>
    currents.map((current, at) => Math.abs(current - ours.current(`R${at + 1}`)!)),
  );
  return Math.max(...differences) / largest;
}

// Times faster than numeric, ml-matrix and mathjs that are asked of a cold solution; microseconds of the public one.
const cold: Readonly<Record<string, readonly [number, number, number]>> = {
  classroom: [5, 10, 30],
  bridge: [5, 10, 30],
  cube: [3.5, 5, 20],
  'ladder 20': [4.5, 18, 80],
  'grid 5': [4.5, 18, 80],
};

for (const workload of workloads) {
  const { name, circuit, edges } = workload;
  title(
    `${name}, ${edges.length} resistors (agree within ${disagreement(workload).toExponential(0)} of the largest current)`,
  );
  const times = measure({
    'from numbers': fromNumbers(workload),
    'solve, nothing read': () => solve(fresh(circuit)),
    'solve, potentials and currents': () => everyUnknown(workload),
    'solve, every reading': () => everyReading(workload),
    numeric: () => rivals.numeric(workload),
    'ml-matrix': () => rivals['ml-matrix'](workload),
    mathjs: () => rivals.mathjs(workload),
    solveExact: () => exactCurrents(workload),
    'exact, not reduced': () => unreducedCurrents(workload),
    'fraction.js, node equations': () => exactNodal(workload),
  });
  for (const [task, timing] of Object.entries(times)) took(task, timing);
  const [numeric, mlMatrix, mathjs] = cold[name]!;
  const bare = times['from numbers'];
  against('from numbers against numeric', bare, times.numeric, numeric);
  against('from numbers against ml-matrix', bare, times['ml-matrix'], mlMatrix);
  against('from numbers against mathjs', bare, times.mathjs, mathjs);
  const ours = times['solve, potentials and currents'];
  against('solve against numeric', ours, times.numeric, numeric);
  against('solve against ml-matrix', ours, times['ml-matrix'], mlMatrix);
  against('solve against mathjs', ours, times.mathjs, mathjs);
  if (edges.length !== 12)
    atMost('every reading', times['solve, every reading'], edges.length === 5 ? 2 : 15);
  if (edges.length === 5)
    against('every reading against mathjs', times['solve, every reading'], times.mathjs, 1 / 0.7);
  else if (edges.length === 40)
    against('exact against fraction.js', times.solveExact, times['fraction.js, node equations'], 4);
  if (name === 'classroom') atMost('exact', times.solveExact, 3);
  if (edges.length === 40) {
    atMost('exact, all reduced', times.solveExact, 500);
    atMost('exact, not reduced', times['exact, not reduced'], 150);
    const fractions = times['fraction.js, node equations'];
    against('not reduced against fraction.js', times['exact, not reduced'], fractions, 15);
  }
}

title('a step of the slider R1');
for (const workload of workloads) {
  const { name, circuit, edges } = workload;
  const all = edges.map((_, at) => `I_R${at + 1}`);
  const few = Array.from({ length: 12 }, (_, at) => all[at % all.length]!);
  const everyTracker = track(circuit, 'R1', all);
  const fewTracker = track(circuit, 'R1', few);
  const everyOut = new Float64Array(all.length);
  const fewOut = new Float64Array(few.length);
  const dragged = edges.map((edge) => ({ ...edge }));
  let ohms = 1;
  const turn = (): number => (ohms = ohms === 100 ? 1 : ohms + 1);
  const solvedAgain = (): void => {
    dragged[0]!.ohms = turn();
    rivals.numeric({ ...workload, edges: dragged });
  };
  const times = measure({
    prepare: () => track(circuit, 'R1', few),
    twelve: () => fewTracker.at(turn(), fewOut),
    every: () => everyTracker.at(turn(), everyOut),
    numeric: solvedAgain,
  });
  if (edges.length === 12) took(`${name}: prepare`, times.prepare);
  else atMost(`${name}: prepare`, times.prepare, edges.length === 5 ? 10 : 300);
  atMost(`${name}: 12 readings`, times.twelve, 0.025);
  atMost(`${name}: every current`, times.every, 0.0013 * Math.max(edges.length, 12));
  against(`${name}: against numeric`, times.every, times.numeric, 40);
}

title('off the exact currents, as a share of the largest, where resistances are spread over 1e10');
for (const { name, edges, circuit } of workloads.map((workload) => spreadOver(workload, 1e10))) {
  const ids = edges.map((_, at) => `R${at + 1}`);
  const tracker = track(
    circuit,
    'R1',
    ids.map((id) => `I_${id}`),
  );
  const out = new Float64Array(ids.length);
  let [live, solved] = [0, 0];
  for (const ohms of [1, 7, 33, 100]) {
    const setting = withValue(circuit, 'R1', ohms);
    const [truth, ours] = [solveExact(setting), solve(setting)];
    const exact = ids.map((id) => Number(truth.current(id)));
    const largest = Math.max(...exact.map(Math.abs));
    tracker.at(ohms, out);
    exact.forEach((current, at) => {
      live = Math.max(live, Math.abs((out[at] ?? NaN) - current) / largest);
      solved = Math.max(solved, Math.abs((ours.current(`R${at + 1}`) ?? NaN) - current) / largest);
    });
  }
  noMore(`${name}: a step of the slider`, live, 1e-15);
  noMore(`${name}: solve`, solved, 1e-15);
}
