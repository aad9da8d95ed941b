import { expect } from '@open-wc/testing';
import { resetMouse, sendKeys } from '@web/test-runner-commands';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { bench, box, fill, press, seen, type StepsBench } from './bench.ts';
import { eventually } from '../eventually.ts';

afterEach(() => resetMouse());

/** The place of the step that has the focus. (A test that fails must not write out elements: that takes a browser minutes.) */
const at = (made: StepsBench): number =>
  seen(made).findIndex((each) => each === made.element.shadowRoot!.activeElement);

describe('a worked solution by keyboard', () => {
  it('one key uncovers the next step: that of the button, or a presenter’s', async () => {
    const made = await bench();
    await made.tab();
    await sendKeys({ press: 'Enter' });
    expect(seen(made).length).to.equal(1);
    await sendKeys({ press: 'PageDown' });
    expect(seen(made).length).to.equal(2);
    await sendKeys({ press: 'PageUp' });
    expect(seen(made).length).to.equal(1);
    for (let step = 0; step < 7; step += 1) await sendKeys({ press: 'PageDown' });
    await settled();
    expect(at(made), 'the focus goes to the last step').to.equal(7);
  });

  it('arrow keys go from step to step, no further', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    await made.tab();
    expect(at(made)).to.equal(0);
    await sendKeys({ press: 'ArrowDown' });
    expect(at(made)).to.equal(1);
    await sendKeys({ press: 'End' });
    await sendKeys({ press: 'ArrowDown' });
    expect(at(made)).to.equal(7);
    await sendKeys({ press: 'Home' });
    expect(at(made)).to.equal(0);
  });

  it('what is uncovered is said in the page’s one voice', async () => {
    const made = await bench({ of: 'I_R1' }, 'B1 12 V + R1 4 Ω');
    await press(made, 'Next step');
    const voice = (): string => document.querySelector('[data-rheolet-voice]')?.textContent ?? '';
    await eventually(() => voice().includes('current through B1 equals 3.00'), voice());
    expect(voice()).to.contain('12.0\u202fV divided by 4.00\u202fΩ'.replaceAll('\u202f', ' '));
    expect(made.all('[aria-live], [role=status]')).to.deep.equal([]);
  });

  it('a number is typed and Enter goes on', async () => {
    const made = await bench({ of: 'I_R1', mode: 'gaps' }, 'B1 12 V + R1 5 Ω');
    box(made).focus();
    await sendKeys({ type: '2.4' });
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(made.part('count')).to.equal('1 of 2');
  });
});

describe('the components of a step stand out on the board', () => {
  it('while it is pointed at, or has the focus', async () => {
    const made = await bench({ of: 'I_R3', mode: 'whole' });
    await made.leave();
    expect(made.lit).to.deep.equal([]);
    await made.point(seen(made)[1]);
    expect(made.lit).to.deep.equal(['R3', 'R4']);
    await made.leave();
    await made.tab();
    expect(made.lit).to.deep.equal(['B1']);
    await sendKeys({ press: 'ArrowDown' });
    expect(made.lit).to.deep.equal(['R3', 'R4']);
    made.page.querySelector('button')!.focus();
    expect(made.lit).to.deep.equal([]);
  });

  it('and those of a step that has just been uncovered', async () => {
    const made = await bench();
    await made.leave();
    await made.tab();
    await sendKeys({ press: 'Enter' });
    await sendKeys({ press: 'Enter' });
    await settled();
    expect(made.lit).to.deep.equal(['R3', 'R4']);
    made.page.style.width = '300px'; // and the board drawn anew
    await settled();
    expect(made.lit).to.deep.equal(['R3', 'R4']);
  });
});

describe('a worked solution fits its surroundings', () => {
  it('a column of 280 pixels, in which nothing sticks out', async () => {
    for (const mode of ['whole', 'gaps']) {
      const made = await bench({ of: 'I_R3', mode });
      made.page.style.width = '260px';
      await settled();
      const wide = made.all('*').filter((node) => node.getBoundingClientRect().right > 280);
      expect(wide.map(({ textContent }) => textContent)).to.deep.equal([]);
    }
  });

  it('its buttons and boxes are at least 24 pixels either way, whatever the size of letters', async () => {
    const made = await bench({ of: 'I_R3', mode: 'gaps' });
    for (const size of ['16px', '9px', '32px']) {
      made.page.style.fontSize = size;
      for (const each of [...made.all('button'), box(made)]) {
        const { width, height } = each.getBoundingClientRect();
        expect(Math.min(width, height), each.localName).to.be.at.least(24);
      }
    }
  });

  it('on paper all steps are there, without buttons', async () => {
    const made = await bench();
    expect(seen(made).length).to.equal(0);
    await emulateFeatures({}, 'print');
    expect(seen(made).length).to.equal(8);
    expect(made.all('[part=value]').every((each) => each.checkVisibility())).to.equal(true);
    expect(made.all('button').some((each) => each.checkVisibility())).to.equal(false);
  });

  it('on paper gaps are lines to write on, and tell nothing', async () => {
    const made = await bench({ of: 'I_R3', mode: 'gaps' });
    await emulateFeatures({}, 'print');
    expect(made.all('input').filter((each) => each.checkVisibility()).length).to.equal(8);
    expect(made.all('[part~=value]').length).to.equal(0);
  });

  for (const [name, features] of [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const)
    it(`without a finding of axe in ${name}`, async () => {
      await emulateFeatures(features);
      for (const mode of ['whole', 'hints', 'gaps', 'steps']) {
        const made = await bench({ of: 'I_R3', mode });
        Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
        if (mode === 'gaps') await fill(made, '7');
        if (mode === 'hints') await press(made, 'Next hint', 8);
        await expect(made.element).to.be.accessible();
        made.page.remove();
      }
    });
});
