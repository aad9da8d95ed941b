import { expect } from '@open-wc/testing';
import { readCSV } from '../table/read-csv.ts';
import { bench, quay, type GraphBench } from './bench.ts';

const cells = (made: GraphBench): string[][] =>
  made.all('tr').map((row) => [...row.children].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim()));

describe('the values of a graph', () => {
  it('are those at its ends and near the marks of its axis, at settings that the slider has', async () => {
    const made = await bench(quay, { of: 'I_A1 I_R1' });
    expect(cells(made)).to.deep.equal([
      ['RR1 / Ω', 'IA1 / A', 'IR1 / A'],
      ['4', '2.25', '1.50'],
      ['5', '1.95', '1.20'],
      ['10', '1.35', '0.600'],
      ['15', '1.15', '0.400'],
      ['20', '1.05', '0.300'],
      ['25', '0.990', '0.240'],
      ['30', '0.950', '0.200'],
      ['35', '0.921', '0.171'],
      ['40', '0.900', '0.150'],
    ]);
  });

  it('go out as CSV, as they stand there', async () => {
    const made = await bench(quay, { of: 'I_A1 I_R1' });
    const [head, ...rows] = readCSV(made.element.toCSV(), ',');
    expect(head).to.deep.equal(['R_R1 / Ω', 'I_A1 / A', 'I_R1 / A']);
    expect(rows).to.deep.equal(cells(made).slice(1));
  });

  it('with a decimal comma, where the course has one', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    await made.show(quay, { course: 'comma' });
    expect(readCSV(made.element.toCSV(), ';')[1]).to.deep.equal(['4', '2,25']);
  });

  it('have a dash where there is none, and nothing goes out without a graph', async () => {
    const made = await bench('B1 6 V + R1 [0..20] 5 Ω', { of: 'I_R1' });
    expect(cells(made)[1]).to.deep.equal(['0', '—']);
    await made.show('B1 6 V + R1 5 Ω');
    expect(made.element.toCSV()).to.equal('');
  });

  it('have one prefix, the one of the axis', async () => {
    const made = await bench('B1 6 V + R1 [1k..20k] 5 kΩ', { of: 'I_R1' });
    expect(made.part('up')).to.equal('I / mA');
    expect(cells(made)[0]).to.deep.equal(['RR1 / kΩ', 'IR1 / mA']);
    expect(cells(made)[1]).to.deep.equal(['1', '6.00']);
  });
});
