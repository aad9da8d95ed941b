// A graph where a quantity has no value: at a fault, on an open branch, for a component that conducts nothing.
import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { bench, corners, heard, plane, type GraphBench } from './bench.ts';

/** At 0 Ω nothing limits the current. */
const short = 'B1 6 V + R1 [0..20 step 1] 5 Ω';

const press = async (made: GraphBench, key: string): Promise<void> => {
  await sendKeys({ press: key });
  await made.element.updateComplete;
};
const rows = (made: GraphBench): string[] =>
  made.all('tbody tr').map(({ textContent }) => textContent.trim().replace(/\s+/g, ' '));

describe('where a quantity has no value', () => {
  it('its curve begins after the gap, and nothing is drawn in it', async () => {
    const made = await bench(short, { of: 'I_R1' });
    const points = corners(made, 'I_R1');
    expect(points.length).to.be.above(100);
    expect(points[0]![0]).to.be.above(52);
    const path = made.all('.curve')[0]?.getAttribute('d') ?? '';
    expect(path.match(/M/g)).to.have.length(1);
    expect(path).to.not.match(/NaN|undefined|Infinity/);
  });

  it('the reading there is a dash, and is heard with its reason, not as a number', async () => {
    const made = await bench(short, { of: 'I_R1' });
    await made.tab();
    await press(made, 'Home');
    expect(plane(made).getAttribute('aria-valuenow')).to.equal('0');
    expect(heard(made)).to.contain('resistance of R1 0 ohms');
    expect(heard(made)).to.contain('no reading');
    expect(heard(made)).to.not.match(/\d amperes|NaN|Infinity/);
    expect(made.part('caption').replace(/\s/g, ' ')).to.equal('RR1 = 0 Ω, IR1 = —');
    expect(made.all('circle.read'), 'no dot').to.have.length(0);
    await press(made, 'ArrowRight');
    expect(heard(made)).to.contain('current through R1 6.00 amperes');
  });

  it('its values have a dash in that row, in the table and as CSV', async () => {
    const made = await bench(short, { of: 'I_R1' });
    made.element.shadowRoot!.querySelector('details')!.open = true;
    await made.element.updateComplete;
    await new Promise(requestAnimationFrame);
    expect(rows(made)[0]).to.equal('0 —');
    const [, first = ''] = made.element.toCSV().split('\r\n');
    expect(first).to.match(/^0,—$/);
    await expect(made.element).to.be.accessible();
  });

  it('a circuit with a fault at every setting has no curve, but a sentence', async () => {
    const made = await bench('B1 6 V + A1 + R1 [1..20 step 1] 5 Ω; B2 3 V @p–@q; B3 4 V @p–@q', {
      of: 'I_R1',
    });
    expect(made.all('.curve').filter((curve) => curve.getAttribute('d'))).to.have.length(0);
    expect(made.element.shadowRoot!.textContent).to.not.match(/NaN|undefined|Infinity/);
  });

  it('on an open branch there is nothing to see but a level line at 0, which is heard as what it is', async () => {
    const made = await bench('B1 6 V + S1 open + R1 [4..40] 12 Ω', { of: 'I_R1' });
    const heights = corners(made, 'I_R1').map(([, y]) => y);
    expect(new Set(heights).size).to.be.at.most(1);
    await made.tab();
    await press(made, 'End');
    expect(heard(made)).to.contain('resistance of R1 40 ohms');
    expect(heard(made)).to.contain('no current');
  });
});
