import { expect, nextFrame } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, named } from './bench.ts';

/** 6 V across 12 Ω: 0.5 A. */
const line = 'B1 6 V + A1 + R1 [2..30] 12 Ω; V1 across R1';

describe('a digital meter with a range is like a real one', () => {
  // 3½ digits tell 2000 steps (common practice): 0.6 A in steps of 1 mA, 3 V and 20 V of 10 mV, 200 mA of 0.1 mA.
  const rows = [
    ['A1', '0.6 A', '', '0.500 A'],
    ['A1', '0.6 A', '0.02 A', '0.50 A'],
    ['A1', '1 A', '0.3 A', '0.6 A'],
    ['A1', '600 mA', '', '500 mA'],
    ['A1', '2 A', '', '0.500 A'],
    ['V1', '20 V', '', '6.00 V'],
    ['V1', '6 V', '', '6.00 V'],
    ['R_R1', '200 kΩ', '', '0.0 kΩ'],
  ] as const;
  for (const [of, range, resolution, text] of rows)
    it(`${of} in a range of ${range}${resolution && ` in steps of ${resolution}`}: ${text}`, async () => {
      const made = await bench(line, { of, range, resolution });
      expect(made.part('reading')).to.equal(text);
      expect(made.part('problem')).to.equal('');
    });

  it('a resolution alone rounds, without any end', async () => {
    const made = await bench(line, { of: 'V1', resolution: '0.5 V' });
    expect(made.part('reading')).to.equal('6.0 V');
  });

  it('beyond it: “overload”, and the voice says more than what', async () => {
    const made = await bench(line, { of: 'V1', range: '3 V' });
    expect(made.part('reading')).to.equal('overload');
    expect(named(made)).to.equal('Voltmeter V1, more than 3 volts');
    expect(made.part('caption')).to.equal('p.d. across R1');
    made.board.set('R1', '30');
    made.element.range = '6 V';
    await settled();
    expect(made.part('reading')).to.equal('6.00 V');
  });

  it('reversed leads give a minus', async () => {
    const made = await bench('B1 6 V + A1 reversed + R1 12 Ω', { of: 'A1', range: '0.6 A' });
    expect(made.part('reading')).to.equal('−0.500 A');
    expect(named(made)).to.equal('Ammeter A1, −0.500 amperes');
  });

  it('the course’s decimal sign and the wanted prefix are kept', async () => {
    const made = await bench(line, { of: 'A1', range: '0.6 A', unit: 'mA' });
    expect(made.part('reading')).to.equal('500 mA');
    await made.show(line, { course: 'comma' });
    made.element.unit = '';
    await settled();
    expect(made.part('reading')).to.equal('0,500 A');
  });

  it('it reads in the same steps while something moves, and exactly at rest', async () => {
    const made = await bench('B1 1 V + A1 + R1 [1..9] 3 Ω', { of: 'A1', range: '1 A', resolution: '0.05 A' });
    expect(made.part('reading')).to.equal('0.35 A');
    made.board.move('R1', '6');
    await settled();
    expect(made.part('reading')).to.equal('0.15 A');
    made.board.set('R1', '8'); // 0.125 A is half-way
    await nextFrame();
    await made.element.updateComplete;
    expect(made.part('reading')).to.equal('0.15 A');
  });

  it('what cannot be read is still said in words', async () => {
    const made = await bench('B1 6 V + S1 open + A1 + R1 12 Ω', { of: 'A1', range: '0.6 A' });
    expect(made.part('reading')).to.equal('no current');
    await made.show('B1 6 V + A1 + R1 12 Ω', { hide: 'readings' });
    expect(made.part('reading')).to.equal('?');
    await made.show('B1 6 V + A1', { hide: '' });
    expect(made.part('caption')).to.equal('The circuit has a fault, so there is no reading.');
  });
});

describe('a wish that cannot be had costs one sentence, and nothing else', () => {
  const rows = [
    [
      { range: '3 V' },
      'not a range',
      '“3 V” is not a range of this meter; write the most that it can show, in amperes, such as 3 A, or both ends, such as -1..1 A.',
    ],
    [
      { resolution: 'fine' },
      'not a resolution',
      '“fine” is not a resolution of this meter; write the smallest step that it tells apart, in amperes, such as 0.02 A.',
    ],
    [{ face: 'neddle' }, 'not a choice', '“neddle” is not a face; did you mean needle?'],
    [{ face: 'xyz', range: '?' }, 'not a choice', '“xyz” is not a face; choose digits or needle.'],
  ] as const;
  for (const [wish, code, sentence] of rows)
    it(sentence, async () => {
      const problems: string[] = [];
      const listen = ({ detail }: WindowEventMap['rheolet-problem']): void => void problems.push(detail.code);
      window.addEventListener('rheolet-problem', listen);
      const made = await bench(line, { of: 'A1', board: 'quay', ...wish });
      made.board.set('R1', '24');
      await settled();
      window.removeEventListener('rheolet-problem', listen);
      expect(made.part('problem')).to.equal(sentence);
      expect(made.texts('[part=problem]')).to.have.length(1);
      expect(made.part('reading')).to.equal('0.250 A');
      expect(problems, 'said once').to.deep.equal([code]);
    });
});
