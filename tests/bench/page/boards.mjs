import { hold } from './hold.mjs';
import { collectGarbage, middle, row, said, slowdown, taken } from './main-thread.mjs';
import { boards, differing, page, viewport } from './pages.mjs';

const ways = ['plain-board', 'rheolet-board'];
const asked = { ms: 150, ratio: 0.2, removal: 1 };
const pagesOf = {
  'one board': { count: 1, of: boards, loads: 5, limit: { ms: 45 } },
  '20 boards of one circuit': { count: 20, of: boards, loads: 3, limit: { ms: 115, ratio: 0.6 } },
  '200 boards of one circuit': { count: 200, of: boards, loads: 3, limit: asked },
  '200 boards, no two of a circuit': { count: 200, of: differing, loads: 3, limit: asked },
};
const path = (way, name) => `/load/${way}/${name.replaceAll(/\W+/g, '-')}`;

/** The pages that are loaded, by path. */
export const pages = Object.fromEntries(
  ways.flatMap((way) =>
    Object.entries(pagesOf).map(([name, { count, of }]) => [
      path(way, name),
      page(way, of(way, count), `(${hold})()`),
    ]),
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

async function load(browser, url, way, name) {
  const tab = await browser.newPage();
  await tab.setViewport(viewport(pagesOf[name].count));
  await tab.goto(url + path(way, name), { waitUntil: 'networkidle0' });
  await tab.emulateCPUThrottling(slowdown);
  await tab.evaluate('acts.painted()');
  const painted = await taken(tab, () => tab.evaluate('acts.define()'));
  const first = await tab.evaluate(look, way);
  const later = await taken(tab, () => tab.evaluate('acts.idle()'));
  const { heights } = await tab.evaluate(look, way);
  await collectGarbage(tab);
  const removed = await taken(tab, () => tab.evaluate('acts.remove()'));
  await tab.close();
  const moved = heights.filter((height, place) => height !== first.heights[place]).length;
  return { ...painted, later: later.all, removal: removed.all, ...first, moved };
}

/** From the definition of the elements to the paint with their drawings, and the removal of all, beside plain Lit. */
export async function measure(browser, url) {
  for (const [name, { loads, limit }] of Object.entries(pagesOf)) {
    console.log(
      `\n${name}, from definition to paint, ms of the main thread at ${slowdown}×, middle of ${loads}`,
    );
    const of = await middle(ways, loads, (way) => load(browser, url, way, name));
    for (const way of ways) {
      const { all, style, layout, later, removal } = of(way);
      row(way, { all, style, layout, later, removal });
    }
    const [plain, ours] = ways.map(of);
    const beside = (value, most) => (most === undefined ? value.toFixed(2) : said(value, most));
    console.log(`  first paint: ${said(ours.all, limit.ms)}`);
    console.log(`  beside plain Lit: ${beside(ours.all / plain.all, limit.ratio)}`);
    console.log(`  removal beside plain Lit: ${beside(ours.removal / plain.removal, limit.removal)}`);
    console.log(
      `  in the window but not drawn in the first frame: ${said(ours.seen - ours.drawn, 0)} of ${ours.seen}`,
    );
    console.log(`  whose size changes later: ${said(ours.moved, 0)}`);
  }
}
