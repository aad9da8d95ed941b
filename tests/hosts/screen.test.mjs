// An activity on the real screen, in a frame with leave to fill it and in one without.
import assert from 'node:assert/strict';
import { test } from 'node:test';
import { kept, line, scripts } from './lesson.mjs';
import { host } from './visit.mjs';

const activity = `<rheolet-activity reveal="ribbons meter">
  <rheolet-board id="quay" circuit="${line}">A lamp beside a control.</rheolet-board>
  <rheolet-meter board="quay" of="A1"></rheolet-meter>
</rheolet-activity>`;
const page = kept('lesson', { scripts: scripts('rheolet.min.js'), content: activity });

const site = host({
  pages: {
    '/page': page,
    '/without': kept('framed').replace('<!-- source -->', 'src="/page"'),
    '/with': kept('framed').replace('<!-- source -->', 'src="/page" allow="fullscreen"'),
  },
});

/** Presses the activity's button that says `name`, as a pupil does: a screen is only given to a press. */
async function press(frame, name) {
  const button = await frame.waitForSelector(`rheolet-activity >>> button ::-p-text(${name})`, {
    timeout: 5000,
  });
  await button.click();
}

/** Whether the activity has the screen, whether it fills its window, and which of its parts can be seen. */
const state = (frame) =>
  frame.evaluate(() => {
    const shell = document.querySelector('rheolet-activity');
    const { width, height } = shell.shadowRoot.querySelector('div').getBoundingClientRect();
    const meter = document.querySelector('rheolet-meter');
    return {
      screen: document.fullscreenElement === shell,
      full: Math.round(width) === innerWidth && Math.round(height) === innerHeight,
      ribbons: !document.querySelector('rheolet-board').hide.includes('ribbons'),
      meter: meter.checkVisibility({ visibilityProperty: true }),
    };
  });

/** Waits until the activity is in that state. */
async function becomes(frame, expected) {
  const until = Date.now() + 5000;
  let seen = await state(frame);
  while (JSON.stringify(seen) !== JSON.stringify(expected) && Date.now() < until) {
    await new Promise((done) => setTimeout(done, 30));
    seen = await state(frame);
  }
  assert.deepEqual(seen, expected);
}

const rest = { screen: false, full: false, ribbons: true, meter: true };

for (const [path, screen] of [
  ['/page', true],
  ['/with', true],
  ['/without', false],
])
  test(`an activity (${path.slice(1)}) ${screen ? 'has the screen' : 'fills its frame without leave'}, reveals by key, and gives it back`, async () => {
    const visit = await site.open(path);
    const frame = visit.tab.frames().at(-1);
    await visit.isWell(frame);
    await becomes(frame, rest);
    await press(frame, 'Fill the screen');
    await becomes(frame, { screen, full: true, ribbons: false, meter: false });
    await visit.tab.keyboard.press('PageDown');
    await becomes(frame, { screen, full: true, ribbons: true, meter: false });
    await visit.tab.keyboard.press('PageDown');
    await becomes(frame, { screen, full: true, ribbons: true, meter: true });
    await visit.tab.keyboard.press('PageUp');
    await becomes(frame, { screen, full: true, ribbons: true, meter: false });
    await press(frame, 'Leave');
    await becomes(frame, rest);
    assert.deepEqual(visit.said, []);
  });

test('a browser that takes the screen back, by its own key, gives the page back whole', async () => {
  const visit = await site.open('/page');
  await visit.isWell();
  await press(visit.tab.mainFrame(), 'Fill the screen');
  await becomes(visit.tab, { screen: true, full: true, ribbons: false, meter: false });
  await visit.tab.evaluate(() => document.exitFullscreen());
  await becomes(visit.tab, rest);
  assert.deepEqual(visit.said, []);
});
