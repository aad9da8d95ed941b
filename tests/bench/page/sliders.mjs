import { hold } from './hold.mjs';
import { middle, row, said, slowdown, taken } from './main-thread.mjs';
import { board, page, viewport } from './pages.mjs';

const count = 200;
const loads = 5;
const ways = {
  'md-slider': { attributes: { min: '4', max: '40', step: '0.1', value: '12' }, content: '' },
  'rheolet-resistor': { attributes: { of: 'R1' }, content: board('rheolet-board') },
};

/** The pages that sliders are mounted in, by path. */
export const pages = Object.fromEntries(
  Object.entries(ways).map(([way, { content }]) => [`/mount/${way}`, page(way, content, `(${hold})()`)]),
);

async function mount(browser, url, way) {
  const tab = await browser.newPage();
  await tab.setViewport(viewport(count));
  await tab.goto(`${url}/mount/${way}`, { waitUntil: 'networkidle0' });
  await tab.evaluate('acts.define().then(acts.idle)');
  await tab.emulateCPUThrottling(slowdown);
  const act = `acts.mount('${way}', ${JSON.stringify(ways[way].attributes)}, ${count})`;
  const mounted = await taken(tab, () => tab.evaluate(act));
  const removed = await taken(tab, () => tab.evaluate('acts.remove()'));
  await tab.close();
  return { ...mounted, removal: removed.all };
}

/** Sliders put into a page whose elements are defined, to their paint, beside those of an element library. */
export async function measure(browser, url) {
  console.log(
    `\n${count} sliders, from mounting to paint, ms of the main thread at ${slowdown}×, middle of ${loads}`,
  );
  const of = await middle(Object.keys(ways), loads, (way) => mount(browser, url, way));
  for (const way of Object.keys(ways)) row(way, of(way));
  const [theirs, ours] = Object.keys(ways).map(of);
  console.log(`  beside the element library: ${said(ours.all / theirs.all, 1.5)}`);
  console.log(`  removal beside the element library: ${(ours.removal / theirs.removal).toFixed(2)}`);
}
