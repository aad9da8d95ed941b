import { expect } from '@open-wc/testing';
import { bench, named } from './bench.ts';

/** 6 V drive 0.25 A through each of two equal lamps of 24 Ω side by side, so 0.5 A in all. */
const quay = 'B1 6 V + A1 + ((A2 + L1 24 Ω) ∥ L2 24 Ω); V1 across L2';

describe('a meter shows, with its letter and in words', () => {
  const rows = [
    ['A2', 'A', '0.250 A', 'current through A2', 'Ammeter A2, 0.250 amperes'],
    ['V1', 'V', '6.00 V', 'p.d. across L2', 'Voltmeter V1, 6.00 volts'],
    ['I_A1', 'A', '0.500 A', 'current through A1', 'Ammeter, current through A1, 0.500 amperes'],
    ['V_B1', 'V', '6.00 V', 'p.d. across B1', 'Voltmeter, p.d. across B1, 6.00 volts'],
    ['R_total', 'Ω', '12.0 Ω', 'total resistance', 'Ohmmeter, total resistance, 12.0 ohms'],
    ['P_L1', 'W', '1.50 W', 'power of L1', 'Wattmeter, power of L1, 1.50 watts'],
    ['I_total', 'A', '0.500 A', 'total current', 'Ammeter, total current, 0.500 amperes'],
    ['E_B1', 'V', '6.00 V', 'e.m.f. of B1', 'Voltmeter, e.m.f. of B1, 6.00 volts'],
    ['P_dissipated', 'W', '3.00 W', 'power dissipated', 'Wattmeter, power dissipated, 3.00 watts'],
  ] as const;
  for (const [of, ...row] of rows)
    it(`${of}: ${row.slice(1, 3).join(', ')}`, async () => {
      const made = await bench(quay, { of });
      expect([made.part('symbol'), made.part('reading'), made.part('caption'), named(made)]).to.deep.equal(
        row,
      );
    });

  // 6 V across 6 Ω is 1 A, so 5 Ω of it have 5 V.
  const junctions = 'B1 6 V + @p + R1 2 Ω + R2 3 Ω + @q + R3 1 Ω; V1 @p–@q';
  for (const [of, heard] of [
    ['V_p_q', 'Voltmeter, p.d. between p and q, 5.00 volts'],
    ['V1', 'Voltmeter V1, 5.00 volts'],
  ] as const)
    it(`the p.d. between two named junctions, asked for as ${of}`, async () => {
      const made = await bench(junctions, { of });
      expect(made.part('reading')).to.equal('5.00 V');
      expect(made.part('caption')).to.equal('p.d. between p and q');
      expect(named(made)).to.equal(heard);
    });

  it('a thin space that does not break, between the number and its unit', async () => {
    const made = await bench(quay, { of: 'A2' });
    expect(made.element.shadowRoot!.querySelector('[part=reading]')!.textContent).to.equal('0.250\u202fA');
  });

  it('the only meter of the circuit, where nothing else is asked for', async () => {
    const made = await bench('B1 6 V + A7 + R1 12 Ω');
    expect(named(made)).to.equal('Ammeter A7, 0.500 amperes');
  });

  it('the sign of a meter whose leads are swapped', async () => {
    const made = await bench('B1 6 V + A1 reversed + R1 12 Ω', { of: 'A1' });
    expect(made.part('reading')).to.equal('−0.500 A');
  });

  it('both of two parts that a voltmeter is across', async () => {
    const made = await bench('B1 6 V + R1 4 Ω + (R2 6 Ω ∥ R3 3 Ω ∥ V1)', { of: 'V1' });
    expect(made.part('reading')).to.equal('2.00 V');
    expect(made.part('caption')).to.equal('p.d. across R2 ∥ R3');
  });

  it('the prefix and the figures that the page asks for', async () => {
    const made = await bench(quay, { of: 'A2', unit: 'mA', figures: '2' });
    expect(made.part('reading')).to.equal('250 mA');
    made.element.figures = 4;
    made.element.unit = '';
    await made.element.updateComplete;
    expect(made.part('reading')).to.equal('0.2500 A');
  });

  it('the page’s own caption', async () => {
    const made = await bench(quay, { of: 'A2', label: 'first light' });
    expect(made.part('caption')).to.equal('first light');
    expect(named(made)).to.equal('Ammeter A2, first light, 0.250 amperes');
  });
});

describe('a real meter takes part in the circuit', () => {
  // An ammeter of 1 Ω in series with 5 Ω on 6 V reads 1 A, where an ideal one would read 1.2 A.
  it('and its caption says its own resistance', async () => {
    const made = await bench('B1 6 V + A1 1 Ω + R1 5 Ω', { of: 'A1' });
    expect(made.part('reading')).to.equal('1.00 A');
    expect(made.part('caption')).to.equal('current through A1; its own resistance is 1 Ω');
  });

  it('unless that is for the pupil to find', async () => {
    const made = await bench('B1 6 V + A1 1 Ω hidden + R1 5 Ω', { of: 'A1' });
    expect(made.part('caption')).to.equal('current through A1');
  });
});
