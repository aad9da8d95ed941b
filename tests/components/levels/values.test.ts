import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import { settled } from '../beside-board.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { bench as closed, pump, quay, type LevelsBench } from './bench.ts';
import { eventually } from '../eventually.ts';

const cells = (made: LevelsBench): string[][] =>
  made.all('tr').map((row) => [...row.children].map((cell) => cell.textContent.replace(/\s+/g, ' ').trim()));
const details = (made: LevelsBench): HTMLDetailsElement => made.element.shadowRoot!.querySelector('details')!;
/** A diagram whose table has been opened. */
async function bench(circuit: string): Promise<LevelsBench> {
  const made = await closed(circuit);
  details(made).open = true;
  await eventually(() => made.all('td').length > 0);
  return made;
}
/** A cell as a number. */
const number = (text = ''): number => Number(text.replace('−', '-'));

describe('the heights of a level diagram as a table', () => {
  it('go along the current: a lift is above 0, a drop below', async () => {
    const made = await bench('B1 12 V + A1 + R1 4 Ω + R2 8 Ω');
    expect(cells(made)).to.deep.equal([
      ['Component', 'Before / V', 'After / V', 'Change / V'],
      ['B1', '0', '12.0', '+12.0'],
      ['A1', '12.0', '12.0', '0'],
      ['R1', '12.0', '8.00', '−4.00'],
      ['R2', '8.00', '0', '−8.00'],
    ]);
  });

  it('have changes that add up to 0 round a loop (Kirchhoff 1845)', async () => {
    const made = await bench(pump);
    const ohms = fc.integer({ min: 1, max: 20 });
    await fc.assert(
      fc.asyncProperty(ohms, async (value) => {
        made.board.set('R1', String(value));
        await settled();
        const changes = cells(made)
          .slice(1)
          .map(([, , , change]) => number(change));
        expect(changes.reduce((sum, change) => sum + change, 0)).to.be.closeTo(0, 0.06); // three figures: halves of 0.1 V and of 0.01 V
      }),
      { numRuns: 10 },
    );
  });

  it('count from the 0 V mark', async () => {
    const made = await bench('B1 9 V + R1 4 Ω + @q + R2 5 Ω; 0 V @q');
    expect(cells(made).slice(1)).to.deep.equal([
      ['B1', '−5.00', '4.00', '+9.00'],
      ['R1', '4.00', '0', '−4.00'],
      ['R2', '0', '−5.00', '−5.00'],
    ]);
  });

  it('go the way of a constant current, up or down', async () => {
    const made = await bench('I1 0.5 A + B1 12 V + R1 4 Ω');
    expect(cells(made).slice(1)).to.deep.equal([
      ['I1', '0', '−10.0', '−10.0'],
      ['B1', '−10.0', '2.00', '+12.0'],
      ['R1', '2.00', '0', '−2.00'],
    ]);
  });

  it('are the same for branches side by side, and follow the slider', async () => {
    const made = await bench(quay);
    const row = (id: string): string[] =>
      cells(made)
        .find(([first]) => first === id)!
        .slice(1);
    expect(row('R2')).to.deep.equal(row('L1'));
    expect(row('R1')[2]).to.equal('−3.86');
    made.board.set('R1', '8');
    await settled();
    expect(row('R1')[2]).to.equal('−6.00');
    expect(row('R2')).to.deep.equal(['3.00', '0', '−3.00']);
    expect(row('V1')).to.deep.equal(row('R2'));
  });

  it('have a dash where there is no steady height', async () => {
    const made = await bench('B1 6 V + R1 4 Ω + S1 open + R2 2 Ω + S2 open');
    expect(cells(made).find(([first]) => first === 'R2')).to.deep.equal(['R2', '—', '—', '—']);
  });

  it('are written as the axis is: one prefix, and the decimal sign of the course', async () => {
    const made = await bench(pump);
    await made.show('B1 6 mV + R1 1 Ω + R2 3 Ω');
    expect(cells(made)[0]?.[1]).to.equal('Before / mV');
    expect(cells(made)[1]).to.deep.equal(['B1', '0', '6.00', '+6.00']);
    await made.show('B1 0,5 V + R1 1 Ω + R2 3 Ω', { course: 'comma' });
    expect(cells(made)[0]).to.deep.equal(['Component', 'Before / V', 'After / V', 'Change / V']);
    expect(cells(made)[2]).to.deep.equal(['R1', '0,500', '0,375', '−0,125']);
  });

  it('are closed at first, and opened by key', async () => {
    const made = await closed(pump);
    expect([details(made).open, made.all('table').length]).to.deep.equal([false, 0]);
    expect(made.texts('summary')).to.deep.equal(['Readings']);
    await made.tab();
    await sendKeys({ press: 'Tab' });
    await sendKeys({ press: 'Enter' });
    await eventually(() => made.all('td').length === 9);
  });

  it('are not there where the readings are covered', async () => {
    const made = await bench(pump);
    await made.show(pump, { hide: 'readings' });
    expect(made.all('details')).to.deep.equal([]);
  });

  it('scroll by themselves in a narrow page, and stand from left to right in any', async () => {
    const made = await bench(quay);
    Object.assign(made.page, { dir: 'rtl' });
    made.page.style.width = '120px';
    await settled();
    expect(details(made).getBoundingClientRect().width).to.be.at.most(120);
    const [first, , last] = made.all('thead th').map((head) => head.getBoundingClientRect().x);
    expect(first).to.be.lessThan(last!);
  });

  it('print where they are open', async () => {
    const made = await bench(quay);
    await emulateFeatures({}, 'print');
    await settled();
    expect(details(made).getBoundingClientRect().height).to.be.greaterThan(100);
    details(made).open = false;
    await settled();
    expect(details(made).getBoundingClientRect().height).to.equal(0);
  });

  const settings = [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const;
  for (const [name, features] of settings)
    it(`without a finding of axe in ${name}`, async () => {
      await emulateFeatures(features);
      const made = await bench(quay);
      Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
      await settled();
      await expect(made.element).to.be.accessible();
    });
});
