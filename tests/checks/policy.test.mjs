// A page under the strict content policy: a quiet console, no violation, and nothing fetched but the scripts.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { after, before, test } from 'node:test';
import { launch } from '../run/browser.mjs';
import { serve } from '../run/server.mjs';

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "require-trusted-types-for 'script'",
  'trusted-types lit-html',
].join('; ');

const snippet = readFileSync('tests/checks/snippet.html', 'utf8');
const page = (scripts) =>
  `<!doctype html><html lang="en"><title>Quay</title>${scripts}<body>${snippet}</body></html>`;
const modules = ['board', 'resistor', 'value', 'meter', 'rules'];
const pages = {
  '/classic': page('<script src="/dist/rheolet.min.js" defer></script>'),
  '/modules': page(modules.map((name) => `<script type="module" src="/dist/${name}.js"></script>`).join('')),
  '/twice': page(
    ['rheolet.min.js', 'rheolet.min.js?again', 'rheolet.js', 'board.js?again']
      .map(
        (file) =>
          `<script type="${file.includes('min') ? 'text/javascript' : 'module'}" src="/dist/${file}"></script>`,
      )
      .join(''),
  ),
};

let server;
let browser;
before(async () => {
  server = await serve({ pages, headers: { 'content-security-policy': policy } });
  browser = await launch();
});
after(async () => {
  await browser?.close();
  server?.close();
});

/** Opens a page, moves its slider, and tells what it said and what it asked for. */
async function visit(path) {
  const tab = await browser.newPage();
  const said = [];
  const asked = [];
  tab.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  tab.on('pageerror', (error) => said.push(String(error)));
  tab.on('request', (request) => asked.push(new URL(request.url()).pathname));
  await tab.evaluateOnNewDocument(() => {
    document.addEventListener('securitypolicyviolation', (event) => {
      console.error(`violation: ${event.violatedDirective} ${event.blockedURI}`);
    });
  });
  await tab.goto(`${server.url}${path}`, { waitUntil: 'networkidle0' });
  const drawn = await tab.$$eval(
    'rheolet-board, rheolet-resistor, rheolet-value, rheolet-meter, rheolet-rules',
    (all) => all.map((element) => element.shadowRoot?.childElementCount ?? 0),
  );
  await tab.focus('rheolet-resistor').catch(() => undefined);
  for (const key of ['Tab', 'ArrowRight', 'ArrowRight', 'End', 'Tab', 'Tab', 'Enter'])
    await tab.keyboard.press(key);
  const fetched = asked.filter((url) => url !== '/favicon.ico');
  const pictures = await tab.$eval('rheolet-board', async (board) => {
    const png = await board.toPNG?.({ style: 'print' });
    return [png?.type, png?.size > 1000, (await board.toSVG?.())?.slice(0, 4)];
  });
  await tab.emulateMediaType('print');
  await new Promise((resolve) => setTimeout(resolve, 200));
  await tab.close();
  return { said, asked: fetched, drawn, pictures };
}

test('the classic script: quiet, and the only request; a board makes pictures', async () => {
  const { said, asked, drawn, pictures } = await visit('/classic');
  assert.deepEqual(said, []);
  assert.deepEqual(pictures, ['image/png', true, '<svg']);
  assert.deepEqual(asked, ['/classic', '/dist/rheolet.min.js']);
  assert.equal(drawn.length, 5);
  assert.ok(
    drawn.every((count) => count > 0),
    `every element has drawn something: ${drawn}`,
  );
});

test('the modules: quiet, and nothing but themselves and their chunk is fetched', async () => {
  const { said, asked, drawn } = await visit('/modules');
  assert.deepEqual(said, []);
  const scripts = [...modules.map((name) => `/dist/${name}.js`), '/dist/chunks/shared.js'];
  assert.deepEqual(asked.sort(), ['/modules', ...scripts].sort());
  assert.ok(
    drawn.every((count) => count > 0),
    `every element has drawn something: ${drawn}`,
  );
});

test('the classic script twice and the modules after it: the first wins, silently', async () => {
  const { said, drawn } = await visit('/twice');
  assert.deepEqual(said, []);
  assert.ok(
    drawn.every((count) => count > 0),
    `every element has drawn something: ${drawn}`,
  );
});
