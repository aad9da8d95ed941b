import { expect, nextFrame } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, cells, quay } from './bench.ts';
import { eventually } from '../eventually.ts';

describe('a table has the readings of all components', () => {
  it('a row for each that is no wire and no ideal meter, a column for each quantity with its unit', async () => {
    expect(cells(await bench(quay))).to.deep.equal([
      ['Component', 'V / V', 'I / A', 'R / Ω', 'P / W'],
      ['B1', '6.00', '0.300', '—', '1.80'],
      ['R1', '3.60', '0.300', '12.0', '1.08'],
      ['R2', '2.40', '0.200', '12.0', '0.480'],
      ['L1', '2.40', '0.100', '24.0', '0.240'],
    ]);
  });

  it('also of a meter that has a resistance of its own', async () => {
    const made = await bench('B1 6 V + A1 1 Ω + R1 5 Ω; V1 1 kΩ across R1');
    expect(cells(made).map(([head]) => head)).to.deep.equal(['Component', 'B1', 'A1', 'R1', 'V1']);
  });

  it('the rows and the columns that are asked for, in that order', async () => {
    expect(cells(await bench(quay, { of: 'L1 A1', columns: 'I/mA R' }))).to.deep.equal([
      ['Component', 'I / mA', 'R / Ω'],
      ['L1', '100', '24.0'],
      ['A1', '300', '0'],
    ]);
  });

  it('with a row for the whole, where that has a meaning', async () => {
    const made = await bench(quay, { totals: '' });
    expect(cells(made).at(-1)).to.deep.equal(['Total', '6.00', '0.300', '20.0', '1.80']);
    await made.show('B1 6 V r 1 Ω + R1 5 Ω');
    expect(cells(made).at(-1), 'p.d. across the terminals').to.deep.equal([
      'Total',
      '5.00',
      '1.00',
      '5.00',
      '5.00',
    ]);
    await made.show('B1 6 V + B2 3 V + R1 9 Ω');
    expect(cells(made).at(-1), 'with several supplies').to.deep.equal(['Total', '—', '—', '—', '9.00']);
  });

  it('of a network without a supply the resistances alone', async () => {
    expect(cells(await bench('R1 4 Ω + (R2 6 Ω ∥ R3 3 Ω)', { totals: '' }))).to.deep.equal([
      ['Component', 'R / Ω'],
      ['R1', '4.00'],
      ['R2', '6.00'],
      ['R3', '3.00'],
      ['Total', '6.00'],
    ]);
  });

  it('in one prefix for a column, so that its head holds for every cell', async () => {
    const made = await bench('B1 5 mV + R1 4.7 kΩ + R2 300 Ω');
    expect(cells(made)).to.deep.equal([
      ['Component', 'V / mV', 'I / µA', 'R / Ω', 'P / nW'],
      ['B1', '5.00', '1.00', '—', '5.00'],
      ['R1', '4.70', '1.00', '4700', '4.70'],
      ['R2', '0.300', '1.00', '300', '0.300'],
    ]);
  });

  it('by the course’s letter, figures and decimal sign', async () => {
    const made = await bench(quay);
    await made.show(quay, { course: 'U voltage 2 comma' });
    expect(cells(made).slice(0, 3)).to.deep.equal([
      ['Component', 'U / V', 'I / A', 'R / Ω', 'P / W'],
      ['B1', '6,0', '0,30', '—', '1,8'],
      ['R1', '3,6', '0,30', '12', '1,1'],
    ]);
  });

  it('words where there is no number', async () => {
    const made = await bench('B1 6 V + R1 6 Ω + (R2 6 Ω ∥ (S1 open + L1 8 Ω))', { of: 'S1 L1' });
    expect(cells(made).slice(1)).to.deep.equal([
      ['S1', '3.00', 'no current', '—', '0'],
      ['L1', '0', 'no current', '8.00', '0'],
    ]);
  });

  it('the sign of the power of a supply that is being charged', async () => {
    const made = await bench('B1 9 V + R1 3 Ω + B2 6 V reversed', { of: 'B2', columns: 'I P' });
    expect(cells(made)[1]).to.deep.equal(['B2', '1.00', '−6.00']);
  });

  it('live, and exactly in the first frame at rest', async () => {
    const made = await bench(quay, { of: 'R1', columns: 'I' });
    made.board.move('R1', '40');
    await eventually(() => cells(made)[1]?.[1] === '0.125', 'it follows');
    made.board.set('R1', '4');
    await nextFrame();
    await made.element.updateComplete;
    expect(cells(made)[1]).to.deep.equal(['R1', '0.500']);
  });

  it('and nothing of what the pupil is to work out', async () => {
    const made = await bench('B1 6 V + R1 7 Ω hidden + R2 5 Ω', { columns: 'R' });
    expect(cells(made)[2]).to.deep.equal(['R1', '?']);
    expect(made.everything + made.element.toCSV()).to.not.contain('7');
    await made.show(quay, { hide: 'readings' });
    made.element.columns = '';
    await settled();
    expect(
      new Set(
        cells(made)
          .slice(1)
          .flatMap(([, ...row]) => row),
      ),
    ).to.deep.equal(new Set(['?', '—']));
    expect(made.everything + made.element.toCSV()).to.not.match(/\d\.\d/);
  });
});

describe('a wish that cannot be had costs one sentence, and nothing else', () => {
  const rows = [
    [{ columns: 'V Q R' }, '“Q” is not a column; choose V, I, R or P.', ['R1', '3.60', '12.0']],
    [{ columns: 'V/mA R' }, '“mA” is not a unit of this reading, which is in volts.', ['R1', '12.0']],
    [{ of: 'R1 R9', columns: 'R' }, 'There is no R9 in this circuit; did you mean R1?', ['R1', '12.0']],
    [{ of: 'R1', mode: 'blnk', columns: 'R' }, '“blnk” is not a mode; did you mean blank?', ['R1', '12.0']],
    [
      { of: 'R1', mode: 'part', given: 'R_R1 V_R9', columns: 'R V' },
      '“V_R9” is not a quantity of this circuit; did you mean V_R1?',
      ['R1', '12.0', '_'],
    ],
  ] as const;
  for (const [attributes, sentence, row] of rows)
    it(sentence, async () => {
      const problems: string[] = [];
      const listen = ({ detail }: WindowEventMap['rheolet-problem']): void => void problems.push(detail.text);
      window.addEventListener('rheolet-problem', listen);
      const made = await bench(quay, { ...attributes, board: 'quay' });
      made.board.set('R1', '12');
      await settled();
      window.removeEventListener('rheolet-problem', listen);
      expect(made.part('problem')).to.equal(sentence);
      expect(cells(made)).to.deep.include([...row]);
      expect(problems, 'said once').to.deep.equal([sentence]);
    });
});
