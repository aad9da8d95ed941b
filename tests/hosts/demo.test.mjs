// Every page of the demo, on a phone in the dark and on a wide screen in the light: nothing wrong, nothing cut off, nothing barred.
import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { host } from './visit.mjs';

const pages = readdirSync('demo').filter((file) => file.endsWith('.html'));
const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');
const site = host();

/** The gallery shows what a mistake looks like. */
const meant = /^The circuit cannot be read at line 1, column 13: “1,000”/;

const screens = [
  { width: 320, scheme: 'dark' },
  { width: 1600, scheme: 'light' },
];

for (const page of pages)
  for (const { width, scheme } of screens)
    test(`${page} at ${width} px, ${scheme}: works, fits, and is open to everybody`, async (t) => {
      const visit = await site.open(`/demo/${page}`, async (tab) => {
        await tab.setViewport({ width, height: 900 });
        await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
      });
      await visit.settled();
      const problems = await visit.problems();
      assert.deepEqual(
        problems.filter((problem) => !meant.test(problem)),
        [],
      );
      assert.deepEqual(visit.said, []);
      const broad = await visit.tab.evaluate(() => document.documentElement.scrollWidth);
      assert.ok(broad <= width, `${broad} px broad`);
      await visit.tab.evaluate(axe);
      const { violations, passes } = await visit.tab.evaluate(() => globalThis.axe.run());
      t.diagnostic(`${passes.length} rules of axe pass`);
      assert.deepEqual(
        violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`),
        [],
      );
    });

test('the harbour leads to every page, and every page back to it', () => {
  const read = (page) => readFileSync(`demo/${page}`, 'utf8');
  for (const page of pages.filter((each) => each !== 'index.html')) {
    assert.match(read('index.html'), new RegExp(`href="${page}"`));
    assert.match(read(page), /href="index.html"/);
  }
});
