import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/components/all.ts';
import { zoomFor } from '../../../src/components/activity/activity.ts';
import type { RheoletActivity } from '../../../src/components/activity/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { settled } from '../beside-board.ts';
import { eventually } from '../eventually.ts';

async function made(reveal = ''): Promise<RheoletActivity> {
  const activity = await fixture<RheoletActivity>(
    html`<rheolet-activity reveal=${reveal}>
      <rheolet-board id="quay" hide="arrows" circuit="B1 6 V + A1 + R1 [4..40] 12 Ω"></rheolet-board>
      <rheolet-meter board="quay" of="A1"></rheolet-meter>
      <p id="why">The current is <rheolet-value board="quay" of="I_R1"></rheolet-value>.</p>
    </rheolet-activity>`,
  );
  // A test's page has no screen to give: the layer is what is tested, as in a frame without leave.
  activity.requestFullscreen = () => Promise.reject(new TypeError('no leave'));
  await boardOf(activity).ready;
  await settled();
  return activity;
}
const boardOf = (activity: Element): RheoletBoard => activity.querySelector('rheolet-board')!;
const layer = (activity: Element): HTMLElement => activity.shadowRoot!.querySelector('div')!;
const buttonsOf = (activity: Element): HTMLButtonElement[] => [
  ...activity.shadowRoot!.querySelectorAll('button'),
];

/** What can be seen: by the tags, and the ribbons. */
function seen(activity: Element): string {
  const elements = ['meter', 'value'].filter((name) => {
    const element = activity.querySelector(`rheolet-${name}`)!;
    return element.checkVisibility({ visibilityProperty: true });
  });
  const ribbons = boardOf(activity).hide.includes('ribbons') ? [] : ['ribbons'];
  return [...ribbons, ...elements].join(' ');
}

describe('an activity', () => {
  it('fills the window and covers its parts, which keep their room; keys reveal and cover them', async () => {
    const activity = await made();
    await activity.fill();
    await settled();
    const { width, height } = layer(activity).getBoundingClientRect();
    expect([Math.round(width), Math.round(height)]).to.deep.equal([innerWidth, innerHeight]);
    const room = (): number => activity.querySelector('rheolet-meter')!.getBoundingClientRect().top;
    const before = room();
    expect(seen(activity)).to.equal('');
    for (const [key, expected] of [
      ['PageDown', 'ribbons'],
      ['PageDown', 'ribbons value'],
      ['PageDown', 'ribbons meter value'],
      ['PageDown', 'ribbons meter value'],
      ['PageUp', 'ribbons value'],
      ['PageUp', 'ribbons'],
      ['PageUp', ''],
      ['PageUp', ''],
    ] as const) {
      await sendKeys({ press: key });
      expect(seen(activity), key).to.equal(expected);
    }
    await settled();
    layer(activity).scrollTo(0, 0);
    expect(Math.abs(room() - before)).to.be.lessThan(2);
    await sendKeys({ press: 'Escape' });
    await activity.updateComplete;
    expect(seen(activity)).to.equal('ribbons meter value');
    expect(boardOf(activity).hide).to.equal('arrows');
    expect(layer(activity).className).to.equal('');
    expect(activity.shadowRoot!.activeElement).to.equal(buttonsOf(activity)[0]);
  });

  it('reveals in the order that the page gives, by tag or by id', async () => {
    const activity = await made('why meter');
    await activity.fill();
    expect(seen(activity)).to.equal('ribbons');
    activity.next();
    expect(seen(activity)).to.equal('ribbons value');
    activity.next();
    expect(seen(activity)).to.equal('ribbons meter value');
    activity.leave();
    const plain = await made('none');
    await plain.fill();
    expect(seen(plain)).to.equal('ribbons meter value');
    expect(buttonsOf(plain)).to.have.length(1);
    plain.leave();
  });

  it('leaves the keys of a slider to the slider', async () => {
    const activity = await made('meter');
    await activity.fill();
    await settled();
    const resistor = boardOf(activity).shadowRoot!.querySelector('rheolet-resistor')!;
    const slider = resistor.shadowRoot!.querySelector<HTMLInputElement>('[part=slider]')!;
    slider.focus();
    await sendKeys({ press: 'PageDown' });
    await sendKeys({ press: 'ArrowRight' });
    expect(seen(activity)).to.equal('ribbons value');
    activity.leave();
  });

  it('has figures of a thirty-sixth of the height of a projector’s picture', () => {
    // 1/36 of 1080 px is 30 px: 26 mm of capital height where 1080 px are 1.35 m and capitals 0.7 of the letter's size.
    expect(14 * zoomFor(1920, 1080)).to.equal(30);
    expect(zoomFor(320, 1080)).to.equal(1);
    expect(zoomFor(1024, 300)).to.equal(1);
  });

  it('draws labels and strokes at that size', async () => {
    const activity = await made();
    await activity.fill();
    await settled();
    const zoom = zoomFor(innerWidth, innerHeight);
    expect(Number(layer(activity).style.getPropertyValue('zoom'))).to.be.closeTo(zoom, 0.001);
    expect(getComputedStyle(boardOf(activity)).color).to.equal('rgb(0, 0, 0)');
    activity.leave();
    expect(layer(activity).style.getPropertyValue('zoom')).to.equal('');
  });

  it('says how far it is in the one voice, and gives everything back when it goes', async () => {
    const activity = await made();
    await activity.fill();
    activity.next();
    const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';
    await eventually(() => voice().includes('1 of 3 parts shown.'), 'it is said');
    activity.remove();
    expect(seen(activity)).to.not.equal('');
    expect(boardOf(activity).hide).to.equal('arrows');
  });

  it('is accessible in the page and over it', async () => {
    const activity = await made();
    await expect(activity).to.be.accessible();
    await activity.fill();
    await settled();
    await expect(activity).to.be.accessible();
    activity.leave();
  });
});
