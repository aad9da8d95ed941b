// Style sheets that mean no good: the drawing keeps its proportions and its letters, and every control can be used.
import assert from 'node:assert/strict';
import { readdirSync } from 'node:fs';
import { test } from 'node:test';
import { kept, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const folder = 'tests/hosts/pages/sheets';
const sheets = readdirSync(folder).map((file) => file.replace('.css', ''));
const page = (sheet) =>
  kept('hostile', { scripts: scripts('rheolet.js') }).replace(
    '<!-- sheet -->',
    sheet && `<link rel="stylesheet" href="/${folder}/${sheet}.css" />`,
  );
const site = host({
  pages: { '/plain': page(''), ...Object.fromEntries(sheets.map((sheet) => [`/${sheet}`, page(sheet)])) },
});

/** The drawing as it stands in the page: its layers' boxes, its proportions, and the lengths of its texts in its own units. */
const drawn = ({ tab }) =>
  tab.evaluate(() => {
    const stage = document.querySelector('rheolet-board').shadowRoot.querySelector('.stage');
    const layers = [...stage.querySelectorAll('svg')];
    const boxes = layers.map((layer) => layer.getBoundingClientRect());
    const { width, height } = layers[1].viewBox.baseVal;
    return {
      size: [width, height],
      boxes: boxes.map((box) => [box.left, box.top, box.width, box.height].map(Math.round)),
      stretch: boxes[1].width / boxes[1].height / (width / height),
      wide: boxes[1].width,
      texts: [...stage.querySelectorAll('text')].map((text) => [
        text.textContent,
        getComputedStyle(text).textTransform,
        Math.round(text.getComputedTextLength()),
      ]),
    };
  });

/** Every control of the page: its tag and part, its size, and whether a press at its middle reaches it. */
const controls = ({ tab }) =>
  tab.evaluate(() => {
    const within = (root) =>
      [...root.querySelectorAll('*')].flatMap((each) => [
        each,
        ...(each.shadowRoot ? within(each.shadowRoot) : []),
      ]);
    const hit = (x, y, root = document) => {
      const found = root.elementFromPoint(x, y);
      return found?.shadowRoot && found.shadowRoot !== root ? hit(x, y, found.shadowRoot) : found;
    };
    return within(document)
      .filter(
        (each) => each.getRootNode() !== document && each.matches('button, input') && each.checkVisibility(),
      )
      .map((each) => {
        each.scrollIntoView({ block: 'center' });
        const { left, top, width, height } = each.getBoundingClientRect();
        return {
          name: `${each.getRootNode().host.localName} ${each.localName} ${each.part}`,
          size: [width, height],
          reached: each.contains(hit(left + width / 2, top + height / 2)),
        };
      });
  });

for (const sheet of sheets)
  test(`under ${sheet}.css the drawing keeps its shape and its letters, and every control can be pressed`, async () => {
    const plain = await site.open('/plain');
    await plain.isWell();
    const visit = await site.open(`/${sheet}`);
    await visit.isWell();
    const [usual, now] = [await drawn(plain), await drawn(visit)];
    assert.ok(Math.abs(now.stretch - 1) < 0.01, `stretched by ${now.stretch}`);
    for (const box of now.boxes) assert.deepEqual(box, now.boxes[0], 'the layers lie on each other');
    assert.ok(now.wide > 250, `${now.wide} px wide`);
    assert.deepEqual(now.texts, usual.texts);
    const all = await controls(visit);
    assert.equal(all.length, (await controls(plain)).length);
    for (const { name, size, reached } of all) {
      assert.ok(Math.min(...size) >= 23.5, `${name}: ${size.map(Math.round).join(' × ')} px`);
      assert.ok(reached, `${name} can be pressed`);
    }
    const slider = await visit.tab.evaluateHandle(() =>
      document.querySelector('rheolet-resistor').shadowRoot.querySelector('[part=slider]'),
    );
    await slider.focus();
    await visit.tab.keyboard.press('End');
    await visit.until("document.querySelector('rheolet-meter').shadowRoot.textContent.includes('0.900')");
    assert.deepEqual(visit.said, []);
  });

test('a print sheet that hides everything leaves no trace on the screen', async () => {
  const visit = await site.open('/no-print');
  await visit.isWell();
  const before = [await drawn(visit), await visit.shown()];
  await visit.tab.emulateMediaType('print');
  await visit.tab.evaluate(() => void dispatchEvent(new Event('beforeprint')));
  await visit.settled();
  await visit.tab.emulateMediaType('screen');
  await visit.settled();
  assert.deepEqual([await drawn(visit), await visit.shown()], before);
  assert.deepEqual(visit.said, []);
});
