// Every page that the README has for pasting works as it stands, beside the files it names.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { host } from './visit.mjs';

const snippets = [...readFileSync('README.md', 'utf8').matchAll(/```html\n(.*?)```/gs)].map(
  ([, html]) => html,
);
/** A snippet that is no whole page stands in one. */
const whole = (snippet) =>
  snippet.startsWith('<!doctype') ? snippet : `<!doctype html><title>Quay</title>${snippet}`;
const withIcon = (html) => html.replace('<!doctype html>', '$&<link rel="icon" href="data:,">');
const pages = Object.fromEntries(
  snippets.map((snippet, at) => [`/dist/${at}.html`, withIcon(whole(snippet))]),
);
const site = host({ pages });

test('the README has a page to paste', () =>
  assert.ok(snippets.some((each) => each.startsWith('<!doctype html>'))));

for (const [at, snippet] of snippets.entries())
  test(`snippet ${at + 1}: every element is defined and has something to show, and the console is quiet`, async (t) => {
    t.diagnostic(
      snippet
        .split('\n')
        .find((line) => line.includes('<rheolet') || line.includes('<pre'))
        ?.trim() ?? '',
    );
    const visit = await site.open(`/dist/${at}.html`);
    await visit.tab.evaluate(() => void dispatchEvent(new Event('beforeprint'))); // those below the window come as well
    await visit.until("document.querySelector('rheolet-board')"); // text has come to life
    await visit.settled();
    assert.ok((await visit.shown()).length > 0);
    assert.deepEqual(await visit.problems(), []);
    assert.deepEqual(visit.said, []);
  });
