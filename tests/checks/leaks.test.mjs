// Elements that come and go leave no node and no listener behind, a thousand of each kind alone, and all beside each other.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { setTimeout as wait } from 'node:timers/promises';
import { launch } from '../run/browser.mjs';
import { serve } from '../run/server.mjs';

const { modules } = JSON.parse(readFileSync('dist/custom-elements.json', 'utf8'));
const tags = modules.flatMap(({ declarations }) => declarations.map(({ tagName }) => tagName));
const line = 'B1 6 V + S1 closed + A1 + (R1 [4..40] 12 Ω ∥ L1 8 Ω ∥ LDR1 8 kΩ)';
const page = `<!doctype html><html lang="en"><title>Quay</title><script type="module" src="/dist/rheolet.js"></script>
<body><rheolet-board id="quay" circuit="${line}"></rheolet-board><main></main></body></html>`;

let server;
let browser;
before(async () => {
  server = await serve({ pages: { '/leaks': page } });
  browser = await launch();
});
after(async () => {
  await browser?.close();
  server?.close();
});

/** In the page: adds some groups of elements, lets them be drawn and turned, and removes them, again and again. */
async function comeAndGo({ tags, line, times, at }) {
  const main = document.querySelector('main');
  const frame = () => new Promise((done) => requestAnimationFrame(done));
  for (let done = 0; done < times; done += at) {
    for (let each = 0; each < at; each += 1)
      for (const tag of tags) {
        const element = document.createElement(tag);
        const circuit = tag === 'rheolet-board' ? { id: `own${each}`, circuit: line } : {};
        const board = tags.includes('rheolet-board') ? `own${each}` : 'quay';
        const of =
          {
            'rheolet-resistor': 'R1',
            'rheolet-switch': 'S1',
            'rheolet-supply': 'B1',
            'rheolet-surroundings': 'light',
          }[tag] ?? 'I_A1';
        for (const [name, value] of Object.entries({ board, of, ...circuit }))
          element.setAttribute(name, value);
        main.append(element);
      }
    for (const board of document.querySelectorAll('rheolet-board')) {
      await board.ready;
      board.set('R1', (done % 30) + 5);
    }
    await frame();
    await frame();
    main.replaceChildren();
    await frame();
  }
}

/** Nodes and listeners that live in a tab, once what nobody holds is collected. */
async function living(protocol) {
  for (let times = 0; times < 6; times += 1) {
    await protocol.send('HeapProfiler.collectGarbage');
    await wait(100);
  }
  const { nodes, jsEventListeners } = await protocol.send('Memory.getDOMCounters');
  return { nodes, jsEventListeners };
}

/** What comes and goes together, and how many times. */
const cases = [
  ...tags.map((tag) => [`a thousand of ${tag}`, [tag], 1000]),
  ['a board with all that is linked to it, a hundred times,', tags, 100],
];
for (const [name, wanted, times] of cases)
  test(`${name} come and go`, async (t) => {
    const tab = await browser.newPage();
    await tab.goto(`${server.url}/leaks`, { waitUntil: 'networkidle0' });
    const protocol = await tab.createCDPSession();
    const act = (times) => tab.evaluate(comeAndGo, { tags: wanted, line, times, at: Math.min(times, 50) });
    await act(100); // what a page makes once, it keeps
    await act(1); // and the last ones that came, for a moment
    const earlier = await living(protocol);
    await act(times);
    await act(1);
    const later = await living(protocol);
    await tab.close();
    const left = Object.entries(later).map(([what, count]) => [what, count - earlier[what]]);
    t.diagnostic(left.map(([what, count]) => `${count} ${what}`).join(', '));
    // One left by each would be all of those times.
    for (const [what, count] of left) assert.ok(Math.abs(count) < 50, `${count} ${what} left`);
  });
