// Every page that the README has for pasting works as it stands, beside the files it names.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { host } from './visit.mjs';

const snippets = [...readFileSync('README.md', 'utf8').matchAll(/```html\n(.*?)```/gs)].map(
  ([, html]) => html,
);
/** A snippet that is no whole page stands in one, after those before it: it may read their boards. */
const whole = (at) =>
  snippets[at].startsWith('<!doctype')
    ? snippets[at]
    : `${snippets.find((each) => each.startsWith('<!doctype'))}\n${snippets[at]}`;
const site = host({
  pages: Object.fromEntries(
    snippets.map((_, at) => [
      `/dist/${at}.html`,
      `<link rel="icon" href="data:,">${whole(at)}`.replace(/^(<link.*?>)(<!doctype html>)/, '$2$1'),
    ]),
  ),
});

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
    await visit.settled();
    assert.ok((await visit.shown()).length > 0);
    assert.deepEqual(await visit.problems(), []);
    assert.deepEqual(visit.said, []);
  });
