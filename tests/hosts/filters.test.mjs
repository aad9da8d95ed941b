// What filters of hosts leave of a lesson: what is left reads as text, and the loader brings to life what it can.
import assert from 'node:assert/strict';
import { readFileSync } from 'node:fs';
import { test } from 'node:test';
import { rehype } from 'rehype';
import rehypeSanitize from 'rehype-sanitize';
import sanitizeHtml from 'sanitize-html';
import { kept, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const lesson = readFileSync('tests/hosts/pages/filtered.html', 'utf8');
const pages = { '/bare': '<title>Filter</title><link rel="icon" href="data:,">' };
const site = host({ pages });

/** DOMPurify runs in a page. */
const purify = (options) => async (html) => {
  const { tab } = await site.open('/bare');
  await tab.addScriptTag({ path: 'node_modules/dompurify/dist/purify.js' });
  const clean = await tab.evaluate(
    (dirty, given) =>
      globalThis.DOMPurify.sanitize(
        dirty,
        given && { CUSTOM_ELEMENT_HANDLING: { tagNameCheck: /^rheolet-/, attributeNameCheck: /^/ } },
      ),
    html,
    options,
  );
  return clean;
};

const text = ['p', 'pre', 'code', 'div', 'a', 'span', 'b', 'i', 'br', 'ul', 'ol', 'li'];
/** An allow-list of a filter that does not run in Node, as its documentation has it. */
const modelled = (attributes, disallowedTagsMode) => (html) =>
  sanitizeHtml(html, {
    allowedTags: text,
    allowedAttributes: { a: ['href'], ...attributes },
    disallowedTagsMode,
  });
const classes = { pre: ['class', 'id'], code: ['class'], div: ['class', 'id', 'data-*'] };

// What is left of: an element's tag, and how many boards there are, as elements and as text.
const filters = [
  ['DOMPurify', purify(false), { boards: 2, tag: false }],
  ['DOMPurify, told of the elements', purify(true), { boards: 3, tag: true }],
  ['sanitize-html', (html) => sanitizeHtml(html), { boards: 0, tag: false }],
  [
    'sanitize-html, told of classes',
    (html) => sanitizeHtml(html, { allowedClasses: { code: ['language-*'], pre: ['rheolet-*'] } }),
    { boards: 2, tag: false },
  ],
  [
    'rehype-sanitize',
    (html) => String(rehype().data('settings', { fragment: true }).use(rehypeSanitize).processSync(html)),
    { boards: 1, tag: false },
  ],
  ['an allow-list of a blog, for authors', modelled(classes, 'discard'), { boards: 2, tag: false }],
  [
    'an allow-list of a wiki, which shows other tags as text',
    modelled(classes, 'escape'),
    { boards: 2, tag: false },
  ],
  [
    'an allow-list without attributes, which shows other tags as text',
    modelled({}, 'escape'),
    { boards: 0, tag: false },
  ],
];

for (const [name, filter, left] of filters)
  test(`${name}: ${left.boards} boards come to life, and all of it reads`, async () => {
    const html = await filter(lesson);
    assert.equal(/<rheolet-board/.test(html), left.tag);
    assert.ok(!/<(script|iframe)/.test(html));
    assert.ok(/<a [^>]*href="https:\/\/example.org\/quay#s=R1.20"/.test(html), 'the link stays');

    pages['/plain'] = kept('lesson', { content: html });
    const plain = await site.open('/plain');
    const read = await plain.tab.evaluate(() => document.body.innerText);
    for (const words of [
      'A lamp beside a control.',
      'B1 6 V + R1 12 Ω',
      'B1 9 V + (R2 6 Ω ∥ R3 3 Ω)',
      'The pier.',
    ])
      assert.ok(read.includes(words), words);

    pages['/live'] = kept('lesson', { content: html, scripts: scripts('rheolet-lazy.js') });
    const live = await site.open('/live');
    await live.until(`document.querySelectorAll('rheolet-board:defined').length === ${left.boards}`);
    if (left.boards === 0) await live.tab.waitForNetworkIdle({ idleTime: 300 });
    await live.settled();
    assert.equal((await live.shown()).filter((each) => each.startsWith('board: ')).length, left.boards);
    assert.deepEqual(await live.problems(), []);
    assert.deepEqual(live.said, []);
  });

test('a filter that is told of the elements keeps the name of a reader’s board', async () => {
  const reader = '<rheolet-meter board="quay" of="I_R1">The current.</rheolet-meter>';
  assert.equal(await purify(true)(reader), reader);
});
