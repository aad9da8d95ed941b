// `npm run bench:page`: a frame of 1 and of 20 boards while a slider moves, the processor slowed six times, beside the
// same drawing rendered plainly by Lit, in the same run.
import { build } from 'esbuild';
import { drag } from '../bench/page/drag.mjs';
import { launch } from './browser.mjs';
import { serve } from './server.mjs';

const circuit =
  'B1 12 V + A1 + R1 [4..40 step 0.1] 12 Ω + (R2 8 Ω ∥ R3 12 Ω ∥ (R4 6 Ω + L1 8 Ω)) + (R5 20 Ω ∥ (R6 10 Ω + A2)) + ' +
  '(R7 15 Ω ∥ R8 30 Ω)';
const frames = 84;
const runs = 3;
const slowdown = 6;
const ways = ['nothing', 'plain-board', 'rheolet-board'];

await build({
  entryPoints: ['tests/bench/page/plain-board.ts'],
  outfile: '.tmp/plain-board.js',
  bundle: true,
  minify: true,
  format: 'esm',
  target: 'es2022',
  conditions: ['production'],
  ignoreAnnotations: true,
  logLevel: 'warning',
});

/** One board has its slider; twenty follow one that is not theirs, so they show none. */
function page(way, count) {
  const tag = way === 'nothing' ? 'rheolet-board' : way;
  const script = tag === 'plain-board' ? '/.tmp/plain-board.js' : '/dist/rheolet.js';
  const grid = '<style>body { display: grid; grid-template-columns: repeat(7, 320px) }</style>';
  return `<!doctype html>${grid}<script type="module" src="${script}"></script>
    ${`<${tag} circuit="${circuit}"${count > 1 ? ' hide="sliders"' : ''}></${tag}>`.repeat(count)}`;
}

const pages = {};
for (const way of ways) for (const count of [1, 20]) pages[`/${way}/${count}`] = page(way, count);

/** The browser's own counters, in processor time of the main thread: what else the machine does is not in them. */
async function counters(tab) {
  const protocol = await tab.createCDPSession();
  await protocol.send('Performance.enable', { timeDomain: 'threadTicks' });
  return async () => {
    const { metrics } = await protocol.send('Performance.getMetrics');
    return Object.fromEntries(metrics.map(({ name, value }) => [name, value]));
  };
}

/** Milliseconds of the main thread for each frame, by kind of work, and the intervals between frames. */
async function frame(browser, url, way) {
  const tab = await browser.newPage();
  await tab.setViewport({ width: 2400, height: 1600 });
  await tab.goto(url, { waitUntil: 'networkidle0' });
  await tab.emulateCPUThrottling(slowdown);
  const tag = way === 'nothing' ? '' : way;
  const count = await counters(tab);
  await tab.evaluate(drag, tag, 20);
  const before = await count();
  const intervals = (await tab.evaluate(drag, tag, frames)).sort((a, b) => a - b);
  const after = await count();
  await tab.close();
  const each = (name) => ((after[name] - before[name]) * 1000) / frames;
  return {
    all: each('TaskDuration'),
    script: each('ScriptDuration'),
    style: each('RecalcStyleDuration'),
    layout: each('LayoutDuration'),
    p50: intervals[Math.floor(0.5 * intervals.length)],
    p95: intervals[Math.floor(0.95 * intervals.length)],
  };
}

const server = await serve({ pages });
const browser = await launch();
try {
  for (const count of [1, 20]) {
    console.log(
      `\n${count === 1 ? 'one board' : `${count} boards`}, ms a frame at ${slowdown}×, best of ${runs}`,
    );
    const best = new Map();
    for (let run = 0; run < runs; run++) {
      for (const way of ways) {
        const taken = await frame(browser, `${server.url}/${way}/${count}`, way);
        if (!(best.get(way)?.all < taken.all)) best.set(way, taken);
      }
    }
    for (const [way, taken] of best) {
      const numbers = Object.entries(taken).map(([name, ms]) => `${name} ${ms.toFixed(2)}`);
      console.log(`  ${way.padEnd(14)} ${numbers.join('  ')}`);
    }
    const { all, p50, p95 } = best.get('rheolet-board');
    const ratio = all / best.get('plain-board').all;
    const said = (value, limit) =>
      `${value.toFixed(2)} (target ${limit}: ${value <= limit ? 'reached' : 'missed'})`;
    console.log(`  with digits: ${said(all, count === 1 ? 4 : 12)}`);
    if (count === 20) {
      console.log(`  beside plain Lit: ${said(ratio, 0.3)}`);
      console.log(`  between frames: p50 ${said(p50, 16.7)}, p95 ${said(p95, 20)}`);
    } else console.log(`  beside plain Lit: ${ratio.toFixed(2)}`);
  }
} finally {
  await browser.close();
  server.close();
}
