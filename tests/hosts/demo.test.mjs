// The pages of the demo's own folder; those of its topics are tried in a process beside this one.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pagesIn, read, tryPages } from './demo.mjs';

const pages = pagesIn('.');
tryPages(pages);

test('the harbour leads to every page, and every page back to it', () => {
  for (const page of pages.filter((each) => each !== 'index.html')) {
    assert.match(read('index.html'), new RegExp(`href="${page}"`));
    assert.match(read(page), /href="index.html"/);
  }
});
