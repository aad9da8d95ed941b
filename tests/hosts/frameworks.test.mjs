// Programs that write pages: nodes made anew, kept, cloned, moved and thrown away, with and without keys.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kept, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const quay = { name: 'quay', circuit: 'B1 6 V + A1 + (R1 [4..40] 12 Ω ∥ L1 8 Ω)' }; // 1.25 A
const pump = { name: 'pump', circuit: 'B1 6 V + A1 + R1 [4..40] 12 Ω' }; // 0.5 A
const fog = { name: 'fog', circuit: 'B1 12 V + A1 + R1 [4..40] 4 Ω' }; // 3 A

const site = host({
  pages: Object.fromEntries(
    ['rheolet.js', 'rheolet-lazy.js'].map((file) => [
      `/${file}`,
      kept('frameworks', { scripts: scripts(file) }),
    ]),
  ),
});

/** What the ammeters of the page read, in order, once they read what is expected or after two seconds. */
async function read(visit, ...expected) {
  const meters = `[...document.querySelectorAll('rheolet-meter')].map(({ shadowRoot }) => /[\\d.]+(?=\\s*A)/.exec(shadowRoot?.querySelector('[part=reading]')?.textContent ?? '')?.[0])`;
  await visit.tab
    .waitForFunction(`String(${meters}) === ${JSON.stringify(String(expected))}`, {
      timeout: 3000,
      polling: 20,
    })
    .catch(() => undefined);
  assert.deepEqual(await visit.tab.evaluate(meters), expected);
  await visit.settled();
  assert.deepEqual(await visit.problems(), []);
  assert.deepEqual(visit.said, []);
}
const write = ({ tab }, ...all) => tab.evaluate((lessons) => globalThis.write(...lessons), all);

/** Writes lessons as HTML, in attributes. */
const writeHTML = ({ tab }, ...all) =>
  tab.evaluate((lessons) => {
    globalThis.main.innerHTML = lessons
      .map(
        ({ name, circuit }) =>
          `<rheolet-board id="${name}" circuit="${circuit}">A lamp beside a control.</rheolet-board>` +
          `<rheolet-resistor board="${name}" of="R1"></rheolet-resistor><rheolet-meter board="${name}" of="A1"></rheolet-meter>`,
      )
      .join('');
  }, all);

async function opened(file = 'rheolet.js', ...all) {
  const visit = await site.open(`/${file}`);
  await visit.until('globalThis.write');
  await write(visit, ...all);
  return visit;
}

for (const file of ['rheolet.js', 'rheolet-lazy.js'])
  test(`a lesson that a virtual DOM writes, writes over and takes away (${file})`, async () => {
    const visit = await opened(file, quay);
    await read(visit, '1.25');
    await write(visit, pump); // the same nodes, other attributes
    await read(visit, '0.500');
    await write(visit);
    await read(visit);
    await write(visit, quay, pump);
    await read(visit, '1.25', '0.500');
  });

test('lessons with keys change places and keep what a pupil has set', async () => {
  const keyed = [quay, pump, fog].map((each) => ({ ...each, key: each.name }));
  const visit = await opened('rheolet.js', ...keyed);
  await read(visit, '1.25', '0.500', '3.00');
  await visit.tab.evaluate(() => document.querySelector('#pump').set('R1', 24));
  await read(visit, '1.25', '0.250', '3.00');
  await write(visit, ...keyed.toReversed());
  await read(visit, '3.00', '0.250', '1.25');
  await write(visit, keyed[1]);
  await read(visit, '0.250');
});

test('lessons without keys: nodes are used again for others, and show those', async () => {
  const visit = await opened('rheolet.js', quay, pump, fog);
  await read(visit, '1.25', '0.500', '3.00');
  await write(visit, fog, quay);
  await read(visit, '3.00', '1.25');
  await write(visit, pump, fog, quay);
  await read(visit, '0.500', '3.00', '1.25');
});

test('a page written again from its own HTML shows the same', async () => {
  const visit = await opened('rheolet.js');
  await writeHTML(visit, quay, pump);
  await read(visit, '1.25', '0.500');
  for (let time = 0; time < 3; time += 1) {
    await visit.tab.evaluate(() => (globalThis.main.innerHTML = String(globalThis.main.innerHTML)));
    await read(visit, '1.25', '0.500');
  }
});

test('a clone of a living lesson lives by itself', async () => {
  const visit = await opened('rheolet.js');
  await writeHTML(visit, quay);
  await read(visit, '1.25');
  await visit.tab.evaluate(() => {
    const copy = globalThis.main.cloneNode(true);
    copy.querySelector('rheolet-board').id = 'copy';
    for (const reader of copy.querySelectorAll('[board]')) reader.setAttribute('board', 'copy');
    globalThis.body.append(copy);
  });
  await read(visit, '1.25', '1.25');
  await visit.tab.evaluate(() => document.querySelector('#copy').set('R1', 40));
  await read(visit, '1.25', '0.900');
});

test('a lesson that goes to another document and comes back goes on', async () => {
  const visit = await opened('rheolet.js', quay);
  await read(visit, '1.25');
  await visit.tab.evaluate(async () => {
    const frame = document.createElement('iframe');
    globalThis.body.append(frame);
    frame.contentDocument.body.append(globalThis.main);
    await new Promise((done) => setTimeout(done, 200));
    document.querySelector('iframe').replaceWith(globalThis.main);
  });
  await visit.tab.evaluate(() => document.querySelector('#quay').set('R1', 40));
  await read(visit, '0.900');
});

test('a board and its readers that come and go in any moment leave the page well', async () => {
  const visit = await opened('rheolet.js', quay);
  for (let time = 0; time < 20; time += 1) {
    await write(visit, ...(time % 2 ? [pump, quay] : [fog]));
    if (time % 3 === 0) await visit.tab.evaluate(() => new Promise(requestAnimationFrame));
  }
  await read(visit, '0.500', '1.25');
});
