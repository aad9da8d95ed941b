import { drag } from './drag.mjs';
import { counters, row, said, slowdown } from './main-thread.mjs';
import { board, boards, page, viewport } from './pages.mjs';

const frames = 60;
const runs = 3;
const [ours, plain] = ['rheolet-board', 'plain-board'];
/** Room for twelve boards in sight. */
const twelve = { width: 1280, height: 1100 };
const still = board(ours, 'sliders meters values');

/** What is dragged on: the tag whose sliders move, if any, what stands in the page, and the window. */
const ways = {
  'nothing, 1': { tag: '', content: boards(ours, 1), window: viewport(1) },
  'plain-board, 1': { tag: plain, content: boards(plain, 1), window: viewport(1) },
  'rheolet-board, 1': { tag: ours, content: boards(ours, 1), window: viewport(1) },
  'nothing, 20': { tag: '', content: boards(ours, 20), window: viewport(20) },
  'plain-board, 20': { tag: plain, content: boards(plain, 20), window: viewport(20) },
  'rheolet-board, 20': { tag: ours, content: boards(ours, 20), window: viewport(20) },
  'the same without digits': { tag: ours, content: still.repeat(20), window: viewport(20) },
  'rheolet-board, 12': { tag: ours, content: boards(ours, 12), window: twelve },
  'rheolet-board, 12 of 200': { tag: ours, content: boards(ours, 200), window: twelve },
};
const path = (way) => `/frames/${way.replaceAll(/\W+/g, '-')}`;

/** The pages that are dragged on, by path. */
export const pages = Object.fromEntries(
  Object.entries(ways).map(([way, { tag, content }]) => [path(way), page(tag || ours, content)]),
);

/** Milliseconds of the main thread for each frame, by kind of work, and the intervals between frames. */
async function frame(browser, url, way) {
  const { tag, window } = ways[way];
  const tab = await browser.newPage();
  await tab.setViewport(window);
  await tab.goto(url + path(way), { waitUntil: 'networkidle0' });
  await tab.$$eval(ours, (all) => Promise.all(all.map(({ ready }) => ready)));
  await tab.emulateCPUThrottling(slowdown);
  const counted = await counters(tab);
  await tab.evaluate(drag, tag, 20);
  const before = await counted();
  const { intervals, long } = await tab.evaluate(drag, tag, frames);
  const after = await counted();
  await tab.close();
  intervals.sort((a, b) => a - b);
  const each = (name) => ((after[name] - before[name]) * 1000) / frames;
  return {
    all: each('TaskDuration'),
    script: each('ScriptDuration'),
    style: each('RecalcStyleDuration'),
    layout: each('LayoutDuration'),
    p50: intervals[Math.floor(0.5 * intervals.length)],
    p95: intervals[Math.floor(0.95 * intervals.length)],
    long,
  };
}

/** A frame of 1 and of 20 boards while a slider moves, beside a plain Lit re-render; and of 12 boards, alone and among 200. */
export async function measure(browser, url) {
  console.log(`\nwhile a slider moves, ms of the main thread for a frame at ${slowdown}×, best of ${runs}`);
  const best = {};
  for (let run = 0; run < runs; run++) {
    for (const way of Object.keys(ways)) {
      const took = await frame(browser, url, way);
      if (!(best[way]?.all < took.all)) best[way] = took;
    }
  }
  for (const [way, took] of Object.entries(best)) row(way, took);
  const one = best['rheolet-board, 1'];
  console.log(`  one board: ${said(one.all, 4)}`);
  console.log(`  beside plain Lit: ${(one.all / best['plain-board, 1'].all).toFixed(2)}`);
  const twenty = best['rheolet-board, 20'];
  console.log(`  20 boards: ${said(twenty.all, 12)}`);
  console.log(`  without digits: ${said(best['the same without digits'].all, 10)}`);
  console.log(`  beside plain Lit: ${said(twenty.all / best['plain-board, 20'].all, 0.3)}`);
  console.log(`  between frames: p50 ${said(twenty.p50, 16.7)}, p95 ${said(twenty.p95, 20)}`);
  console.log(`  style, a board: ${said(best['the same without digits'].style / 20, 0.1)}`);
  console.log(`  layout without digits, a board: ${said(best['the same without digits'].layout / 20, 0.05)}`);
  console.log(`  tasks over 50 ms: ${said(twenty.long, 0)}`);
  const among = best['rheolet-board, 12 of 200'].all / best['rheolet-board, 12'].all;
  console.log(`  12 of 200 boards beside 12 alone: ${said(among, 1.15)}`);
}
