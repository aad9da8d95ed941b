import { expect } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, corners, dots, heard, pump, quay } from './bench.ts';

describe('a graph shows', () => {
  it('a curve for each quantity, with its name beside it and its unit above', async () => {
    const made = await bench(quay, { of: 'I_A1 I_A2 I_R1' });
    expect(made.all('.curve').map(({ dataset }) => dataset['of'])).to.deep.equal(['I_A1', 'I_A2', 'I_R1']);
    expect(made.texts('.name')).to.deep.equal(['IA1', 'IA2', 'IR1']);
    expect(made.part('up')).to.equal('I / A');
    expect(made.part('along')).to.equal('resistance of R1 / Ω');
    expect(new Set(made.all('.curve').map(({ dataset }) => dataset['dash'])).size).to.equal(3);
  });

  it('curves as high as what they stand for: the one for the lamp is level, the others fall', async () => {
    const made = await bench(quay, { of: 'I_A1 I_A2 I_R1' });
    const heights = (name: string): number[] => corners(made, name).map(([, y]) => y);
    const level = heights('I_A2');
    expect(Math.max(...level) - Math.min(...level)).to.be.at.most(0.1);
    const [all, control] = [heights('I_A1'), heights('I_R1')];
    for (let k = 1; k < all.length; k++) expect(all[k]! >= all[k - 1]!).to.equal(true);
    // Height over the foot adds up at every setting, to a tenth of a pixel each.
    const foot = Number(
      /M[\d.]+ ([\d.]+)H/.exec(
        made
          .all('.axis')[0]!
          .getAttribute('d')!
          .split('V')[1]!
          .replace(/^[\d.]+/, ''),
      )![1],
    );
    for (const [k, y] of all.entries())
      expect(foot - y).to.be.closeTo(foot - level[k]! + (foot - control[k]!), 0.16);
  });

  it('a mark on each curve where the board stands, which follows its slider while the curves stay', async () => {
    const made = await bench(quay, { of: 'I_A1 I_R1' });
    const before = corners(made, 'I_A1');
    const [first] = dots(made, 'dot');
    expect(dots(made, 'dot')).to.have.length(2);
    made.board.move('R1', '40');
    await settled();
    const [moved] = dots(made, 'dot');
    expect(moved![0]).to.be.above(first![0]);
    expect(moved).to.deep.equal(before.at(-1));
    expect(corners(made, 'I_A1')).to.deep.equal(before);
  });

  it('other curves when anything else has changed, under the same axis at least', async () => {
    const made = await bench('B1 [1..12] 6 V + R1 [2..20] 10 Ω', { of: 'I_R1', against: 'R1' });
    const top = (): string => made.texts('.mark.up').at(-1)!;
    expect(top()).to.equal('3');
    const high = corners(made, 'I_R1')[0]!;
    made.board.set('B1', '3');
    await settled();
    expect(top()).to.equal('3');
    expect(corners(made, 'I_R1')[0]![1]).to.be.above(high[1]);
    made.board.set('B1', '12');
    await settled();
    expect(Number(top())).to.be.at.least(6);
  });

  it('where the board stood when its readings were held', async () => {
    const made = await bench(quay, { of: 'I_A1 I_R1' });
    expect(dots(made, 'held')).to.deep.equal([]);
    const held = dots(made, 'dot');
    (made.board as unknown as { hold(): void }).hold();
    made.board.set('R1', '30');
    await settled();
    expect(dots(made, 'held')).to.deep.equal(held);
    expect(dots(made, 'dot')).not.to.deep.equal(held);
  });

  it('the total current where nothing is asked for, and the point in words under it', async () => {
    const made = await bench(pump, { against: 'R1' });
    expect(made.all('.curve').map(({ dataset }) => dataset['of'])).to.deep.equal(['I_total']);
    expect(made.part('caption').replace(/\s/g, ' ')).to.equal('RR1 = 4 Ω, Itotal = 2.00 A');
    expect(heard(made)).to.equal('resistance of R1 4 ohms: total current 2.00 amperes');
  });

  it('what goes over powers of ten in equal steps', async () => {
    const made = await bench('B1 5 V + R1 10 kΩ + LDR1 5 kΩ', { of: 'V_LDR1', against: 'light' });
    expect(made.part('along')).to.equal('light / lx');
    const places = made.all('.mark:not(.up)').map((mark) => Number(mark.getAttribute('x')));
    const gaps = places.slice(1).map((place, k) => place - places[k]!);
    for (const gap of gaps) expect(gap).to.be.closeTo(gaps[0]!, 0.2);
    expect(heard(made)).to.match(/^light 10 lux: p\.d\. across LDR1/);
  });

  it('p.d.s by the letter and the word of the course', async () => {
    const made = await bench(quay, { of: 'V_R1' });
    await made.show(quay, { course: 'voltage U' });
    expect(heard(made)).to.match(/: voltage across R1 6.00 volts$/);
    expect(made.part('up')).to.equal('U / V');
    expect(made.texts('.name')).to.deep.equal(['UR1']);
  });
});

describe('a graph lets its page get narrower', () => {
  for (const [name, layout] of [
    ['in a column of a grid', { display: 'grid', gridTemplateColumns: '1fr 1fr' }],
    ['beside text in a row', { display: 'flex' }],
  ] as const)
    it(name, async () => {
      const made = await bench(quay, { of: 'I_A1' });
      const text = document.createElement('p');
      text.textContent = 'What is to be seen in the graph.';
      const frame = document.createElement('div');
      Object.assign(frame.style, layout, { inlineSize: '1400px' });
      made.element.parentElement!.append(frame);
      frame.append(text, made.element);
      await settled();
      await settled();
      const width = (): number => made.all('svg')[0]!.getBoundingClientRect().width;
      expect(width()).to.equal(640);
      frame.style.inlineSize = '640px';
      await settled();
      await settled();
      expect(width()).to.be.below(640).and.at.least(240);
      expect(frame.scrollWidth).to.equal(640);
      frame.remove();
    });
});

describe('a graph that cannot be drawn says why', () => {
  const cases = [
    [
      quay,
      { of: 'I_A1 V_R1' },
      'The upright axis has one unit, but I_A1 is in A and V_R1 is in V. Draw a graph for each.',
    ],
    [quay, { of: 'I_A9' }, /I_A9/],
    ['B1 6 V + R1 12 Ω', { of: 'I_R1' }, 'Say what is turned, by against="…": B1 or r_B1.'],
    ['B1 6 V + R1 [4..40] 12 Ω + B2 3 V', { of: 'R_total' }, /B1|supplies/],
  ] as const;
  for (const [circuit, attributes, sentence] of cases)
    it(JSON.stringify(attributes), async () => {
      const made = await bench(circuit, attributes);
      expect(made.all('svg')).to.deep.equal([]);
      if (typeof sentence === 'string') expect(made.part('problem')).to.equal(sentence);
      else expect(made.part('problem')).to.match(sentence);
    });

  it('covered, while the pupil is to predict', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    await made.show(quay, { hide: 'readings' });
    expect(made.part('problem')).to.equal('covered: predict it first');
    expect(made.everything).not.to.match(/\d\.\d/);
  });

  it('the value of what is kept from the pupil', async () => {
    const made = await bench('B1 6 V + R1 [4..40] 12 Ω + R2 7 Ω hidden', { of: 'R_R2' });
    expect(made.all('svg')).to.deep.equal([]);
    expect(made.everything).not.to.match(/7(\.00)? ?Ω/);
  });
});
