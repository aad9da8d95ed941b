import assert from 'node:assert/strict';
import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { test } from 'node:test';
import { host } from './visit.mjs';

/** The names of the pages in a folder of the demo. */
export const pagesIn = (folder) => readdirSync(`demo/${folder}`).filter((file) => file.endsWith('.html'));

/** The text of a page of the demo. */
export const read = (page) => readFileSync(`demo/${page}`, 'utf8');

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core'), 'utf8');

/** The gallery shows what a mistake looks like. */
const meant = /^The circuit cannot be read at line 1, column 13: “1,000”/;

/** The rules of axe that hang on what a screen makes of the page; the others are tried on one screen. */
const ofTheScreen = ['color-contrast', 'link-in-text-block', 'scrollable-region-focusable', 'target-size'];
const phone = { width: 320, scheme: 'dark', only: {} };
const wideScreen = { width: 1600, scheme: 'light', only: { runOnly: ofTheScreen } };

async function show(tab, { width, scheme }) {
  await tab.setViewport({ width, height: 900 });
  await tab.emulateMediaFeatures([{ name: 'prefers-color-scheme', value: scheme }]);
}

/** Tries pages of the demo on a phone in the dark and on a wide screen in the light: nothing wrong, nothing cut off, nothing barred. */
export function tryPages(pages) {
  const site = host();
  for (const page of pages)
    test(`${page}: works, and on a phone in the dark and a wide screen in the light it fits and is open to everybody`, async (t) => {
      const visit = await site.open(`/demo/${page}`, (tab) => show(tab, phone));
      const { tab } = visit;
      await visit.settled();
      const problems = await visit.problems();
      assert.deepEqual(
        problems.filter((problem) => !meant.test(problem)),
        [],
      );
      const unsolved = await tab.evaluate(() =>
        [...document.querySelectorAll('rheolet-steps')].flatMap(
          ({ shadowRoot }) => shadowRoot.querySelector('[part=reason]')?.textContent ?? [],
        ),
      );
      assert.deepEqual(unsolved, []);
      await tab.evaluate(axe);
      for (const screen of [phone, wideScreen]) {
        await show(tab, screen);
        await visit.settled();
        const broad = await tab.evaluate(() => document.documentElement.scrollWidth);
        assert.ok(broad <= screen.width, `${broad} px broad of ${screen.width}`);
        const { violations, passes } = await tab.evaluate(
          (only) => globalThis.axe.run({ resultTypes: ['violations'], ...only }),
          screen.only,
        );
        t.diagnostic(`${passes.length} rules of axe pass at ${screen.width} px`);
        assert.deepEqual(
          violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html).join(' | ')}`),
          [],
        );
      }
      assert.deepEqual(visit.said, []);
    });
}
