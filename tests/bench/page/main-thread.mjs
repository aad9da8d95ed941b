/** How much slower the processor is made. */
export const slowdown = 6;

/** The browser's own counters, in processor time of the main thread: what else the machine does is not in them. */
export async function counters(tab) {
  const protocol = await tab.createCDPSession();
  await protocol.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await protocol.send('Performance.getMetrics');
    return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  };
}

/** Lets go of what former acts have left behind: a later one does not pay for it. */
export async function collectGarbage(tab) {
  const protocol = await tab.createCDPSession();
  await protocol.send('HeapProfiler.collectGarbage');
  await protocol.detach();
}

/** Milliseconds of the main thread that an act of a page takes, by kind of work. */
export async function taken(tab, act) {
  const count = await counters(tab);
  const before = await count();
  await act();
  const after = await count();
  const spent = (name) => (after[name] - before[name]) * 1000;
  return { all: spent('TaskDuration'), style: spent('RecalcStyleDuration'), layout: spent('LayoutDuration') };
}

/** Runs each way so many times, an odd number, in turn, and gives the middle run of a way: single ones spread twofold. */
export async function middle(ways, loads, run) {
  const all = new Map(ways.map((way) => [way, []]));
  for (let turn = 0; turn < loads; turn++) for (const way of ways) all.get(way).push(await run(way));
  return (way) => all.get(way).sort((a, b) => a.all - b.all)[(loads - 1) / 2];
}

/** A number beside the most that is asked. */
export function said(value, limit) {
  const verdict = value <= limit ? 'met' : `missed by ${(value - limit).toFixed(2)}`;
  return `${value.toFixed(2)} (target ${limit}: ${verdict})`;
}

/** A row of numbers. */
export function row(name, numbers) {
  const written = Object.entries(numbers).map(([kind, number]) => `${kind} ${number.toFixed(2)}`);
  console.log(`  ${name.padEnd(26)} ${written.join('  ')}`);
}
