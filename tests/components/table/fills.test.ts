import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RheoletTable } from '../../../src/components/table/index.ts';
import { settled, type BesideBoard } from '../beside-board.ts';
import { bench, box, cells, quay } from './bench.ts';

/** Puts the table into a form, and gives the form. */
async function inForm(made: BesideBoard<RheoletTable>): Promise<HTMLFormElement> {
  const form = document.createElement('form');
  made.page.append(form);
  form.append(made.element);
  made.element.name = 'virp';
  await settled();
  return form;
}

async function type(made: BesideBoard<RheoletTable>, name: string, text: string): Promise<void> {
  box(made, name).focus();
  await sendKeys({ type: text });
  await sendKeys({ press: 'Tab' });
  await made.element.updateComplete;
}

describe('a table to be filled in', () => {
  it('has no reading in a blank one, and a box for each cell', async () => {
    const made = await bench(quay, { mode: 'blank', of: 'R1 L1', totals: '' });
    expect(cells(made)).to.deep.equal([
      ['Component', 'V / V', 'I / A', 'R / Ω', 'P / W'],
      ['R1', '_', '_', '_', '_'],
      ['L1', '_', '_', '_', '_'],
      ['Total', '_', '_', '_', '_'],
    ]);
    expect(made.everything + made.element.toCSV()).to.not.match(/\d\.\d/);
  });

  it('has no box where nothing can be written, and no column that has no box', async () => {
    const made = await bench('B1 6 V + B2 3 V + R1 9 Ω', { mode: 'blank', of: 'B1 R1', totals: '' });
    expect(cells(made).slice(1)).to.deep.equal([
      ['B1', '_', '_', '—', '_'],
      ['R1', '_', '_', '_', '_'],
      ['Total', '—', '—', '—', '_'],
    ]);
    made.element.of = 'B1';
    await made.element.updateComplete;
    expect(cells(made)[0]).to.deep.equal(['Component', 'V / V', 'I / A', 'P / W']);
  });

  it('has the given cells in a part-filled one, and boxes for the rest', async () => {
    const made = await bench(quay, {
      mode: 'part',
      of: 'R1 L1',
      totals: '',
      columns: 'V I R',
      given: 'V_R1, R_L1 I_total',
    });
    expect(cells(made).slice(1)).to.deep.equal([
      ['R1', '3.60', '_', '_'],
      ['L1', '_', '_', '24.0'],
      ['Total', '_', '0.300', '_'],
    ]);
  });

  it('does not give a hidden value', async () => {
    const made = await bench('B1 6 V + R1 7 Ω hidden', {
      mode: 'part',
      of: 'R1',
      columns: 'R',
      given: 'R_R1',
    });
    expect(cells(made)[1]).to.deep.equal(['R1', '?']);
  });

  it('names each box by what is written there, as the course calls it', async () => {
    const made = await bench(quay, { mode: 'blank', of: 'R1', totals: '' });
    await made.show(quay, { course: 'voltage' });
    expect(made.all('input').map(({ ariaLabel }) => ariaLabel)).to.deep.equal([
      'voltage across R1',
      'current through R1',
      'resistance of R1',
      'power of R1',
      'total voltage',
      'total current',
      'total resistance',
      'total power',
    ]);
  });

  it('keeps what is typed while the board changes, and gives it by the names of the quantities', async () => {
    const made = await bench(quay, { mode: 'blank', of: 'R1 L1' });
    await type(made, 'p.d. across R1', ' 3.6 ');
    await type(made, 'current through L1', '0,1');
    made.board.set('R1', '40');
    await settled();
    await made.show(quay.replace('6 V', '12 V'));
    expect(made.element.values).to.deep.equal({ V_R1: '3.6', I_L1: '0,1' });
    expect(box(made, 'p.d. across R1').value).to.equal(' 3.6 ');
  });

  it('keeps the unit of a column while the board changes, covered or not', async () => {
    const line = 'B1 6 mV + A1 + R1 [1..30] 12 Ω';
    const made = await bench(line, { mode: 'part', of: 'R1', columns: 'I R', given: 'I_R1' });
    expect(cells(made)[0]).to.deep.equal(['Component', 'I / µA', 'R / Ω']);
    made.board.set('R1', '1');
    await settled();
    expect(cells(made)).to.deep.equal([
      ['Component', 'I / µA', 'R / Ω'],
      ['R1', '6000', '_'],
    ]);
    await made.show(line, { hide: 'readings' });
    expect(cells(made)[0]).to.deep.equal(['Component', 'I / µA', 'R / Ω']);
    expect(cells(made)[1]).to.deep.equal(['R1', '?', '_']);
  });

  it('goes from box to box with the Tab key, row by row', async () => {
    const made = await bench(quay, { mode: 'part', given: 'V_R1', of: 'R1', columns: 'V I R' });
    await made.tab();
    const names = [];
    for (let press = 0; press < 2; press += 1) {
      await sendKeys({ press: 'Tab' });
      names.push((made.element.shadowRoot!.activeElement as HTMLElement).ariaLabel);
    }
    expect(names).to.deep.equal(['current through R1', 'resistance of R1']);
  });

  it('tells the page of a cell as any control does', async () => {
    const made = await bench(quay, { mode: 'blank', of: 'R1' });
    const heard: string[] = [];
    for (const name of ['input', 'change'])
      made.page.addEventListener(name, (event) =>
        heard.push(`${event.type} of ${(event.target as Element).localName}`),
      );
    await type(made, 'power of R1', '1');
    expect(heard).to.deep.equal(['input of rheolet-table', 'change of rheolet-table']);
  });

  it('lights up the component whose row is being filled in', async () => {
    const made = await bench(quay, { mode: 'blank' });
    box(made, 'power of L1').focus();
    expect(made.lit).to.deep.equal(['L1']);
    box(made, 'power of L1').blur();
    expect(made.lit).to.deep.equal([]);
  });
});

describe('a table is a control of its form', () => {
  const attributes = { mode: 'blank', of: 'R1 L1' } as const;

  it('it is sent as JSON, nothing being nothing', async () => {
    const made = await bench(quay, attributes);
    const form = await inForm(made);
    expect(new FormData(form).get('virp')).to.equal('');
    await type(made, 'p.d. across R1', '3.6');
    expect(new FormData(form).get('virp')).to.equal('{"V_R1":"3.6"}');
  });

  it('it is reset and restored', async () => {
    const made = await bench(quay, attributes);
    const form = await inForm(made);
    await type(made, 'p.d. across R1', '3.6');
    const state = made.element.value;
    form.reset();
    await made.element.updateComplete;
    expect(cells(made)[1]).to.deep.equal(['R1', '_', '_', '_', '_']);
    made.element.formStateRestoreCallback(state);
    await made.element.updateComplete;
    expect(cells(made)[1]).to.deep.equal(['R1', '_3.6', '_', '_', '_']);
  });

  it('it is barred by its own attribute or a fieldset', async () => {
    const made = await bench(quay, attributes);
    const form = await inForm(made);
    const barred = (): boolean => made.all('input').every((each) => (each as HTMLInputElement).disabled);
    expect(barred()).to.equal(false);
    made.element.disabled = true;
    await made.element.updateComplete;
    expect(barred()).to.equal(true);
    made.element.disabled = false;
    const fieldset = document.createElement('fieldset');
    fieldset.disabled = true;
    form.append(fieldset);
    fieldset.append(made.element);
    await settled();
    expect(barred()).to.equal(true);
  });

  it('it takes no harm from a state that is none', async () => {
    const made = await bench(quay, attributes);
    for (const state of ['', '{', 'null', '7', '"x"', '{"V_R1":7,"I_R1":{}}', '[[1],null,"x",{"R_R1":3}]']) {
      made.element.value = state;
      await made.element.updateComplete;
      expect(made.element.values, state).to.deep.equal({});
    }
  });
});
