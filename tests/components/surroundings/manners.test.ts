import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletSurroundings } from '../../../src/components/surroundings/index.ts';
import { settled } from '../beside-board.ts';
import { drag, text } from '../board/bench.ts';
import { emulateFeatures, type Features } from '../emulate-features.ts';
import { boxes, fog, frost, names, shown, sliders, steps, surroundingsBeside, weather } from './bench.ts';
import { eventually } from '../eventually.ts';

async function inForm(): Promise<{ form: HTMLFormElement; element: RheoletSurroundings }> {
  const form = await fixture<HTMLFormElement>(
    html`<form>
      <rheolet-board circuit=${weather}></rheolet-board>
      <fieldset>
        <label>the pier <rheolet-surroundings name="weather"></rheolet-surroundings></label>
      </fieldset>
    </form>`,
  );
  await form.querySelector('rheolet-board')!.ready;
  await settled();
  return { form, element: form.querySelector('rheolet-surroundings')! };
}
const sent = (form: HTMLFormElement): FormDataEntryValue | null => new FormData(form).get('weather');

describe('surroundings as a form control', () => {
  it('send what they turn in one text', async () => {
    const { form, element } = await inForm();
    expect(sent(form)).to.equal('temperature 5 light 200');
    drag(sliders(element)[0]!, 40, true);
    await settled();
    expect([sent(form), element.value]).to.deep.equal(['temperature 0 light 200', 'temperature 0 light 200']);
    element.of = 'light';
    await settled();
    expect(sent(form)).to.equal('light 200');
  });

  it('go back with their form to what the page gave, in one step that can be undone', async () => {
    const { form, element } = await inForm();
    const board = form.querySelector('rheolet-board')!;
    element.value = 'light 1 temperature -10';
    expect(board.settings).to.deep.equal({ temperature: '-10', light: '1' });
    form.reset();
    expect(board.settings).to.deep.equal({});
    board.undo();
    expect(board.settings).to.deep.equal({ temperature: '-10', light: '1' });
    board.undo();
    expect(board.settings).to.deep.equal({});
  });

  it('come back as the browser kept them, even before their board is there', async () => {
    const late = await fixture<RheoletSurroundings>(html`<rheolet-surroundings></rheolet-surroundings>`);
    late.formStateRestoreCallback('temperature 4 light 3');
    expect(late.value).to.equal('temperature 4 light 3');
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', weather);
    late.before(board);
    await board.ready;
    await settled();
    expect(board.settings).to.deep.equal({ temperature: '4', light: '3' });
  });

  it('tell the page what they cannot be set to, and keep what they were', async () => {
    const { form, element } = await inForm();
    const told: string[] = [];
    form.addEventListener('rheolet-problem', ({ detail }) => told.push(detail.text.replace(/\s/g, ' ')));
    for (const value of ['temprature 5', 'temperature', 'temperature 900', 'warm', 'R1 5', '5'])
      element.value = value;
    await settled();
    expect(sent(form)).to.equal('temperature 5 light 200');
    expect(told).to.have.length(6);
    expect(told[0]).to.match(/"temprature" is not a setting of the surroundings; did you mean temperature/);
    expect(told[2]).to.match(/900 °C is outside/);
  });

  it('are barred when they, or a fieldset round them, are disabled', async () => {
    const { form, element } = await inForm();
    const barred = (): boolean[] =>
      [...sliders(element), ...boxes(element), ...steps(element)].map(({ disabled }) => disabled);
    const fieldset = form.querySelector('fieldset')!;
    fieldset.disabled = true;
    await settled();
    expect(barred()).to.deep.equal(Array(8).fill(true));
    fieldset.disabled = false;
    element.disabled = true;
    await settled();
    expect([barred().includes(false), sent(form)]).to.deep.equal([false, null]);
  });

  it('name their parts after the label in the page, and do not write that twice', async () => {
    const { element } = await inForm();
    expect(names(element)).to.deep.equal(['temperature of the pier', 'light of the pier']);
    expect(element.shadowRoot!.querySelector<HTMLElement>('[part=label]')!.hidden).to.equal(true);
    const called = [...boxes(element), ...steps(element)].map((part) => part.getAttribute('aria-label'));
    expect(new Set(called).size).to.equal(6);
  });

  for (const label of ['the pier', 'total', '__proto__'])
    it(`have the name that the page gives them, as it is written: ${label}`, async () => {
      const bench = await surroundingsBeside(frost, { label });
      expect(names(bench.element)).to.deep.equal([`temperature of ${label}`]);
      expect(bench.part('label')).to.equal(label);
    });
});

describe('surroundings that nothing feels', () => {
  for (const [circuit, of, sentence] of [
    [
      'B1 6 V + R1 12 Ω',
      '',
      'Nothing in this circuit feels the temperature or the light; a thermistor or an LDR would.',
    ],
    [fog, 'temperature', 'Nothing in this circuit feels the temperature; a thermistor would.'],
    [frost, 'light', 'Nothing in this circuit feels the light; an LDR would.'],
    [weather, 'lihgt', '“lihgt” is not a part of the surroundings; did you mean light?'],
    [weather, 'R1', '“R1” is not a part of the surroundings; choose temperature or light.'],
  ] as const)
    it(`are a sentence: of="${of}" of ${circuit}`, async () => {
      const { element } = await surroundingsBeside(circuit, { of });
      expect(text(element.shadowRoot!.querySelector('[part=problem]')!)).to.equal(sentence);
      expect([sliders(element).length, element.value]).to.deep.equal([0, '']);
    });

  it('and are there as soon as something feels them', async () => {
    const bench = await surroundingsBeside('B1 6 V + R1 12 Ω');
    await bench.show(fog);
    expect(shown(bench.element)).to.deep.equal(['10 lx']);
  });
});

describe('surroundings, wherever they go', () => {
  it('show the board that they name, and follow each other', async () => {
    const { element, page, board } = await surroundingsBeside(frost);
    const second = document.createElement('rheolet-board');
    second.id = 'fog';
    second.setAttribute('circuit', fog);
    page.append(second);
    await second.ready;
    element.board = 'fog';
    await settled();
    expect(shown(element)).to.deep.equal(['10 lx']);
    board.append(element);
    element.board = '';
    const other = document.createElement('rheolet-surroundings');
    other.setAttribute('board', 'quay');
    page.append(other);
    await settled();
    drag(sliders(element)[0]!, 30, false);
    // While something is turned, figures wait up to 67 ms.
    await eventually(() => shown(other).join() === '−10 °C', 'the other one follows');
    element.remove();
    expect([board.snapshot!.moving, board.settings]).to.deep.equal([undefined, { temperature: '-10' }]);
  });

  it('are turned by arrow keys that follow the direction of the text', async () => {
    const { element, page } = await surroundingsBeside(frost);
    page.dir = 'rtl';
    sliders(element)[0]!.focus();
    await sendKeys({ press: 'ArrowLeft' });
    await settled();
    expect(shown(element)).to.deep.equal(['26 °C']);
    expect(getComputedStyle(boxes(element)[0]!).direction).to.equal('ltr');
    const [less, more] = steps(element).map((step) => step.getBoundingClientRect().left);
    expect(less).to.be.greaterThan(more!);
  });

  it('fit a page of 320 pixels', async () => {
    const { element, page } = await surroundingsBeside(weather);
    page.style.width = '300px';
    await settled();
    expect(element.getBoundingClientRect().width).to.be.at.most(300);
    expect(element.scrollWidth).to.be.at.most(300);
  });

  it('print their values, and neither sliders nor buttons', async () => {
    await emulateFeatures({}, 'print');
    const { element } = await surroundingsBeside(weather);
    const visible = (part: Element): boolean => part.getClientRects().length > 0;
    expect(
      [sliders(element), boxes(element), steps(element)].map((parts) => parts.some(visible)),
    ).to.deep.equal([false, true, false]);
  });

  it('stand in the link to the setting, and come back from one', async () => {
    const { element, board } = await surroundingsBeside(weather);
    drag(sliders(element)[0]!, 30, true);
    const { hash } = new URL(board.linkToSetting());
    expect(hash).to.equal('#rheolet=quay:temperature=-10');
    board.reset();
    const changed = new Promise((done) => addEventListener('hashchange', done, { once: true }));
    location.hash = '#rheolet=quay:temperature=-3,light=5';
    await changed;
    await settled();
    expect(shown(element)).to.deep.equal(['−3 °C', '5 lx']);
    history.replaceState(null, '', location.pathname + location.search);
  });
});

describe('surroundings are accessible', () => {
  for (const [name, features, scheme] of [
    ['in the light scheme', {}, 'light'],
    ['in the dark scheme', { 'prefers-color-scheme': 'dark' }, 'light dark'],
    ['in forced colours', { 'forced-colors': 'active' }, 'light'],
  ] as readonly [string, Features, string][])
    it(name, async () => {
      await emulateFeatures(features);
      document.documentElement.style.setProperty('color-scheme', scheme);
      document.documentElement.style.setProperty('background', 'Canvas');
      const { element } = await surroundingsBeside(weather, { label: 'The pier' });
      await expect(element).to.be.accessible();
      document.documentElement.removeAttribute('style');
    });
});
