import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/components/all.ts';
import type { RheoletActivity } from '../../../src/components/activity/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { settled } from '../beside-board.ts';
import { emulateFeatures } from '../emulate-features.ts';

async function made(more = html``): Promise<RheoletActivity> {
  const activity = await fixture<RheoletActivity>(
    html`<rheolet-activity reveal="meter">
      <rheolet-board id="quay" circuit="B1 6 V + A1 + R1 [4..40] 12 Ω"></rheolet-board>
      <rheolet-meter board="quay" of="A1"></rheolet-meter>${more}
    </rheolet-activity>`,
  );
  activity.requestFullscreen = () => Promise.reject(new TypeError('no leave'));
  await activity.querySelector<RheoletBoard>('rheolet-board')!.ready;
  await settled();
  return activity;
}
const layer = (activity: Element): HTMLElement => activity.shadowRoot!.querySelector('div')!;
const buttons = (activity: Element): HTMLButtonElement[] => [
  ...activity.shadowRoot!.querySelectorAll('button'),
];
const isSeen = (activity: Element): boolean =>
  activity.querySelector('rheolet-meter')!.checkVisibility({ visibilityProperty: true });

describe('an activity by its keys', () => {
  it('is filled and left by its buttons with Enter and Space; the focus stays on one of them', async () => {
    const activity = await made();
    buttons(activity)[0]!.focus();
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(layer(activity).className).to.equal('full');
    expect(buttons(activity)).to.include(activity.shadowRoot!.activeElement);
    const names = buttons(activity).map(({ textContent }) => textContent.trim());
    expect(new Set(names).size, names.join()).to.equal(3);
    buttons(activity).at(-1)!.focus();
    await sendKeys({ press: ' ' });
    await settled();
    expect(layer(activity).className).to.equal('');
    expect(activity.shadowRoot!.activeElement).to.equal(buttons(activity)[0]);
  });

  it('reveals and covers by its buttons, which are off where there is nothing to do', async () => {
    const activity = await made();
    await activity.fill();
    const [next, back] = buttons(activity);
    expect([isSeen(activity), next!.disabled, back!.disabled]).to.deep.equal([false, false, true]);
    next!.click();
    await activity.updateComplete;
    expect([isSeen(activity), next!.disabled, back!.disabled]).to.deep.equal([true, true, false]);
    back!.click();
    await activity.updateComplete;
    expect([isSeen(activity), next!.disabled, back!.disabled]).to.deep.equal([false, false, true]);
    activity.leave();
  });

  it('leaves keys with a modifier, keys that are used, and the keys of a box to those', async () => {
    const activity = await made(html`<input aria-label="name" />`);
    await activity.fill();
    const press = (init: KeyboardEventInit, target: EventTarget = activity): boolean =>
      target.dispatchEvent(
        new KeyboardEvent('keydown', { bubbles: true, composed: true, cancelable: true, ...init }),
      );
    for (const modifier of ['ctrlKey', 'altKey', 'metaKey'])
      expect(press({ key: 'PageDown', [modifier]: true }), modifier).to.equal(true);
    expect(press({ key: 'PageDown' }, activity.querySelector('input')!), 'in a box').to.equal(true);
    expect(press({ key: 'a' }), 'another key').to.equal(true);
    expect(isSeen(activity)).to.equal(false);
    const used = (event: Event): void => event.preventDefault();
    activity.addEventListener('keydown', used);
    press({ key: 'PageDown' });
    activity.removeEventListener('keydown', used);
    expect(isSeen(activity), 'used by another').to.equal(false);
    expect(press({ key: 'PageDown' }), 'taken').to.equal(false);
    expect(isSeen(activity)).to.equal(true);
    activity.leave();
    expect(press({ key: 'PageUp' }), 'none when it has been left').to.equal(true);
  });

  it('filled twice is filled once, and left twice is left once', async () => {
    const activity = await made();
    await activity.fill();
    activity.next();
    await activity.fill();
    expect(isSeen(activity), 'still revealed').to.equal(true);
    activity.leave();
    activity.leave();
    activity.next();
    activity.back();
    expect(isSeen(activity)).to.equal(true);
  });
});

describe('an activity over the window', () => {
  for (const [name, features] of [
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
    ['reduced motion', { 'prefers-reduced-motion': 'reduce' }],
  ] as const)
    it(`is accessible, and its buttons are to be seen: ${name}`, async () => {
      await emulateFeatures(features);
      const activity = await made();
      await activity.fill();
      await settled();
      await expect(activity).to.be.accessible();
      for (const button of buttons(activity)) {
        const { width, height } = button.getBoundingClientRect();
        expect(Math.min(width, height), button.textContent).to.be.at.least(24);
      }
      activity.leave();
    });

  it('has its buttons at the other side in a page that goes from right to left', async () => {
    const place = async (direction: 'ltr' | 'rtl'): Promise<number> => {
      const activity = await made();
      activity.dir = direction;
      await activity.fill();
      await settled();
      const { left, right } = buttons(activity)[0]!.getBoundingClientRect();
      activity.leave();
      activity.remove();
      return (left + right) / 2 / innerWidth;
    };
    expect(await place('ltr')).to.be.above(0.5);
    expect(await place('rtl')).to.be.below(0.5);
  });

  it('prints without its buttons', async () => {
    const activity = await made();
    await emulateFeatures({}, 'print');
    expect(buttons(activity)[0]!.checkVisibility()).to.equal(false);
  });

  it('follows the window', async () => {
    const activity = await made();
    await activity.fill();
    const zoom = (): string => layer(activity).style.getPropertyValue('zoom');
    const before = zoom();
    layer(activity).style.setProperty('zoom', '7');
    dispatchEvent(new Event('resize'));
    expect(zoom()).to.equal(before);
    activity.leave();
    layer(activity).style.setProperty('zoom', '7');
    dispatchEvent(new Event('resize'));
    expect(zoom(), 'nobody listens any more').to.equal('7');
  });
});
