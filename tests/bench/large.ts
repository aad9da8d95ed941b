// Large circuits beside the sparse solvers of general-purpose libraries, interleaved in one process: the ratios count.
import { graphOf } from '../../src/engine/solve/graph.ts';
import { solve, track } from '../../src/engine/index.ts';
import { sparseFlow } from '../../src/engine/sparse/index.ts';
import { measure } from './measure.ts';
import { against, atMost, title, took } from './report.ts';
import { prepared, sparseRivals } from './sparse-rivals.ts';
import { largeWorkloads } from './workloads.ts';

// Times faster than the best library that are asked of a cold solution.
const asked: Readonly<Record<string, number>> = { 'ladder 10000': 4, 'grid 32': 8, 'grid 100': 25 };

const cold = new Map<string, number>();
for (const workload of largeWorkloads()) {
  const { name, circuit, edges } = workload;
  const equations = prepared(workload);
  const potentials = sparseRivals['numeric ccsLUP'](equations);
  const ours = solve(circuit);
  const off = potentials.reduce(
    (most, volts, at) => Math.max(most, Math.abs(volts - (ours.potential(`n${at + 1}`) ?? volts))),
    0,
  );
  title(`${name}, ${edges.length} resistors (agree within ${off.toExponential(0)} V)`);
  const graph = graphOf(circuit);
  const times = measure({
    'from the list of components': () =>
      solve({ ...circuit, components: [...circuit.components] }).current('R1'),
    'equations and currents': () => sparseFlow(graph).current(1),
    'numeric ccsLUP': () => sparseRivals['numeric ccsLUP'](equations),
    'mathjs slu': () => sparseRivals['mathjs slu'](equations),
  });
  for (const [task, timing] of Object.entries(times)) took(task, timing);
  const rival = Math.min(times['numeric ccsLUP'].median, times['mathjs slu'].median);
  cold.set(name, times['equations and currents'].median);
  const best = rival === times['mathjs slu'].median ? times['mathjs slu'] : times['numeric ccsLUP'];
  against('equations against the best library', times['equations and currents'], best, asked[name] ?? 1);
  const tracker = track(
    circuit,
    'R1',
    Array.from({ length: 12 }, (_, at) => `I_R${at + 1}`),
  );
  const out = new Float64Array(12);
  let ohms = 1;
  const step = measure({ twelve: () => tracker.at((ohms = ohms === 100 ? 1 : ohms + 1), out) });
  atMost('12 readings at a step of the slider', step.twelve, 0.025);
}

title('how cost grows, as a power of the number of resistors (unchanged pattern)');
const power = (small: string, large: string, times: number): string =>
  (Math.log((cold.get(large) ?? NaN) / (cold.get(small) ?? NaN)) / Math.log(times)).toFixed(2);
console.log(`ladder: ${power('ladder 1000', 'ladder 10000', 10)} (asked 1.05)`);
console.log(`grid: ${power('grid 32', 'grid 100', (100 * 99) / (32 * 31))} (asked 1.6)`);
