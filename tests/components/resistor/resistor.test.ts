import { expect, fixture, html, oneEvent } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/components/board/define.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import type { RheoletResistor } from '../../../src/components/resistor/index.ts';
import { drag, quayLine, sliderOf, text } from '../board/bench.ts';

/** A board and a resistor beside it, in a form. */
async function page(
  circuit: string,
  attributes: Readonly<Record<string, string>> = {},
): Promise<{ board: RheoletBoard; resistor: RheoletResistor; form: HTMLFormElement }> {
  const form = await fixture<HTMLFormElement>(
    html`<form>
      <rheolet-board id="quay" circuit=${circuit}></rheolet-board>
      <label>Fog lamp <rheolet-resistor name="fog"></rheolet-resistor></label>
      <button>Send</button>
    </form>`,
  );
  const board = form.querySelector('rheolet-board')!;
  const resistor = form.querySelector('rheolet-resistor')!;
  for (const [name, value] of Object.entries(attributes)) resistor.setAttribute(name, value);
  await board.ready;
  await resistor.updateComplete;
  return { board, resistor, form };
}

const part = (resistor: RheoletResistor, name: string): Element | null =>
  resistor.shadowRoot!.querySelector(`[part=${name}]`);
const box = (resistor: RheoletResistor): HTMLInputElement => {
  const found = part(resistor, 'value');
  if (!(found instanceof HTMLInputElement)) throw new Error('no box');
  return found;
};
const buttons = (resistor: RheoletResistor): HTMLButtonElement[] => [
  ...resistor.shadowRoot!.querySelectorAll('button'),
];

/** Types into the box as a pupil does, and presses Enter. */
async function type(resistor: RheoletResistor, typed: string): Promise<void> {
  box(resistor).focus();
  box(resistor).select();
  if (typed) await sendKeys({ type: typed });
  await sendKeys({ press: 'Enter' });
  await resistor.updateComplete;
}

describe('a resistor has three ways to set its value', () => {
  it('a native slider with the value in words, and no role of its own', async () => {
    const { resistor, board } = await page(quayLine);
    const slider = sliderOf(resistor);
    expect(slider.type).to.equal('range');
    expect(slider.hasAttribute('role') || slider.hasAttribute('aria-valuenow')).to.equal(false);
    expect(slider.getAttribute('aria-valuetext')).to.equal('12 ohms');
    drag(slider, 36, true);
    expect(board.settings).to.deep.equal({ R1: '40' });
  });

  it('whose thumb stands where the board does, also where the page puts it back as it is dragged', async () => {
    const { resistor, board } = await page(quayLine);
    const back = (): void => board.set('R1', 12);
    resistor.addEventListener('rheolet-input', back);
    drag(sliderOf(resistor), 21, false);
    await resistor.updateComplete;
    expect([sliderOf(resistor).value, resistor.value]).to.deep.equal(['8', '12']);
    resistor.removeEventListener('rheolet-input', back);
    drag(sliderOf(resistor), 21, true);
    await resistor.updateComplete;
    expect([sliderOf(resistor).value, resistor.value]).to.deep.equal(['21', '25']);
  });

  it('two step buttons, a setting at a time, that stop at the ends', async () => {
    const { resistor, board } = await page(quayLine);
    const [less, more] = buttons(resistor);
    more!.click();
    expect(board.settings).to.deep.equal({ R1: '13' });
    board.set('R1', 4);
    await new Promise(requestAnimationFrame);
    await resistor.updateComplete;
    expect([less!.disabled, more!.disabled]).to.deep.equal([true, false]);
    const { width, height } = more!.getBoundingClientRect();
    expect(Math.min(width, height)).to.be.at.least(24);
  });

  for (const [typed, ohms] of [
    ['20', '20'],
    ['20 Ω', '20'],
    ['20 ohm', '20'],
    ['0,02 kΩ', '20'],
    ['20R0', '20'],
    ['20.4', '20'],
  ] as const) {
    it(`a box that reads ${typed}`, async () => {
      const { resistor, board } = await page(quayLine);
      const change = oneEvent(board.parentElement!, 'rheolet-change');
      await type(resistor, typed);
      await change;
      expect(board.settings).to.deep.equal({ R1: ohms });
    });
  }

  it('and a bare number has the prefix of the value that it replaces', async () => {
    const { resistor, board } = await page('B1 6 V + R1 [2..40] 8 kΩ');
    await type(resistor, '20');
    expect(board.settings).to.deep.equal({ R1: '20000' });
  });
});

describe('the box of a resistor', () => {
  it('is not corrected while the pupil types, not even when the value changes', async () => {
    const { resistor, board } = await page(quayLine);
    box(resistor).focus();
    box(resistor).select();
    await sendKeys({ type: '2' });
    board.set('R1', 30);
    await new Promise(requestAnimationFrame);
    await resistor.updateComplete;
    expect(box(resistor).value).to.equal('2');
    expect(board.settings).to.deep.equal({ R1: '30' });
  });

  it('keeps what it cannot read, with the reason', async () => {
    const { resistor, board } = await page(quayLine);
    await type(resistor, 'twelve');
    expect(box(resistor).value).to.equal('twelve');
    expect(box(resistor).getAttribute('aria-invalid')).to.equal('true');
    expect(text(part(resistor, 'problem')!)).to.not.equal('');
    expect(board.settings).to.deep.equal({});
    await type(resistor, '20');
    expect(text(part(resistor, 'problem')!)).to.equal('');
    expect(box(resistor).hasAttribute('aria-invalid')).to.equal(false);
  });

  it('takes the nearest end for what lies outside, and says so', async () => {
    const { resistor, board } = await page(quayLine);
    await type(resistor, '100');
    expect(board.settings).to.deep.equal({ R1: '40' });
    expect(text(part(resistor, 'problem')!).replace(/\s/g, ' ')).to.equal('100 Ω is outside 4 Ω to 40 Ω.');
    expect(box(resistor).value.replace(/\s/g, ' ')).to.equal('40 Ω');
  });
});

describe('a resistor as a form control', () => {
  it('sends its ohms under its name', async () => {
    const { resistor, form } = await page(quayLine);
    expect(new FormData(form).get('fog')).to.equal('12');
    drag(sliderOf(resistor), 16, true);
    await new Promise(requestAnimationFrame);
    await resistor.updateComplete;
    expect(new FormData(form).get('fog')).to.equal('20');
    expect(resistor.value).to.equal('20');
  });

  it('returns to the value that the page gave when its form is reset', async () => {
    const { board, form } = await page(quayLine);
    board.set('R1', 20);
    form.reset();
    expect(board.settings).to.deep.equal({});
  });

  it('comes back as the browser kept it, even before its board is there', async () => {
    const late = await fixture<RheoletResistor>(html`<rheolet-resistor></rheolet-resistor>`);
    late.formStateRestoreCallback('20');
    expect(late.value).to.equal('20');
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', quayLine);
    late.before(board);
    await board.ready;
    await late.updateComplete;
    await new Promise(requestAnimationFrame);
    expect(board.settings).to.deep.equal({ R1: '20' });
  });

  it('is barred when it, or a fieldset round it, is disabled', async () => {
    const { resistor, form } = await page(quayLine);
    const set = document.createElement('fieldset');
    set.disabled = true;
    form.append(set);
    set.append(resistor);
    await resistor.updateComplete;
    expect([
      sliderOf(resistor).disabled,
      box(resistor).disabled,
      ...buttons(resistor).map((each) => each.disabled),
    ]).to.not.include(false);
    set.disabled = false;
    await resistor.updateComplete;
    expect(sliderOf(resistor).disabled).to.equal(false);
    resistor.disabled = true;
    await resistor.updateComplete;
    expect(sliderOf(resistor).disabled).to.equal(true);
  });

  it('is named by its label, by an aria-label, which moves inward, or by its circuit', async () => {
    const { resistor } = await page(quayLine);
    await resistor.updateComplete;
    expect(sliderOf(resistor).getAttribute('aria-label')).to.equal('Fog lamp');
    resistor.setAttribute('aria-label', 'Fog');
    await resistor.updateComplete;
    expect(sliderOf(resistor).getAttribute('aria-label')).to.equal('Fog');
    expect(resistor.hasAttribute('aria-label')).to.equal(false);
    const plain = document.createElement('rheolet-resistor');
    resistor.closest('label')!.after(plain);
    await plain.updateComplete;
    expect(sliderOf(plain).getAttribute('aria-label')).to.equal('R1');
    await expect(plain).to.be.accessible();
  });
});

describe('a resistor that cannot be found', () => {
  for (const [of, sentence] of [
    ['R7', 'There is no R7'],
    ['L1', 'L1 has no range'],
  ] as const) {
    it(`is a sentence and one event: of="${of}"`, async () => {
      const { resistor, form } = await page(quayLine);
      const problem = oneEvent<CustomEvent<ProblemDetail>>(form, 'rheolet-problem');
      resistor.of = of;
      expect((await problem).detail.text).to.contain(sentence);
      await resistor.updateComplete;
      expect(text(part(resistor, 'problem')!)).to.contain(sentence);
    });
  }

  it('asks which is meant where two can be turned, and takes the only one unasked', async () => {
    const { resistor, board } = await page('B1 6 V + R1 [4..40] 12 Ω + R2 [4..40] 8 Ω');
    expect(text(part(resistor, 'problem')!))
      .to.contain('R1')
      .and.contain('R2');
    board.setAttribute('circuit', quayLine);
    await board.ready;
    await resistor.updateComplete;
    expect(sliderOf(resistor).value).to.equal('8');
  });
});

describe('a scale', () => {
  it('of preferred values has a setting for each of them', async () => {
    const { resistor, board } = await page('B1 6 V + R1 [10..100 E12] 10 Ω');
    buttons(resistor)[1]!.click();
    expect(board.settings).to.deep.equal({ R1: '12' });
    expect(sliderOf(resistor).max).to.equal('12');
  });

  it('even in the logarithm has its middle in the middle', async () => {
    const { resistor, board } = await page('B1 6 V + R1 [1..100 log] 1 Ω');
    drag(sliderOf(resistor), 50, true);
    expect(board.settings).to.deep.equal({ R1: '10' });
  });
});
