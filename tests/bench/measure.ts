/** Microseconds a call: the middle of the samples and the least. */
export interface Timing {
  readonly median: number;
  readonly least: number;
}

const samples = 15;
const sampleMs = 4;
const warmUpMs = 150; // the compiler works beside us, and may be short of a processor

function run(task: () => void, calls: number): number {
  const start = performance.now();
  for (let call = 0; call < calls; call++) task();
  return performance.now() - start;
}

/** Calls that fill one sample, found once the task has been warm for a while. */
function calibrate(task: () => void): number {
  const start = performance.now();
  while (performance.now() - start < warmUpMs) task();
  let calls = 1;
  while (run(task, calls) < sampleMs) calls *= 2;
  return calls;
}

/** Times tasks in turn, so that whatever else the machine does falls on all of them alike. */
export function measure<Name extends string>(
  tasks: Readonly<Record<Name, () => void>>,
): Record<Name, Timing> {
  const names = Object.keys(tasks) as Name[];
  const calls = new Map(names.map((name) => [name, calibrate(tasks[name])]));
  const taken = new Map<Name, number[]>(names.map((name) => [name, []]));
  for (let sample = 0; sample < samples; sample++) {
    for (const name of names) {
      const count = calls.get(name)!;
      taken.get(name)!.push((1000 * run(tasks[name], count)) / count);
    }
  }
  const timing = (name: Name): Timing => {
    const sorted = taken.get(name)!.sort((a, b) => a - b);
    return { median: sorted[samples >> 1]!, least: sorted[0]! };
  };
  return Object.fromEntries(names.map((name) => [name, timing(name)])) as Record<Name, Timing>;
}

/** Times what takes seconds, so many times. */
export function once(task: () => void, times: number): Timing {
  const taken = Array.from({ length: times }, () => 1000 * run(task, 1)).sort((a, b) => a - b);
  return { median: taken[times >> 1]!, least: taken[0]! };
}
