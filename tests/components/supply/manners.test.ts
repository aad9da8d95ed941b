import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletSupply } from '../../../src/components/supply/index.ts';
import { settled } from '../beside-board.ts';
import { drag, text } from '../board/bench.ts';
import { emulateFeatures, type Features } from '../emulate-features.ts';
import { battery, boxes, names, shown, sliders, steps, supplyBeside } from './bench.ts';

const quayBattery = 'B1 6 V r 0.5 Ω + R1 12 Ω';

async function inForm(circuit = quayBattery): Promise<{ form: HTMLFormElement; supply: RheoletSupply }> {
  const form = await fixture<HTMLFormElement>(
    html`<form>
      <rheolet-board circuit=${circuit}></rheolet-board>
      <fieldset>
        <label>Quay battery <rheolet-supply name="battery"></rheolet-supply></label>
      </fieldset>
    </form>`,
  );
  await form.querySelector('rheolet-board')!.ready;
  await settled();
  return { form, supply: form.querySelector('rheolet-supply')! };
}
const sent = (form: HTMLFormElement): FormDataEntryValue | null => new FormData(form).get('battery');

describe('a supply as a form control', () => {
  it('sends both of its values in one text', async () => {
    const { form, supply } = await inForm();
    expect(sent(form)).to.equal('6 r 0.5');
    drag(sliders(supply)[1]!, 0, true);
    await settled();
    expect([sent(form), supply.value]).to.deep.equal(['6 r 0', '6 r 0']);
  });

  it('sends what it turns alone', async () => {
    const { form, supply } = await inForm();
    supply.turns = 'r';
    await settled();
    expect(sent(form)).to.equal('r 0.5');
  });

  it('goes back with its form to what the page gave, also where that says no internal resistance', async () => {
    const { form, supply } = await inForm('B1 6 V + R1 12 Ω');
    supply.value = '3 r 1';
    form.reset();
    await settled();
    expect(shown(supply)).to.deep.equal(['6 V', '0 Ω']);
  });

  it('comes back as the browser kept it, even before its board is there', async () => {
    const late = await fixture<RheoletSupply>(html`<rheolet-supply></rheolet-supply>`);
    late.formStateRestoreCallback('4 r 1');
    expect(late.value).to.equal('4 r 1');
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', quayBattery);
    late.before(board);
    await board.ready;
    await settled();
    expect(board.settings).to.deep.equal({ B1: '4 r 1' });
  });

  it('tells the page what it cannot be set to, and keeps what it was', async () => {
    const { form, supply } = await inForm();
    const codes: string[] = [];
    form.addEventListener('rheolet-problem', ({ detail }) => codes.push(detail.code));
    supply.value = 'r -1';
    supply.value = 'plenty';
    await settled();
    expect([sent(form), codes.length]).to.deep.equal(['6 r 0.5', 2]);
  });

  it('is barred when it, or a fieldset round it, is disabled', async () => {
    const { form, supply } = await inForm();
    const all = (): boolean[] =>
      [...sliders(supply), ...boxes(supply), ...steps(supply)].map(({ disabled }) => disabled);
    const fieldset = form.querySelector('fieldset')!;
    fieldset.disabled = true;
    await settled();
    expect(all()).to.deep.equal(Array(8).fill(true));
    fieldset.disabled = false;
    await settled();
    expect(all()).to.deep.equal(Array(8).fill(false));
    supply.disabled = true;
    await settled();
    expect([all().includes(false), sent(form)]).to.deep.equal([false, null]);
    supply.disabled = false;
    await settled();
    expect([all().includes(true), sent(form)]).to.deep.equal([false, '6 r 0.5']);
  });

  it('names its parts after the label in the page, and does not write that twice', async () => {
    const { supply } = await inForm();
    expect(names(supply)).to.deep.equal(['e.m.f. of Quay battery', 'internal resistance of Quay battery']);
    expect(supply.shadowRoot!.querySelector<HTMLElement>('[part=label]')!.hidden).to.equal(true);
    const called = [...boxes(supply), ...steps(supply)].map((part) => part.getAttribute('aria-label'));
    expect(new Set(called).size).to.equal(6);
  });
});

describe('a name that the page gives a supply', () => {
  for (const name of ['total', 'fog_lamp', 'valueOf', '__proto__'])
    it(`is taken as it is written: ${name}`, async () => {
      const { element } = await supplyBeside(quayBattery, { label: name });
      expect(names(element)).to.deep.equal([`e.m.f. of ${name}`, `internal resistance of ${name}`]);
    });
});

describe('a supply that cannot be found', () => {
  for (const [circuit, of, sentence] of [
    [quayBattery, 'B7', /There is no B7/],
    [quayBattery, 'R1', /R1 is not a supply. Say which supply is meant, by of="…": B1/],
    ['B1 6 V + B2 3 V + R1 12 Ω', '', /Say which supply is meant, by of="…": B1 or B2/],
    ['R1 12 Ω + R2 4 Ω', '', /This circuit has no supply/],
  ] as const)
    it(`is a sentence: of="${of}" of ${circuit}`, async () => {
      const { element } = await supplyBeside(circuit, { of });
      expect(text(element.shadowRoot!.querySelector('[part=problem]')!)).to.match(sentence);
      expect(sliders(element)).to.have.length(0);
    });
});

describe('a supply, wherever it goes', () => {
  it('shows the board that it names, moved, removed, named anew', async () => {
    const { element, page, board } = await supplyBeside(quayBattery, { of: 'B1' });
    const second = document.createElement('rheolet-board');
    second.id = 'pump';
    second.setAttribute('circuit', 'B1 9 V + R1 12 Ω');
    page.append(second);
    await second.ready;
    element.board = 'pump';
    await settled();
    expect(shown(element)).to.deep.equal(['9 V', '0 Ω']);
    board.append(element);
    element.board = '';
    await settled();
    expect(shown(element)).to.deep.equal(['6 V', '0.5 Ω']);
    second.append(element);
    await settled();
    expect(shown(element)).to.deep.equal(['9 V', '0 Ω']);
    element.remove();
    page.append(element);
    second.remove();
    await settled();
    expect(shown(element)).to.deep.equal(['6 V', '0.5 Ω']);
  });

  it('is turned by arrow keys that follow the direction of the text', async () => {
    const { element, page } = await supplyBeside(battery(['0', '12']));
    page.dir = 'rtl';
    sliders(element)[0]!.focus();
    await sendKeys({ press: 'ArrowLeft' });
    await settled();
    expect(shown(element)).to.deep.equal(['6.5 V']);
    expect(getComputedStyle(boxes(element)[0]!).direction).to.equal('ltr');
    const [less, more] = steps(element).map((step) => step.getBoundingClientRect().left);
    expect(less).to.be.greaterThan(more!);
  });

  it('fits a page of 320 pixels', async () => {
    const { element, page } = await supplyBeside(quayBattery);
    page.style.width = '300px';
    await settled();
    expect(element.getBoundingClientRect().width).to.be.at.most(300);
    expect(element.scrollWidth).to.be.at.most(300);
  });

  it('prints its values, and neither sliders nor buttons', async () => {
    await emulateFeatures({}, 'print');
    const { element } = await supplyBeside(quayBattery);
    const visible = (part: Element): boolean => part.getClientRects().length > 0;
    expect(
      [sliders(element), boxes(element), steps(element)].map((parts) => parts.some(visible)),
    ).to.deep.equal([false, true, false]);
  });
});

describe('a supply is accessible', () => {
  for (const [name, features, scheme] of [
    ['in the light scheme', {}, 'light'],
    ['in the dark scheme', { 'prefers-color-scheme': 'dark' }, 'light dark'],
    ['in forced colours', { 'forced-colors': 'active' }, 'light'],
  ] as readonly [string, Features, string][])
    it(name, async () => {
      await emulateFeatures(features);
      document.documentElement.style.setProperty('color-scheme', scheme);
      document.documentElement.style.setProperty('background', 'Canvas');
      const { element } = await supplyBeside(quayBattery);
      await expect(element).to.be.accessible();
      document.documentElement.removeAttribute('style');
    });
});
