import { drag } from './drag.mjs';
import { counters, row, said, slowdown } from './main-thread.mjs';
import { boards, page, viewport } from './pages.mjs';

const frames = 84;
const runs = 3;
const ways = ['nothing', 'plain-board', 'rheolet-board'];
const tagOf = (way) => (way === 'nothing' ? 'rheolet-board' : way);

/** The pages that are dragged on, by path. */
export const pages = Object.fromEntries(
  ways.flatMap((way) =>
    [1, 20].map((count) => [`/${way}/${count}`, page(tagOf(way), boards(tagOf(way), count))]),
  ),
);

/** Milliseconds of the main thread for each frame, by kind of work, and the intervals between frames. */
async function frame(browser, url, way, count) {
  const tab = await browser.newPage();
  await tab.setViewport(viewport(count));
  await tab.goto(`${url}/${way}/${count}`, { waitUntil: 'networkidle0' });
  await tab.emulateCPUThrottling(slowdown);
  const tag = way === 'nothing' ? '' : way;
  const counted = await counters(tab);
  await tab.evaluate(drag, tag, 20);
  const before = await counted();
  const intervals = (await tab.evaluate(drag, tag, frames)).sort((a, b) => a - b);
  const after = await counted();
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

/** A frame of 1 and of 20 boards while a slider moves, beside a plain Lit re-render. */
export async function measure(browser, url) {
  for (const count of [1, 20]) {
    console.log(
      `\n${count === 1 ? 'one board' : `${count} boards`}, ms a frame at ${slowdown}×, best of ${runs}`,
    );
    const best = new Map();
    for (let run = 0; run < runs; run++) {
      for (const way of ways) {
        const took = await frame(browser, url, way, count);
        if (!(best.get(way)?.all < took.all)) best.set(way, took);
      }
    }
    for (const [way, took] of best) row(way, took);
    const { all, p50, p95 } = best.get('rheolet-board');
    const ratio = all / best.get('plain-board').all;
    console.log(`  with digits: ${said(all, count === 1 ? 4 : 12)}`);
    if (count === 20) {
      console.log(`  beside plain Lit: ${said(ratio, 0.3)}`);
      console.log(`  between frames: p50 ${said(p50, 16.7)}, p95 ${said(p95, 20)}`);
    } else console.log(`  beside plain Lit: ${ratio.toFixed(2)}`);
  }
}
