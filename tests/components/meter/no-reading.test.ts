import { expect } from '@open-wc/testing';
import { bench, named } from './bench.ts';

describe('a meter that has nothing to read says so', () => {
  it('an open branch has no current', async () => {
    const made = await bench('B1 6 V + A1 + ((S1 open + A2 + L1 8 Ω) ∥ L2 8 Ω)', { of: 'A2' });
    expect(made.part('reading')).to.equal('no current');
    expect(made.part('caption')).to.equal('current through A2');
    expect(named(made)).to.equal('Ammeter A2, no current');
  });

  it('a voltmeter with one lead on a part joined to nothing has no steady reading', async () => {
    const made = await bench('B1 6 V + S1 open + R1 5 Ω + S2 open; V1 across S1', { of: 'V1' });
    expect(made.part('reading')).to.equal('no steady reading');
  });

  it('a short-circuited ideal supply has none, and the reason stands in the caption', async () => {
    const made = await bench('B1 6 V + A1', { of: 'A1' });
    expect(made.part('reading')).to.equal('—');
    expect(made.part('caption')).to.equal('The circuit has a fault, so there is no reading.');
    expect(named(made)).to.equal('Ammeter A1, The circuit has a fault, so there is no reading.');
  });

  it('a total that is not defined with two supplies names what may be asked instead', async () => {
    const made = await bench('B1 6 V + B2 3 V + R1 5 Ω', { of: 'I_total' });
    expect(made.part('reading')).to.equal('—');
    expect(made.part('caption')).to.contain('several supplies').and.contain('I_B1').and.contain('I_B2');
  });
});

describe('a meter that cannot be set up says what to write', () => {
  const line = 'B1 6 V + A1 + (R1 12 Ω ∥ (A2 + L1 8 Ω))';
  const rows = [
    ['R1', 'not a meter', 'R1 is not a meter. Ask for what is to be read: I_R1, V_R1 or P_R1.'],
    ['A3', 'no such component', 'There is no A3 in this circuit; did you mean A1?'],
    ['', 'which meter', 'Say which meter is meant, by of="…": A1 or A2.'],
  ] as const;
  for (const [of, code, sentence] of rows)
    it(sentence, async () => {
      const problems: unknown[] = [];
      const listen = ({ detail }: WindowEventMap['rheolet-problem']): void => void problems.push(detail);
      window.addEventListener('rheolet-problem', listen);
      const made = await bench(line, of ? { of, board: 'quay' } : { board: 'quay' });
      await made.show(`${line} # again`);
      window.removeEventListener('rheolet-problem', listen);
      expect(made.part('problem')).to.equal(sentence);
      expect(made.element.shadowRoot!.querySelector('[role=img]')).to.equal(null);
      expect(problems, 'said once').to.deep.equal([{ board: 'quay', id: of, code, text: sentence }]);
    });

  it('a quantity that is not there suggests one that is', async () => {
    const made = await bench(line, { of: 'I_R2' });
    expect(made.part('problem')).to.match(/“I_R2” is not a quantity of this circuit; did you mean I_\w\d\?/);
  });

  it('a circuit without a meter suggests a quantity', async () => {
    const made = await bench('B1 6 V + R1 12 Ω');
    expect(made.part('problem')).to.contain('The circuit has no meter.');
  });

  it('a unit of something else is refused', async () => {
    const made = await bench(line, { of: 'A1', unit: 'mV' });
    expect(made.part('problem')).to.equal('“mV” is not a unit of this reading, which is in amperes.');
  });

  it('and it reads again once its circuit has what it asks for', async () => {
    const made = await bench('B1 6 V + R1 12 Ω', { of: 'A1' });
    expect(made.part('problem')).to.contain('There is no A1');
    await made.show('B1 6 V + A1 + R1 12 Ω');
    expect(made.part('problem')).to.equal('');
    expect(made.part('reading')).to.equal('0.500 A');
  });
});

describe('what the pupil is to work out is not given away', () => {
  it('covered readings show ? and are nowhere in the element', async () => {
    const made = await bench('B1 6 V + A1 + R1 12 Ω', { of: 'A1' });
    await made.show('B1 6 V + A1 + R1 12 Ω', { hide: 'readings' });
    expect(made.part('reading')).to.equal('?');
    expect(named(made)).to.equal('Ammeter A1, covered: predict it first');
    expect(made.everything).to.not.contain('0.5');
  });

  for (const of of ['R_R1', 'r_B1', 'E_B1'])
    it(`${of} of a hidden component is not read`, async () => {
      const made = await bench('B1 6 V r 1 Ω hidden + A1 + R1 11 Ω hidden', { of });
      expect(made.part('reading')).to.equal('?');
      expect(made.everything).to.not.match(/11\.0|6\.00|1\.00/);
    });
});
