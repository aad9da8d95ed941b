import { expect } from '@open-wc/testing';
import { parseCircuit, say } from '../../../src/engine/index.ts';
import { headingText, type Grid } from '../../../src/components/table/grid.ts';
import { readingsGrid, type ReadingsWish } from '../../../src/components/table/readings-grid.ts';
import { recordsGrid, rowNow } from '../../../src/components/table/records-grid.ts';
import { momentIn, momentOf, storeOf } from '../moment.ts';

/** A table as its heads and its rows; "_" where the pupil writes. */
const rows = ({ headings, rows: all }: Grid): readonly (readonly string[])[] => [
  headings.map(headingText),
  ...all.map(({ head, cells }) => [head, ...cells.map(({ text }) => text ?? '_')]),
];
const usual: ReadingsWish = { of: '', columns: '', mode: '', given: '', totals: false };
const readings = (line: string, wish: Partial<ReadingsWish>): readonly (readonly string[])[] =>
  rows(readingsGrid(momentOf(line), { ...usual, ...wish }).grid);

const quay = 'B1 6 V + R1 12 Ω + L1 24 Ω';

describe('a table of components', () => {
  it('has in parts what is given, and room for the rest, each column in its own unit', () => {
    expect(
      readings(quay, { of: 'R1 L1', columns: 'V/mV I', mode: 'part', given: 'V_R1 I_total', totals: true }),
    ).to.deep.equal([
      ['V / mV', 'I / A'],
      ['R1', '2000', '_'],
      ['L1', '_', '_'],
      ['Total', '_', '0.167'],
    ]);
  });

  it('reads the p.d. and the power of the whole at the one supply, and has a dash for them beside two', () => {
    expect(readings(quay, { totals: true }).at(-1)).to.deep.equal(['Total', '6.00', '0.167', '36.0', '1.00']);
    const two = readings('B1 6 V + R1 12 Ω + B2 1 V', { totals: true }).at(-1);
    expect(two?.slice(0, 4)).to.deep.equal(['Total', '—', '—', '—']);
  });

  it('has a dash, and no box, where a quantity has no meaning, and no column of dashes alone', () => {
    const blank = readings(quay, { mode: 'blank' });
    expect(blank[1], 'a supply has no resistance').to.deep.equal(['B1', '_', '_', '—', '_']);
    expect(readings('B1 6 V + R1 12 Ω', { of: 'B1' })[0]).to.deep.equal(['V / V', 'I / A', 'P / W']);
  });

  it('to be filled in keeps its units whatever is turned; a live one has those that suit', () => {
    const line = 'B1 6 V + R1 [4 Ω..40 kΩ] 40 kΩ';
    const heads = (mode: string, ohms: string): readonly string[] => {
      const store = storeOf(line);
      store.set('R1', ohms);
      return readingsGrid(momentIn(store), { ...usual, mode, columns: 'I' }).grid.headings.map(headingText);
    };
    expect(heads('blank', '40000')).to.deep.equal(heads('blank', '4'));
    expect([heads('live', '40000'), heads('live', '4')]).to.deep.equal([['I / µA'], ['I / A']]);
  });

  it('tells of its wishes all that cannot be had: columns, then rows, then cells', () => {
    const { wrong } = readingsGrid(momentOf(quay), {
      ...usual,
      columns: 'V Q',
      of: 'R1 R9',
      mode: 'part',
      given: 'I_R1',
    });
    expect(wrong.map(({ code }) => code)).to.deep.equal([
      'not a choice',
      'no such component',
      'no such quantity',
    ]);
  });
});

describe('a table of what a pupil recorded', () => {
  const dimmer = 'B1 6 V + A1 + R1 [4..40] 12 Ω + L1 8 Ω';

  it('has a numbered row for each record, in the letters and with the decimal sign of the course', () => {
    const store = storeOf(dimmer, { course: 'U 2 comma' });
    const record = 'R_R1 U_L1';
    const first = rowNow(momentIn(store), record);
    store.move('R1', '24');
    const second = rowNow(momentIn(store), record);
    const { grid, wrong } = recordsGrid(momentIn(store), record, [first, second]);
    expect(rows(grid)).to.deep.equal([
      ['R_R1 / Ω', 'U_L1 / V'],
      ['1', '12', '2,4'],
      ['2', '24', '1,5'],
    ]);
    expect([grid.corner, wrong]).to.deep.equal(['No.', []]);
    expect(second['V_L1']?.value?.toString(), 'exactly, though it moves').to.equal('1.5');
  });

  it('has an empty cell where a record does not hold a quantity that is asked for since', () => {
    const moment = momentOf(dimmer);
    const { grid } = recordsGrid(moment, 'R_R1 I_A1', [rowNow(moment, 'R_R1')]);
    expect(rows(grid)).to.deep.equal([
      ['R_R1 / Ω', 'I_A1 / A'],
      ['1', '12.0', ''],
    ]);
  });

  it('does without a quantity that is not there, and says which', () => {
    const moment = momentOf(dimmer);
    const { grid, wrong } = recordsGrid(moment, 'I_A9 R_R1', [rowNow(moment, 'I_A9 R_R1')]);
    expect(rows(grid)).to.deep.equal([['R_R1 / Ω'], ['1', '12.0']]);
    expect(wrong.map((each) => say(each))).to.deep.equal([
      '“I_A9” is not a quantity of this circuit; did you mean I_A1?',
    ]);
  });

  it('keeps the words of a row in which no current flowed, and its number 0', () => {
    const store = storeOf('B1 6 V + S1 open + A1 + R1 12 Ω');
    const open = rowNow(momentIn(store), 'I_A1 R_total');
    store.open(parseCircuit('B1 6 V + A1 + R1 12 Ω'));
    const { grid } = recordsGrid(momentIn(store), 'I_A1 R_total', [
      open,
      rowNow(momentIn(store), 'I_A1 R_total'),
    ]);
    expect(rows(grid).slice(1)).to.deep.equal([
      ['1', '0', 'no path for a current'],
      ['2', '0.500', '12.0'],
    ]);
  });

  it('has heads with units before anything is recorded', () => {
    expect(rows(recordsGrid(momentOf(dimmer), 'I_A1', []).grid)).to.deep.equal([['I_A1 / A']]);
  });
});
