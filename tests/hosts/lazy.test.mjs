// The lazy loader: what it fetches and when, what it brings to life, and that nothing goes wrong where files do not come.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kept } from './lesson.mjs';
import { host } from './visit.mjs';

const loader = '<script type="module" src="/dist/rheolet-lazy.js"></script>';
const line = 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ L1 8 Ω)';
const board = `<rheolet-board id="quay" circuit="${line}">A lamp beside a control.</rheolet-board>`;
const meter = '<rheolet-meter board="quay" of="A1"></rheolet-meter>';
const far = '<div class="far"></div>';
const page = (...content) =>
  `<!doctype html><html lang="en"><meta charset="utf-8"><title>Quay</title><link rel="icon" href="data:,"><style>.far { block-size: 4000px }</style>${loader}${content.join('\n')}</html>`;

const pages = {
  '/board': page(board),
  '/none': page('<p>No circuit here.</p>'),
  '/far-board': page(far, board),
  '/far-meter': page(board, far, meter),
  '/near-meter': page(meter, far, board),
  '/near-meter-far-text': page(meter, far, `<pre class="rheolet-board" id="quay">${line}</pre>`),
  '/twice': page(board, meter, loader.replace('.js', '.js?again')),
  '/with-all': page(board, meter, '<script src="/dist/rheolet.min.js"></script>'),
  '/unknown': page('<rheolet-lighthouse>A lamp.</rheolet-lighthouse>', '<rheolet-rheolet></rheolet-rheolet>'),
  '/texts': kept('texts'),
  '/elsewhere': page(board, meter).replace('/dist/', '/nowhere/'),
  '/shadow': kept('shadow-roots'),
};
const site = host({ pages });

/** Nothing more is on its way. */
const idle = ({ tab }) => tab.waitForNetworkIdle({ idleTime: 300 });

test('a page with a board fetches the board, what it is made of, and no more', async () => {
  const visit = await site.open('/board');
  await visit.settled();
  await idle(visit);
  assert.ok(visit.fetched.includes('board.js'));
  for (const name of ['meter', 'rules', 'value']) assert.ok(!visit.fetched.includes(`${name}.js`), name);
  assert.deepEqual(visit.said, []);
});

test('a page without a circuit fetches the loader alone', async () => {
  const visit = await site.open('/none');
  await idle(visit);
  assert.deepEqual(visit.fetched, ['rheolet-lazy.js']);
});

test('a board below the window is fetched once it comes near', async () => {
  const visit = await site.open('/far-board');
  await idle(visit);
  assert.deepEqual(visit.fetched, ['rheolet-lazy.js']);
  await visit.tab.evaluate(() => scrollTo(0, 3300)); // 100 px below the window
  await visit.settled();
  assert.match((await visit.shown())[0], /A1/);
  assert.deepEqual(visit.said, []);
});

test('a meter below the window is fetched by itself once it comes near', async () => {
  const visit = await site.open('/far-meter');
  await visit.until("document.querySelector('rheolet-board').matches(':defined')");
  await idle(visit);
  assert.ok(!visit.fetched.includes('meter.js'));
  await visit.tab.evaluate(() => scrollTo(0, document.body.scrollHeight));
  await visit.settled();
  assert.ok(visit.fetched.includes('meter.js'));
});

for (const [path, how] of [
  ['/near-meter', 'an element'],
  ['/near-meter-far-text', 'text'],
])
  test(`a meter in the window reads a board that is far below it, written as ${how}`, async () => {
    const visit = await site.open(path);
    await visit.settled();
    await visit.until("document.querySelector('rheolet-meter').shadowRoot.textContent.includes('1.25')");
    assert.deepEqual(visit.said, []);
  });

test('elements that a page adds, moves in or unhides later are fetched', async () => {
  const visit = await site.open('/board');
  await visit.settled();
  const add = (tag, where) =>
    visit.tab.evaluate(
      (name, place) => {
        const element = Object.assign(document.createElement(name), { id: 'late' });
        element.setAttribute('board', 'quay');
        element.setAttribute('of', name === 'rheolet-value' ? 'I_A1' : 'A1');
        const section = document.createElement('section');
        section.hidden = place === 'hidden';
        section.append(element);
        if (place === 'top') document.body.prepend(section);
        else document.body.append(section);
      },
      tag,
      where,
    );
  await add('rheolet-meter', 'top');
  await visit.settled();
  await add('rheolet-value', 'hidden');
  await idle(visit);
  assert.ok(!visit.fetched.includes('value.js'));
  await visit.tab.evaluate(() => (document.querySelector('section[hidden]').hidden = false));
  await visit.settled();
  assert.deepEqual(
    await visit.tab.$$eval('#late', (all) =>
      all.map(({ shadowRoot }) => shadowRoot.textContent.includes('1.25')),
    ),
    [true, true],
  );
  assert.deepEqual(visit.said, []);
});

test('before the page is printed everything on it is fetched', async () => {
  const visit = await site.open('/far-meter');
  await visit.tab.evaluate(() => void dispatchEvent(new Event('beforeprint')));
  await visit.settled();
  assert.deepEqual(visit.said, []);
});

test('the loader twice, and beside the classic script: quiet, and everything is defined once', async () => {
  for (const path of ['/twice', '/with-all']) {
    const visit = await site.open(path);
    await visit.settled();
    await idle(visit);
    assert.deepEqual(visit.said, [], path);
    assert.deepEqual(await visit.problems(), [], path);
  }
});

test('a tag of the same beginning that the package has not is left alone', async () => {
  const visit = await site.open('/unknown');
  await idle(visit);
  assert.deepEqual(visit.fetched, ['rheolet-lazy.js']);
  assert.deepEqual(visit.said, []);
});

test('boards written as text come to life, in place, with their names', async () => {
  const visit = await site.open('/texts');
  await visit.settled();
  await visit.until("document.querySelectorAll('pre').length === 1");
  const boards = await visit.tab.$$eval('rheolet-board', (all) =>
    all.map(({ id, circuit, nextElementSibling }) => [
      id,
      circuit?.components.length,
      nextElementSibling?.localName,
    ]),
  );
  assert.deepEqual(boards, [
    ['class', 2, 'rheolet-board'],
    ['language', 2, 'p'],
    ['coloured', 2, 'p'],
    ['lines', 2, 'p'],
  ]);
  assert.match(await visit.tab.$eval('rheolet-value', (value) => value.shadowRoot.textContent), /0\.500\s*A/);
  assert.equal(await visit.tab.$eval('pre', ({ id }) => id), 'other', 'other code stays code');
  assert.deepEqual(await visit.problems(), []);
  assert.deepEqual(visit.said, []);
});

test('text that stands where a page is being edited stays text', async () => {
  const visit = await site.open('/texts');
  await visit.settled();
  await visit.tab.evaluate(() => {
    const editor = document.createElement('div');
    editor.contentEditable = 'true';
    const text = Object.assign(document.createElement('pre'), {
      className: 'rheolet-board',
      textContent: 'B1 6 V + R1 12 Ω',
    });
    editor.append(text);
    document.body.prepend(editor);
  });
  await idle(visit);
  assert.equal(
    await visit.tab.$eval('[contenteditable]', ({ innerHTML }) => innerHTML),
    '<pre class="rheolet-board">B1 6 V + R1 12 Ω</pre>',
  );
});

test('a shadow root that the loader is told of is a page to it; others, and closed ones, are left alone', async () => {
  const visit = await site.open('/shadow');
  await visit.until(
    "told.shadowRoot.querySelector('rheolet-meter').shadowRoot?.textContent.includes('0.500')",
  );
  await idle(visit);
  const defined = await visit.tab.evaluate(() =>
    [...document.querySelectorAll('[id]')].map(({ id, shadowRoot }) => [
      id,
      shadowRoot?.querySelectorAll('pre, :not(:defined)').length,
    ]),
  );
  assert.deepEqual(defined, [
    ['told', 0],
    ['untold', 2],
    ['closed', null],
  ]);
  assert.deepEqual(visit.said, []);
});

for (const [what, answer] of [
  ['are blocked', (request) => request.abort('blockedbyclient')],
  ['are missing', (request) => request.respond({ status: 404, body: 'Not found' })],
  ['are no scripts', (request) => request.respond({ contentType: 'text/html', body: '<p>Sign in</p>' })],
  [
    'throw',
    (request) => request.respond({ contentType: 'text/javascript', body: 'throw new Error("harbour")' }),
  ],
])
  test(`files that ${what}: the text stays, with one line in the console`, async () => {
    const visit = await site.open('/far-meter', async (tab) => {
      await tab.setRequestInterception(true);
      tab.on('request', (request) =>
        /dist\/(?!rheolet-lazy)/.test(request.url()) ? answer(request) : request.continue(),
      );
    });
    await visit.tab.evaluate(() => scrollTo(0, document.body.scrollHeight));
    await idle(visit);
    const own = visit.said.filter((each) => each.includes('Rheolet'));
    assert.equal(own.length, 1, visit.said.join('\n'));
    assert.match(own[0], /^warn.*Rheolet: \w+\.js did not load\./);
    assert.ok(!visit.said.some((each) => /uncaught|unhandled/i.test(each)), visit.said.join('\n'));
    assert.equal(
      await visit.tab.$eval('rheolet-board', (each) => each.innerText),
      'A lamp beside a control.',
    );
  });

test('imported in Node, it does nothing and gives its one function, which may be handed nothing', async () => {
  const { watch, ...others } = await import('../../dist/rheolet-lazy.js');
  assert.equal(watch(null), undefined);
  assert.equal(watch(undefined), undefined);
  assert.deepEqual(others, {});
});
