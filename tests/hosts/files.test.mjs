// Every file of the package on one page, in any order and twice; and two versions of it.
import assert from 'node:assert/strict';
import { cpSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { after, test } from 'node:test';
import { kept, names, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const files = readdirSync('dist', { recursive: true }).filter((file) => file.endsWith('.js'));

/** Numbers from 0 to 1 that look random and are the same in every run (Park and Miller 1988). */
function* chance(seed) {
  for (;;) yield (seed = (seed * 48271) % 2147483647) / 2147483647;
}

/** A list in another order (Fisher and Yates). */
function shuffled(list, random) {
  const out = [...list];
  for (let last = out.length - 1; last > 0; last -= 1) {
    const at = Math.floor(random.next().value * (last + 1));
    [out[last], out[at]] = [out[at], out[last]];
  }
  return out;
}

/** Another version of the package: a copy that says so. */
const folder = mkdtempSync('.tmp/other-version-');
after(() => rmSync(folder, { recursive: true }));
cpSync('dist', `${folder}/dist`, { recursive: true });
const { version } = JSON.parse(readFileSync('package.json', 'utf8'));
let changed = 0;
for (const file of files) {
  const text = readFileSync(`dist/${file}`, 'utf8');
  const other = text.replace(`"${version}"`, '"9.9.9"');
  if (other !== text) changed += 1;
  writeFileSync(`${folder}/dist/${file}`, other);
}
const otherScripts = (...list) => scripts(...list).replaceAll('src="', `src="/${folder}`);

const seeds = [1, 2, 3];
const pages = {
  ...Object.fromEntries(
    seeds.map((seed) => {
      const random = chance(seed);
      random.next();
      const list = shuffled([...files, ...files.map((file) => `${file}?again`)], random);
      return [`/all/${seed}`, kept('lesson', { scripts: scripts(...list) })];
    }),
  ),
  ...Object.fromEntries(
    ['rheolet.min.js', 'rheolet.js', 'rheolet-lazy.js'].flatMap((file) => [
      [`/${file}`, kept('lesson', { scripts: scripts(file) })],
      [`/older/${file}`, kept('lesson', { scripts: scripts(file) + otherScripts('rheolet.js') })],
      [`/newer/${file}`, kept('lesson', { scripts: otherScripts('rheolet.min.js') + scripts(file) })],
    ]),
  ),
  '/parts': kept('lesson', {
    scripts: scripts('rheolet.js'),
    content: `<rheolet-board id="curve" circuit="B1 6 V + R1 200 Ω + LED1 2 V 20 mA">An LED.</rheolet-board>
      <rheolet-board id="web" circuit="B1 6 V @a–@d; R1 1 Ω @a–@b; R2 2 Ω @a–@c; R3 3 Ω @b–@c; R4 4 Ω @b–@d; R5 5 Ω @c–@d">A bridge.</rheolet-board>`,
  }),
  '/each': kept('lesson', { scripts: scripts(...names.map((name) => `${name}.js`)) }),
};
const site = host({ pages });

for (const seed of seeds)
  test(`all ${files.length} files twice, in random order ${seed}: as if one had come`, async () => {
    const visit = await site.open(`/all/${seed}`);
    await visit.isWell();
  });

for (const path of ['/rheolet.min.js', '/rheolet.js', '/rheolet-lazy.js', '/each'])
  test(`${path.slice(1)} alone defines every element of the lesson`, async () => {
    const visit = await site.open(path);
    await visit.isWell();
  });

test('two versions on a page: the first wins, and one line in the console says so', async () => {
  assert.ok(changed >= 2, 'the copy says that it is another version');
  for (const [path, first, second] of [
    ['/older/rheolet.min.js', version, '9.9.9'],
    ['/newer/rheolet.min.js', '9.9.9', version],
    ['/newer/rheolet.js', '9.9.9', version],
    ['/newer/rheolet-lazy.js', '9.9.9', undefined],
  ]) {
    const visit = await site.open(path);
    await visit.settled();
    const lines = visit.said.splice(0);
    await visit.isWell();
    const versions = await visit.tab.evaluate(
      (all) => all.map((name) => customElements.get(`rheolet-${name}`).version),
      names,
    );
    assert.deepEqual([...new Set(versions)], [first], path);
    assert.equal(lines.length, second ? 1 : 0, lines.join('\n'));
    for (const said of lines) assert.ok(said.includes(first) && said.includes(second), said);
  }
});

test('parts of the engine that do not come: a board says what it cannot solve, and tables what it cannot draw', async () => {
  const parts = /chunks\/(nonlinear|web)\./;
  const visit = await site.open('/parts', async (tab) => {
    await tab.setRequestInterception(true);
    tab.on('request', (request) => (parts.test(request.url()) ? request.abort() : request.continue()));
  });
  await visit.settled();
  const [curve, web] = await visit.tab.evaluate(() =>
    ['curve', 'web'].map((id) => document.getElementById(id).shadowRoot.textContent),
  );
  assert.match(curve, /LED1 does not obey Ohm’s law/);
  assert.match(web, /What draws it did not load.*R5\s+4\.43\sV/);
  const own = visit.said.filter((each) => each.includes('Rheolet'));
  assert.equal(own.length, 2, visit.said.join('\n'));
  for (const line of own) assert.match(line, /^warn.*Rheolet: a part did not load\./);
});
