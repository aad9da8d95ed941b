import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { drawSchematic, parseCircuit } from '../../../src/engine/index.ts';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import type { RheoletSwitch } from '../../../src/components/switch/index.ts';
import { settled } from '../beside-board.ts';
import { text } from '../board/bench.ts';
import { buttonOf, pump, switchBeside } from './bench.ts';

const numbers = (path: string): number[] => (path.match(/-?[\d.]+/g) ?? []).map(Number);

describe('a switch', () => {
  it('is a switch by its role, with a name that stays and its state in the circuit’s word', async () => {
    const bench = await switchBeside(pump);
    const button = buttonOf(bench.element);
    const heard = (): (string | null)[] => [
      button.getAttribute('role'),
      button.getAttribute('aria-label'),
      button.getAttribute('aria-checked'),
      bench.element.shadowRoot!.getElementById(button.getAttribute('aria-describedby')!)!.textContent,
    ];
    expect(heard()).to.deep.equal(['switch', 'S1', 'false', 'open']);
    button.click();
    await settled();
    expect(heard()).to.deep.equal(['switch', 'S1', 'true', 'closed']);
    expect([bench.part('label'), bench.part('state')]).to.deep.equal(['S1', 'closed']);
  });

  for (const state of ['open', 'closed'])
    it(`is drawn as on the board: ${state}`, async () => {
      const circuit = pump.replace('open', state);
      const { element } = await switchBeside(circuit);
      const drawing = drawSchematic(parseCircuit(circuit));
      if (!('symbols' in drawing)) throw new Error('not drawn');
      const drawn = drawing.symbols.find(({ id }) => id === 'S1')!;
      expect(drawn.turn).to.equal(0);
      const path = element.shadowRoot!.querySelector('path')!.getAttribute('d')!;
      expect(numbers(path)).to.deep.equal(numbers(drawn.path));
    });

  for (const [name, key] of [
    ['Enter', 'Enter'],
    ['Space', ' '],
  ] as const)
    it(`is reached by Tab and turned by ${name}`, async () => {
      const bench = await switchBeside(pump);
      await bench.tab();
      expect(document.activeElement).to.equal(bench.element);
      await sendKeys({ press: key });
      expect(bench.board.settings).to.deep.equal({ S1: 'closed' });
    });

  it('closes the circuit, and can be undone from its own key', async () => {
    const { element, board } = await switchBeside(pump);
    const current = (): number => board.solution!.quantity('I_L1')?.valueOf() ?? NaN;
    expect(current()).to.equal(0);
    buttonOf(element).focus();
    await sendKeys({ press: 'Enter' });
    expect(current()).to.equal(0.75); // 6 V over 8 Ω
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    await settled();
    expect([board.settings, element.value]).to.deep.equal([{}, 'open']);
  });

  it('tells the page what its pupil does, and not what the page does', async () => {
    const { element, board, page } = await switchBeside(pump);
    const told: ChangeDetail[] = [];
    page.addEventListener('rheolet-change', ({ detail }) => told.push(detail));
    buttonOf(element).click();
    element.value = 'open';
    board.set('S1', true);
    await settled();
    expect(told).to.deep.equal([
      { board: 'quay', id: 'S1', quantity: '', value: 1, text: 'closed', unit: '' },
    ]);
    expect(buttonOf(element).getAttribute('aria-checked')).to.equal('true');
  });
});

describe('a switch in a form', () => {
  async function inForm(): Promise<{ form: HTMLFormElement; element: RheoletSwitch }> {
    const form = await fixture<HTMLFormElement>(
      html`<form>
        <rheolet-board circuit=${pump}></rheolet-board>
        <fieldset>
          <label>Bilge pump <rheolet-switch name="pump"></rheolet-switch></label>
        </fieldset>
      </form>`,
    );
    await form.querySelector('rheolet-board')!.ready;
    await settled();
    return { form, element: form.querySelector('rheolet-switch')! };
  }
  const sent = (form: HTMLFormElement): FormDataEntryValue | null => new FormData(form).get('pump');

  it('sends open or closed, and goes back with its form', async () => {
    const { form, element } = await inForm();
    expect(sent(form)).to.equal('open');
    buttonOf(element).click();
    await settled();
    expect([sent(form), element.value]).to.deep.equal(['closed', 'closed']);
    form.reset();
    await settled();
    expect(sent(form)).to.equal('open');
  });

  it('does not send the form when it is pressed', async () => {
    const { form, element } = await inForm();
    let sentOff = false;
    form.addEventListener('submit', (event) => {
      event.preventDefault();
      sentOff = true;
    });
    buttonOf(element).click();
    expect(sentOff).to.equal(false);
  });

  it('comes back as the browser kept it, even before its board is there', async () => {
    const late = await fixture<RheoletSwitch>(html`<rheolet-switch></rheolet-switch>`);
    late.formStateRestoreCallback('closed');
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', pump);
    late.before(board);
    await board.ready;
    await settled();
    expect(board.settings).to.deep.equal({ S1: 'closed' });
  });

  it('is barred with its fieldset, and by itself', async () => {
    const { form, element } = await inForm();
    const fieldset = form.querySelector('fieldset')!;
    fieldset.disabled = true;
    await settled();
    expect(buttonOf(element).disabled).to.equal(true);
    fieldset.disabled = false;
    element.disabled = true;
    await settled();
    expect([buttonOf(element).disabled, sent(form)]).to.deep.equal([true, null]);
    element.disabled = false;
    await settled();
    expect([buttonOf(element).disabled, sent(form)]).to.deep.equal([false, 'open']);
  });

  it('is named by its label, by an aria-label, which moves inward, or by its circuit', async () => {
    const { form, element } = await inForm();
    const name = (): string | null => buttonOf(element).getAttribute('aria-label');
    expect(name()).to.equal('Bilge pump');
    element.setAttribute('aria-label', 'Pump');
    await settled();
    expect([name(), element.hasAttribute('aria-label')]).to.deep.equal(['Pump', false]);
    const plain = document.createElement('rheolet-switch');
    form.append(plain);
    await settled();
    expect(buttonOf(plain).getAttribute('aria-label')).to.equal('S1');
  });

  it('cannot be set to a word that is no state of it', async () => {
    const { form, element } = await inForm();
    const codes: string[] = [];
    form.addEventListener('rheolet-problem', ({ detail }) => codes.push(detail.code));
    element.value = 'ajar';
    await settled();
    expect([codes.length, sent(form)]).to.deep.equal([1, 'open']);
  });
});

describe('a switch that cannot be found', () => {
  for (const [circuit, of, sentence] of [
    [pump, 'S7', /There is no S7/],
    [pump, 'L1', /L1 is not a switch. Say which switch is meant, by of="…": S1/],
    ['B1 6 V + (S1 open + L1 8 Ω ∥ S2 open + L2 8 Ω)', '', /Say which switch is meant, by of="…": S1 or S2/],
    ['B1 6 V + L1 8 Ω', '', /This circuit has no switch/],
  ] as const)
    it(`is a sentence: of="${of}" of ${circuit}`, async () => {
      const { element } = await switchBeside(circuit, { of });
      expect(text(element.shadowRoot!.querySelector('[part=problem]')!)).to.match(sentence);
      expect(element.shadowRoot!.querySelector('button')).to.equal(null);
    });
});
