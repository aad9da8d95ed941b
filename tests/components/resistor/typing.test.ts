import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import '../../../src/components/board/define.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { RheoletResistor } from '../../../src/components/resistor/index.ts';
import { sliderOf, text } from '../board/bench.ts';

interface Made {
  readonly form: HTMLFormElement;
  readonly board: RheoletBoard;
  readonly resistor: RheoletResistor;
}

async function make(circuit: string): Promise<Made> {
  const form = await fixture<HTMLFormElement>(
    html`<form>
      <rheolet-board circuit=${circuit}></rheolet-board>
      <fieldset><rheolet-resistor of="R1" name="fog"></rheolet-resistor></fieldset>
      <button>Send</button>
    </form>`,
  );
  const board = form.querySelector('rheolet-board')!;
  const resistor = form.querySelector('rheolet-resistor')!;
  await board.ready;
  await settled(resistor);
  return { form, board, resistor };
}

async function settled(resistor: RheoletResistor): Promise<void> {
  await nextFrame();
  await nextFrame();
  await resistor.updateComplete;
}

function boxOf(resistor: RheoletResistor): HTMLInputElement {
  const box = resistor.shadowRoot!.querySelector<HTMLInputElement>('[part=value]');
  if (!box) throw new Error('no box');
  return box;
}
const steps = (resistor: RheoletResistor): HTMLButtonElement[] => [
  ...resistor.shadowRoot!.querySelectorAll<HTMLButtonElement>('[part=step]'),
];
const problem = (resistor: RheoletResistor): string =>
  text(resistor.shadowRoot!.querySelector('[part=problem]')!);
const shown = (resistor: RheoletResistor): string => boxOf(resistor).value.replace(/\s/g, ' ');

/** Types and leaves, as the browser tells it. */
async function type(resistor: RheoletResistor, typed: string): Promise<void> {
  const box = boxOf(resistor);
  box.value = typed;
  box.dispatchEvent(new Event('input', { bubbles: true, composed: true }));
  box.dispatchEvent(new Event('change', { bubbles: true }));
  await settled(resistor);
}

const fog = 'B1 6 V + R1 [4..40] 12 Ω';
const harbour = 'B1 6 V + R1 [1..100 step 1] 8 kΩ';

describe('what is typed into the box is read', () => {
  for (const [typed, ohms, written] of [
    ['20', '20', '20 Ω'],
    ['20 ', '20', '20 Ω'],
    [' 20', '20', '20 Ω'],
    ['20Ω', '20', '20 Ω'],
    ['20 Ω', '20', '20 Ω'],
    ['20\u00a0Ω', '20', '20 Ω'],
    ['20\u202fΩ', '20', '20 Ω'],
    ['20 \u2126', '20', '20 Ω'],
    ['20 ohm', '20', '20 Ω'],
    ['20 ohms', '20', '20 Ω'],
    ['20.0', '20', '20 Ω'],
    ['20,0', '20', '20 Ω'],
    ['20,0 Ω', '20', '20 Ω'],
    ['0.02 kΩ', '20', '20 Ω'],
    ['0,02 kohm', '20', '20 Ω'],
    ['20000 mΩ', '20', '20 Ω'],
    ['20R0', '20', '20 Ω'],
    ['20R', '20', '20 Ω'],
    ['2e1', '20', '20 Ω'],
    ['2 × 10^1', '20', '20 Ω'],
    ['2×10¹ Ω', '20', '20 Ω'],
    ['20.4', '20', '20 Ω'],
    ['20.6', '21', '21 Ω'],
    ['4', '4', '4 Ω'],
    ['40', '40', '40 Ω'],
  ] as const)
    it(`“${typed}” is ${written}`, async () => {
      const { board, resistor } = await make(fog);
      await type(resistor, typed);
      expect(board.settings).to.deep.equal({ R1: ohms });
      expect([shown(resistor), problem(resistor)]).to.deep.equal([written, '']);
    });

  for (const [typed, ohms] of [
    ['20', '20000'],
    ['20 kΩ', '20000'],
    ['20k0', '20000'],
    ['4k0', '4000'],
    ['20000 Ω', '20000'],
    ['20 000 Ω', '20000'],
    ['0,02 MΩ', '20000'],
    ['2e4 Ω', '20000'],
    ['7', '7000'],
  ] as const)
    it(`“${typed}” beside a value in kilohms is ${ohms} Ω`, async () => {
      const { board, resistor } = await make(harbour);
      await type(resistor, typed);
      expect(board.settings).to.deep.equal({ R1: ohms });
    });
});

describe('what cannot be read stays in the box, with a sentence, and changes nothing', () => {
  for (const typed of [
    'twelve',
    '20 k',
    '1 M',
    '470 R',
    '',
    ' ',
    'R',
    'Ω',
    '12 V',
    '12 A',
    '12 W',
    '12 Hz',
    '1,000 Ω',
    '12..20',
    '1.2.3',
    '12 Ω Ω',
    '12 13',
    '--12',
    '12%',
    '1/0',
    'NaN',
    'Infinity',
    '1e999',
    '<b>12</b>',
    '12 Ω + R2',
  ])
    it(`“${typed}”`, async () => {
      const { board, resistor } = await make(fog);
      await type(resistor, typed);
      expect(board.settings).to.deep.equal({});
      expect(boxOf(resistor).value).to.equal(typed);
      expect(problem(resistor)).to.match(/[.?]$/);
      expect(boxOf(resistor).getAttribute('aria-invalid')).to.equal('true');
      expect(boxOf(resistor).getAttribute('aria-describedby')).to.equal('mistake-R');
    });
});

describe('what lies outside the range becomes the nearest end, and is said', () => {
  for (const [typed, ohms, sentence] of [
    ['41', '40', '41 Ω is outside 4 Ω to 40 Ω.'],
    ['3.9', '4', '3.9 Ω is outside 4 Ω to 40 Ω.'],
    ['0', '4', '0 Ω is outside 4 Ω to 40 Ω.'],
    ['-5', '4', '−5 Ω is outside 4 Ω to 40 Ω.'],
    ['−5 Ω', '4', '−5 Ω is outside 4 Ω to 40 Ω.'],
    ['1 MΩ', '40', '1000000 Ω is outside 4 Ω to 40 Ω.'],
  ] as const)
    it(`“${typed}”: ${sentence}`, async () => {
      const { board, resistor } = await make(fog);
      await type(resistor, typed);
      expect(board.settings).to.deep.equal({ R1: ohms });
      expect(problem(resistor).replace(/\s/g, ' ')).to.equal(sentence);
    });
});

describe('step buttons and keys go through the settings of the range one by one', () => {
  for (const [range, first, walked] of [
    ['[10..20 step 5] 10 Ω', '10', ['15', '20']],
    ['[0.1..0.3 step 0.1] 0.1 Ω', '0.1', ['0.2', '0.3']],
    ['[10..47 E12] 10 Ω', '10', ['12', '15', '18', '22', '27', '33', '39', '47']],
    ['[10..15 E24] 10 Ω', '10', ['11', '12', '13', '15']],
    ['[820..1200 E12] 820 Ω', '820', ['1000', '1200']],
  ] as const)
    it(`${range}: ${walked.join(', ')}`, async () => {
      const { resistor } = await make(`B1 6 V + R1 ${range}`);
      expect(steps(resistor).map(({ disabled }) => disabled)).to.deep.equal([true, false]);
      for (const value of walked) {
        steps(resistor)[1]!.click();
        await settled(resistor);
        expect(resistor.value).to.equal(value);
      }
      expect(steps(resistor).map(({ disabled }) => disabled)).to.deep.equal([false, true]);
      sliderOf(resistor).focus();
      for (const value of [...walked.slice(0, -1).reverse(), first]) {
        await sendKeys({ press: 'ArrowLeft' });
        await settled(resistor);
        expect(resistor.value).to.equal(value);
      }
    });

  for (const [range, key, ohms, said] of [
    ['[1..10000 log] 100 Ω', 'Home', '1', '1 ohm'],
    ['[1..10000 log] 100 Ω', 'End', '10000', '10000 ohms'],
    ['[1..10k E12] 4.7 kΩ', 'ArrowRight', '5600', '5.6 kiloohms'],
    ['[1..10k E24] 4.7 kΩ', 'ArrowRight', '5100', '5.1 kiloohms'],
    ['[1..10k E24] 4.7 kΩ', 'ArrowLeft', '4300', '4.3 kiloohms'],
    ['[4..40] 12 Ω', 'ArrowUp', '13', '13 ohms'],
    ['[4..40] 12 Ω', 'ArrowDown', '11', '11 ohms'],
    ['[4..40] 12 Ω', 'Home', '4', '4 ohms'],
    ['[4..40] 12 Ω', 'End', '40', '40 ohms'],
  ] as const)
    it(`${range}: ${key} leads to ${said}`, async () => {
      const { resistor } = await make(`B1 6 V + R1 ${range}`);
      sliderOf(resistor).focus();
      await sendKeys({ press: key });
      await settled(resistor);
      expect(resistor.value).to.equal(ohms);
      expect(sliderOf(resistor).getAttribute('aria-valuetext')).to.equal(said);
    });
});

describe('a resistor in a form', () => {
  const sent = ({ form }: Made): FormDataEntryValue[] => new FormData(form).getAll('fog');

  it('sends what it is set to, by whatever way it was set', async () => {
    const made = await make(fog);
    expect(sent(made)).to.deep.equal(['12']);
    await type(made.resistor, '20');
    expect(sent(made)).to.deep.equal(['20']);
    steps(made.resistor)[0]!.click();
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['19']);
    made.board.set('R1', 30);
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['30']);
    made.resistor.value = '31';
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['31']);
    made.board.undo();
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['30']);
  });

  it('sends nothing without a name, or while it is barred', async () => {
    const made = await make(fog);
    const fieldset = made.form.querySelector('fieldset')!;
    fieldset.disabled = true;
    expect(sent(made)).to.deep.equal([]);
    fieldset.disabled = false;
    expect(sent(made)).to.deep.equal(['12']);
    made.resistor.disabled = true;
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal([]);
    made.resistor.disabled = false;
    made.resistor.name = '';
    await settled(made.resistor);
    expect([...new FormData(made.form).keys()]).to.deep.equal([]);
  });

  it('is reset with its form to what the page gave, and that can be undone', async () => {
    const made = await make(fog);
    await type(made.resistor, '20');
    made.form.reset();
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['12']);
    expect(shown(made.resistor)).to.equal('12 Ω');
    made.board.undo();
    await settled(made.resistor);
    expect(sent(made)).to.deep.equal(['20']);
  });

  it('does not send the form when a step button is pressed', async () => {
    const made = await make(fog);
    let sentOff = false;
    made.form.addEventListener('submit', (event) => {
      event.preventDefault();
      sentOff = true;
    });
    for (const button of steps(made.resistor)) button.click();
    expect(sentOff).to.equal(false);
  });

  it('a value that cannot be had is told to the page and changes nothing', async () => {
    const { form, board, resistor } = await make(fog);
    const codes: string[] = [];
    form.addEventListener('rheolet-problem', ({ detail }) => codes.push(detail.code));
    resistor.value = '41';
    resistor.formStateRestoreCallback('a lot');
    await settled(resistor);
    expect(board.settings).to.deep.equal({});
    expect(codes[0]).to.equal('out of range');
  });
});

describe('the parts of a resistor are named after it', () => {
  const names = (resistor: RheoletResistor): (string | null)[] =>
    [sliderOf(resistor), boxOf(resistor), ...steps(resistor)].map((part) => part.getAttribute('aria-label'));

  for (const [attribute, name] of [
    ['', 'R1'],
    ['label', 'Fog lamp'],
    ['aria-label', 'Fog lamp'],
  ] as const)
    it(attribute ? `by its ${attribute}` : 'by its label in the circuit', async () => {
      const { resistor } = await make(fog);
      if (attribute) resistor.setAttribute(attribute, name);
      await settled(resistor);
      expect(names(resistor)).to.deep.equal([name, `${name}, typed`, `${name}: less`, `${name}: more`]);
      expect(resistor.hasAttribute('aria-label')).to.equal(false);
    });

  it('a hidden resistance is told by neither box nor slider', async () => {
    const { resistor } = await make('B1 6 V + R1 [4..40] 13 Ω hidden');
    expect(boxOf(resistor).value).to.equal('?');
    expect(sliderOf(resistor).getAttribute('aria-valuetext')).to.equal('?');
    const attributes = [...resistor.shadowRoot!.querySelectorAll('*')].flatMap((part) => [
      ...part.attributes,
    ]);
    expect(attributes.map(({ value }) => value).join()).to.not.contain('13');
    expect(resistor.shadowRoot!.textContent).to.not.contain('13');
  });
});
