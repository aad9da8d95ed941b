// Where a page may stand: in a sandbox, in an attribute, in a file, written from right to left, under the strict policy; and
// that it keeps nothing.
import assert from 'node:assert/strict';
import { copyFileSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { test } from 'node:test';
import { pathToFileURL } from 'node:url';
import { kept, lesson, names, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const classic = kept('lesson', { scripts: scripts('rheolet.min.js') });
/** One file that needs nothing else, as it is carried about. */
const carried = kept('lesson', {
  content: `${lesson}<script>${readFileSync('dist/rheolet.min.js', 'utf8')}</script>`,
});
const framed = (source) => kept('framed').replace('<!-- source -->', () => source);
const quoted = (html) => html.replaceAll('&', '&amp;').replaceAll('"', '&quot;');

const site = host({
  pages: {
    '/classic': classic,
    '/carried': carried,
    '/sandbox': framed('src="/classic"'),
    '/sandbox-carried': framed('src="/carried"'),
    '/srcdoc': framed(`srcdoc="${quoted(classic)}"`),
    '/srcdoc-carried': framed(`srcdoc="${quoted(carried)}"`),
    '/rtl': kept('right-to-left', { scripts: scripts('rheolet.js') }),
  },
});
const strict = host({
  pages: {
    '/classic': classic,
    '/modules': kept('lesson', { scripts: scripts('rheolet.js') }),
    '/lazy': kept('lesson', { scripts: scripts('rheolet-lazy.js') }),
  },
  headers: {
    'content-security-policy':
      "default-src 'none'; script-src 'self'; style-src 'self'; img-src data:; require-trusted-types-for 'script'; trusted-types lit-html",
  },
});

/** Turns the first slider of a page with the keyboard's End and waits for the ammeter: 40 Ω beside 8 Ω at 6 V takes 0.9 A. */
async function turn(visit, frame) {
  await frame.evaluate(() => {
    const slider = document.querySelector('rheolet-resistor').shadowRoot.querySelector('[part=slider]');
    slider.focus();
  });
  await visit.tab.keyboard.press('End');
  await frame.waitForFunction(
    () => document.querySelector('rheolet-meter').shadowRoot.textContent.includes('0.900'),
    { timeout: 5000, polling: 20 },
  );
}

for (const path of ['/sandbox', '/sandbox-carried', '/srcdoc', '/srcdoc-carried'])
  test(`in a frame that may only run scripts (${path.slice(1)}) everything works`, async () => {
    const visit = await site.open(path);
    const frame = visit.tab.frames()[1];
    await visit.isWell(frame);
    assert.equal(await frame.evaluate(() => self.origin), 'null');
    await turn(visit, frame);
    assert.deepEqual(visit.said, []);
  });

test('from files beside each other, and from one file, everything works', async () => {
  const folder = mkdtempSync('.tmp/stick-');
  try {
    copyFileSync('dist/rheolet.min.js', `${folder}/rheolet.min.js`);
    writeFileSync(`${folder}/beside.html`, classic.replace('/dist/', ''));
    writeFileSync(`${folder}/carried.html`, carried);
    for (const name of ['beside', 'carried']) {
      const visit = await site.open(pathToFileURL(`${folder}/${name}.html`).href);
      await visit.isWell();
      await turn(visit, visit.tab.mainFrame());
      assert.deepEqual(visit.said, []);
    }
  } finally {
    rmSync(folder, { recursive: true });
  }
});

for (const path of ['/classic', '/modules', '/lazy'])
  test(`under the strict policy (${path.slice(1)}) everything works and nothing is refused`, async () => {
    const visit = await strict.open(path, (tab) =>
      tab.evaluateOnNewDocument(() => {
        document.addEventListener('securitypolicyviolation', ({ violatedDirective, blockedURI }) => {
          console.error(`violation: ${violatedDirective} ${blockedURI}`);
        });
      }),
    );
    await visit.tab.evaluate(() => void dispatchEvent(new Event('beforeprint')));
    await visit.isWell();
    await turn(visit, visit.tab.mainFrame());
    assert.deepEqual(visit.said, []);
  });

test('in a page written from right to left the drawing and numbers are not mirrored, and nothing sticks out', async () => {
  const visit = await site.open('/rtl');
  await visit.tab.setViewport({ width: 320, height: 900 });
  await visit.isWell();
  const shown = await visit.tab.evaluate((all) => {
    const stage = document.querySelector('rheolet-board').shadowRoot.querySelector('.stage');
    const within = ({ left, right }) => left >= -1 && right <= innerWidth + 1;
    return {
      direction: getComputedStyle(stage).direction,
      page: getComputedStyle(document.querySelector('rheolet-board')).direction,
      wide: document.documentElement.scrollWidth > innerWidth,
      out: all.filter((name) => !within(document.querySelector(`rheolet-${name}`).getBoundingClientRect())),
    };
  }, names);
  assert.deepEqual(shown, { direction: 'ltr', page: 'rtl', wide: false, out: [] });
  await turn(visit, visit.tab.mainFrame());
});

test('nothing is stored, and no store is so much as looked at', async () => {
  const visit = await site.open('/classic', (tab) =>
    tab.evaluateOnNewDocument(() => {
      const watch = (owner, name) =>
        Object.defineProperty(owner, name, {
          get: () => console.error(`looked at ${name}`),
          set: () => console.error(`wrote ${name}`),
        });
      for (const name of ['localStorage', 'sessionStorage', 'indexedDB', 'caches', 'cookieStore', 'name'])
        watch(self, name);
      watch(Document.prototype, 'cookie');
      for (const name of ['storage', 'serviceWorker', 'sendBeacon']) watch(Navigator.prototype, name);
      for (const name of ['replaceState', 'pushState']) watch(History.prototype, name);
    }),
  );
  await visit.isWell();
  await turn(visit, visit.tab.mainFrame());
  await visit.tab.evaluate(() => {
    const board = document.querySelector('rheolet-board');
    for (const act of ['hold', 'release', 'undo', 'redo', 'reset']) board[act]();
    dispatchEvent(new Event('beforeprint'));
  });
  await visit.settled();
  assert.deepEqual(visit.said, []);
  assert.deepEqual(visit.fetched, ['rheolet.min.js']);
  await visit.tab.evaluate(() => void [localStorage, document.cookie, navigator.storage]);
  const seen = ['localStorage', 'cookie', 'storage'].map((name) => `error: looked at ${name}`);
  assert.deepEqual(visit.said, seen, 'the watch itself works');
});
