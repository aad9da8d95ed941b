import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { RecordDetail } from '../../../src/components/link/index.ts';
import type { RheoletTable } from '../../../src/components/table/index.ts';
import { settled, type BesideBoard } from '../beside-board.ts';
import { bench, button, cells, press } from './bench.ts';

const dimmer = 'B1 6 V + A1 + R1 [1..30] 12 Ω; V1 across R1';
const record = 'R_R1 I_A1 V_V1';

/** Records a row at each of these resistances. */
async function recordAt(made: BesideBoard<RheoletTable>, ...ohms: readonly string[]): Promise<void> {
  for (const each of ohms) {
    made.board.set('R1', each);
    await press(made, 'Record');
  }
}
const numbered = (made: BesideBoard<RheoletTable>): (string | undefined)[][] =>
  cells(made)
    .slice(1)
    .map(([number, ohms]) => [number, ohms]);

describe('a pupil records readings', () => {
  it('one press, one numbered row, in order', async () => {
    const made = await bench(dimmer, { record });
    expect(cells(made)).to.deep.equal([['No.', 'RR1 / Ω', 'IA1 / A', 'VV1 / V']]);
    await recordAt(made, '12', '3', '24');
    expect(cells(made).slice(1)).to.deep.equal([
      ['1', '12.0', '0.500', '6.00'],
      ['2', '3.00', '2.00', '6.00'],
      ['3', '24.0', '0.250', '6.00'],
    ]);
  });

  it('and what is recorded stays, whatever is turned later', async () => {
    const made = await bench(dimmer, { record });
    await recordAt(made, '12');
    const before = cells(made);
    made.board.set('R1', '30');
    await settled();
    expect(cells(made)).to.deep.equal(before);
  });

  it('for the page: numbers in SI units, exact in the value, and an event for each act', async () => {
    const made = await bench(dimmer, { record: 'R_R1 I_A1', board: 'quay' });
    const told: RecordDetail[] = [];
    made.page.addEventListener('rheolet-record', ({ detail }) => told.push(detail));
    await recordAt(made, '9', '2');
    await press(made, 'Delete row 1');
    expect(made.element.records).to.deep.equal([{ R_R1: 2, I_A1: 3 }]);
    expect(told.map(({ records }) => records.length)).to.deep.equal([1, 2, 1]);
    expect(told.at(-1)).to.deep.equal({ board: 'quay', records: made.element.records });
    await press(made, 'Undo');
    expect(made.element.value).to.equal('[{"R_R1":"9","I_A1":"2/3"},{"R_R1":"2","I_A1":"3"}]');
  });

  it('with the sign that a meter shows, and 0 where there is no current', async () => {
    const made = await bench('B1 6 V + S1 + A1 reversed + R1 [1..30] 12 Ω', { record: 'I_A1 I_R1' });
    await press(made, 'Record');
    made.board.set('S1', 'closed');
    await press(made, 'Record');
    expect(cells(made).slice(1)).to.deep.equal([
      ['1', '0', '0'],
      ['2', '−0.500', '0.500'],
    ]);
    expect(made.element.records).to.deep.equal([
      { I_A1: 0, I_R1: 0 },
      { I_A1: -0.5, I_R1: 0.5 },
    ]);
  });

  it('in one prefix for all rows of a column', async () => {
    const made = await bench('B1 6 mV + A1 + R1 [1..30] 12 Ω', { record: 'I_A1' });
    await recordAt(made, '12', '1');
    expect(cells(made)).to.deep.equal([
      ['No.', 'IA1 / mA'],
      ['1', '0.500'],
      ['2', '6.00'],
    ]);
  });

  it('exactly also while something moves', async () => {
    const made = await bench('B1 1 V + A1 + R1 [1..9] 4 Ω', { record: 'I_A1' });
    made.board.move('R1', '3');
    await press(made, 'Record');
    expect(made.element.value).to.equal('[{"I_A1":"1/3"}]');
  });

  it('but not while they are covered, and never a hidden value', async () => {
    const made = await bench('B1 6 V + A1 + R1 [1..30] 12 Ω hidden', { record: 'R_R1 I_A1' });
    await press(made, 'Record');
    expect(cells(made)[1]).to.deep.equal(['1', '?', '0.500']);
    expect(made.element.records).to.deep.equal([{ I_A1: 0.5 }]);
    expect(made.element.value + made.element.toCSV() + made.everything).to.not.contain('12');
    await made.show('B1 6 V + A1 + R1 [1..30] 12 Ω', { hide: 'readings' });
    expect(button(made, 'Record').disabled).to.equal(true);
    expect(numbered(made), 'and keeps what was recorded').to.have.length(1);
  });

  it('a quantity that is not there costs one sentence', async () => {
    const made = await bench(dimmer, { record: 'R_R1 I_A2' });
    expect(made.part('problem')).to.equal('“I_A2” is not a quantity of this circuit; did you mean I_A1?');
    await press(made, 'Record');
    expect(cells(made)).to.deep.equal([
      ['No.', 'RR1 / Ω'],
      ['1', '12.0'],
    ]);
  });
});

describe('what a pupil did to the rows can be taken back', () => {
  const rows = [
    ['1', '12.0'],
    ['2', '3.00'],
    ['3', '24.0'],
  ];

  it('a row that was deleted, by the button', async () => {
    const made = await bench(dimmer, { record });
    await recordAt(made, '12', '3', '24');
    await press(made, 'Delete row 2');
    expect(numbered(made)).to.deep.equal([rows[0], ['2', '24.0']]);
    await press(made, 'Undo');
    expect(numbered(made)).to.deep.equal(rows);
  });

  it('all rows, by Ctrl+Z inside, which the board then does not hear', async () => {
    const made = await bench(dimmer, { record });
    made.board.append(made.element);
    await settled();
    await recordAt(made, '12', '3', '24');
    button(made, 'Delete all').focus();
    await sendKeys({ press: 'Enter' });
    expect(numbered(made)).to.deep.equal([]);
    button(made, 'Record').focus();
    await sendKeys({ down: 'Control' });
    await sendKeys({ press: 'z' });
    await sendKeys({ up: 'Control' });
    expect(numbered(made)).to.deep.equal(rows);
    expect(made.board.settings).to.deep.equal({ R1: '24' });
  });

  it('as far back as the first, and no further', async () => {
    const made = await bench(dimmer, { record });
    await recordAt(made, '12', '3');
    await press(made, 'Undo');
    await press(made, 'Undo');
    expect(numbered(made)).to.deep.equal([]);
    expect(button(made, 'Undo').disabled).to.equal(true);
  });

  it('and the focus is never lost with a row', async () => {
    const made = await bench(dimmer, { record });
    await recordAt(made, '12', '3');
    const focused = (): string | undefined => {
      const active = made.element.shadowRoot!.activeElement as HTMLElement | null;
      return active?.ariaLabel ?? active?.textContent.trim();
    };
    button(made, 'Delete row 1').focus();
    await sendKeys({ press: 'Enter' });
    await made.element.updateComplete;
    expect(focused()).to.equal('Delete row 1');
    await sendKeys({ press: 'Enter' });
    await made.element.updateComplete;
    expect(focused()).to.equal('Record');
  });

  it('a form resets it, and brings it back', async () => {
    const made = await bench(dimmer, { record });
    await recordAt(made, '12', '3', '24');
    const { value } = made.element;
    made.element.formResetCallback();
    await made.element.updateComplete;
    expect(numbered(made)).to.deep.equal([]);
    made.element.formStateRestoreCallback(value);
    await made.element.updateComplete;
    expect(numbered(made)).to.deep.equal(rows);
    expect(made.element.value).to.equal(value);
  });
});
