import { expect } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, held, pump, quay } from './bench.ts';

describe('the rule checker shows each rule where it holds, in symbols and in numbers', () => {
  it('in series the current is the same, and p.d.s and resistances add up', async () => {
    const made = await bench(pump, { rules: 'series' });
    expect(made.texts('[part=rule]')).to.deep.equal([
      'In series: the current is the same everywhere.',
      'In series: the p.d.s add up.',
      'In series: the resistances add up.',
    ]);
    expect(held(made)).to.deep.equal([
      ['IB1 = IR1 = IR2', '1.00 A = 1.00 A = 1.00 A', 'holds'],
      ['VB1 = VR1 + VR2', '9.00 V = 4.00 V + 5.00 V', 'holds'],
      ['Rtotal = RR1 + RR2', '9.00 Ω = 4.00 Ω + 5.00 Ω', 'holds'],
    ]);
  });

  it('in parallel the p.d. is the same, currents add up, and so do reciprocals', async () => {
    const made = await bench(quay, { rules: 'parallel' });
    expect(held(made)).to.deep.equal([
      ['VB1 = VR1 = VL1', '9.00 V = 9.00 V = 9.00 V', 'holds'],
      ['IA1 = IR1 + IA2', '4.50 A = 1.50 A + 3.00 A', 'holds'],
      ['1Rtotal = 1RR1 + 1RL1', '12.00 Ω = 16.00 Ω + 13.00 Ω', 'holds'],
      ['Rtotal < RL1', '2.00 Ω < 3.00 Ω', 'holds'],
    ]);
    expect(made.all('mfrac').length, 'reciprocals are set as fractions').to.equal(6);
  });

  it('both of Kirchhoff’s laws, Ohm’s law and the balance of power', async () => {
    const made = await bench(quay, { rules: 'junction loop ohm power' });
    expect(held(made)).to.deep.equal([
      ['IA1 = IR1 + IA2', '4.50 A = 1.50 A + 3.00 A', 'holds'],
      ['VB1 = VR1', '9.00 V = 9.00 V', 'holds'],
      ['VB1 = VL1', '9.00 V = 9.00 V', 'holds'],
      ['VR1 = IR1 × RR1', '9.00 V = 1.50 A × 6.00 Ω', 'holds'],
      ['VL1 = IL1 × RL1', '9.00 V = 3.00 A × 3.00 Ω', 'holds'],
      ['PB1 = PR1 + PL1', '40.5 W = 13.5 W + 27.0 W', 'holds'],
    ]);
  });

  it('says "rounded" where written figures miss by one: three thirds of a volt', async () => {
    const made = await bench('B1 1 V + R1 1 Ω + R2 1 Ω + R3 1 Ω', { rules: 'series-p.d.' });
    const [line] = held(made);
    expect(line![1]).to.match(/^1\.0+ V = 0\.3+ V \+ 0\.3+ V \+ 0\.3+ V$/);
    expect(line![2]).to.equal('holds, rounded');
  });

  it('follows a new setting', async () => {
    const made = await bench(pump, { rules: 'series-p.d.' });
    made.board.set('R1', '13');
    await settled();
    expect(held(made)).to.deep.equal([['VB1 = VR1 + VR2', '9.00 V = 6.50 V + 2.50 V', 'holds']]);
  });

  it('in the class’s own words, letter and decimal sign', async () => {
    const made = await bench(pump, { rules: 'series-voltage' });
    made.board.setAttribute('course', 'voltage U comma');
    await settled();
    expect(made.texts('[part=rule]')).to.deep.equal(['In series: the voltages add up.']);
    expect(held(made)[0]!.slice(0, 2)).to.deep.equal(['UB1 = UR1 + UR2', '9,00 V = 4,00 V + 5,00 V']);
  });
});

describe('the rules that do not apply are folded away, with the reason', () => {
  it('in one path there is nothing parallel: one line says so for four rules', async () => {
    const made = await bench(pump);
    const folded = made.all('details')[0] as HTMLDetailsElement;
    expect(folded.open).to.equal(false);
    expect(made.texts('summary')).to.deep.equal(['Do not apply here: 5']);
    const lines = made.texts('details [part=line]');
    expect(lines.find((line) => line.endsWith('There is only one path.'))).to.contain('At a junction');
    expect(lines.some((line) => line.includes('B1 is a supply, not a resistance.'))).to.equal(true);
  });

  it('and open where there is nothing else to show', async () => {
    const made = await bench(pump, { rules: 'junction' });
    expect((made.all('details')[0] as HTMLDetailsElement).open).to.equal(true);
    expect(made.part('why')).to.equal('There is only one path.');
  });
});

describe('where no rule can be checked at all, the reason stands alone', () => {
  it('a short circuit', async () => {
    const made = await bench('B1 6 V + A1');
    expect(made.part('obstacle')).to.match(/^B1 is short-circuited/);
    expect(made.all('[part=line], details').length).to.equal(0);
  });

  it('an open switch, until it is closed', async () => {
    const made = await bench('B1 6 V + S1 open + R1 12 Ω');
    expect(made.part('obstacle')).to.equal('No current: the circuit is open at S1.');
    expect(made.all('[part=line], details').length).to.equal(0);
    made.board.set('S1', 'closed');
    await settled();
    expect(made.part('obstacle')).to.equal('');
    expect(held(made)[0]![1]).to.equal('0.500 A = 0.500 A');
  });
});
