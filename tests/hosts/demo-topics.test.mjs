// The pages of the demo's topics.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { pagesIn, read, tryPages } from './demo.mjs';

const topics = pagesIn('topics').map((file) => `topics/${file}`);
tryPages(topics);

test('the topics are reached from the harbour, each from their index, and each has a worked solution', () => {
  assert.match(read('index.html'), /href="topics\/index.html"/);
  assert.match(read('topics/index.html'), /href="\.\.\/index.html"/);
  for (const page of topics.filter((each) => !each.endsWith('index.html'))) {
    assert.match(read('topics/index.html'), new RegExp(`href="${page.replace('topics/', '')}"`));
    assert.match(read(page), /href="index.html"/);
    assert.match(read(page), /<rheolet-steps/);
    assert.doesNotMatch(read(page), /<script(?! src="\.\.\/\.\.\/dist\/rheolet.min.js" defer>)|style=/);
  }
});
