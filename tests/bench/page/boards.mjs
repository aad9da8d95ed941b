import { hold } from './hold.mjs';
import { loads, middle, row, said, slowdown, taken } from './main-thread.mjs';
import { boards, page, viewport } from './pages.mjs';

const ways = ['plain-board', 'rheolet-board'];
const counts = [1, 20, 200];
const limits = { 1: { ms: 45 }, 20: { ms: 115, ratio: 0.6 }, 200: { ms: 150, ratio: 0.2 } };

/** The pages that are loaded, by path. */
export const pages = Object.fromEntries(
  ways.flatMap((way) =>
    counts.map((count) => [`/load/${way}/${count}`, page(way, boards(way, count), `(${hold})()`)]),
  ),
);

/** Runs in the page: the heights of all boards, how many are in the window, and how many of these are drawn. */
function look(tag) {
  const all = [...document.querySelectorAll(tag)].map((board) => ({
    ...board.getBoundingClientRect().toJSON(),
    drawn: board.shadowRoot.querySelector('g') !== null,
  }));
  const seen = all.filter(({ top }) => top < innerHeight);
  return {
    heights: all.map(({ height }) => height),
    seen: seen.length,
    drawn: seen.filter(({ drawn }) => drawn).length,
  };
}

async function load(browser, url, way, count) {
  const tab = await browser.newPage();
  await tab.setViewport(viewport(count));
  await tab.goto(`${url}/load/${way}/${count}`, { waitUntil: 'networkidle0' });
  await tab.emulateCPUThrottling(slowdown);
  await tab.evaluate('acts.painted()');
  const painted = await taken(tab, () => tab.evaluate('acts.define()'));
  const first = await tab.evaluate(look, way);
  const later = await taken(tab, () => tab.evaluate('acts.idle()'));
  const { heights } = await tab.evaluate(look, way);
  const removed = await taken(tab, () => tab.evaluate('acts.remove()'));
  await tab.close();
  const moved = heights.filter((height, place) => height !== first.heights[place]).length;
  return { ...painted, later: later.all, removal: removed.all, ...first, moved };
}

/** From the definition of the elements to the paint with their drawings, and the removal of all, beside plain Lit. */
export async function measure(browser, url) {
  for (const count of counts) {
    console.log(
      `\n${count === 1 ? 'one board' : `${count} boards`}, from definition to paint, ms of the main thread at ${slowdown}×, middle of ${loads}`,
    );
    const of = await middle(ways, (way) => load(browser, url, way, count));
    for (const way of ways) {
      const { all, style, layout, later, removal } = of(way);
      row(way, { all, style, layout, later, removal });
    }
    const [plain, ours] = ways.map(of);
    const { ms, ratio } = limits[count];
    console.log(`  first paint: ${said(ours.all, ms)}`);
    const beside = ours.all / plain.all;
    console.log(`  beside plain Lit: ${ratio === undefined ? beside.toFixed(2) : said(beside, ratio)}`);
    console.log(`  removal beside plain Lit: ${(ours.removal / plain.removal).toFixed(2)}`);
    console.log(
      `  in the window but not drawn in the first frame: ${said(ours.seen - ours.drawn, 0)} of ${ours.seen}`,
    );
    console.log(`  whose size changes later: ${said(ours.moved, 0)}`);
  }
}
