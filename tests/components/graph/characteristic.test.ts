import { expect } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { bench, corners, dots, heard, plane } from './bench.ts';

/** A wire, a filament lamp and an LED side by side on a supply. */
const pier = 'B1 [0..12 step 0.5] 6 V + (R1 20 Ω ∥ L1 12 V 6 W filament ∥ (R2 200 Ω + LED1 2 V 20 mA))';

describe('the characteristic of a component', () => {
  it('is its current against its own p.d., both ways, with its name and the point where it stands', async () => {
    const made = await bench(pier, { against: 'V_R1' });
    expect(made.all('.curve').map(({ dataset }) => dataset['of'])).to.deep.equal(['I_R1']);
    expect(made.part('up')).to.equal('I / A');
    expect(made.part('along')).to.equal('p.d. across R1 / V');
    expect(heard(made)).to.equal('p.d. across R1 6.00 volts: current through R1 0.300 amperes');
    expect(plane(made).getAttribute('aria-valuemin')).to.equal('-20');
    expect(plane(made).getAttribute('aria-valuemax')).to.equal('20');
  });

  it('of a resistor is straight through the origin (Ohm’s law)', async () => {
    const made = await bench(pier, { against: 'V_R1' });
    const line = corners(made, 'I_R1');
    const [first, last] = [line[0]!, line.at(-1)!];
    for (const [x, y] of line) {
      const share = (x - first[0]) / (last[0] - first[0]);
      expect(y).to.be.closeTo(first[1] + share * (last[1] - first[1]), 0.2);
    }
  });

  it('of a filament bends towards the p.d. axis, alike in both directions; its rating lies on it', async () => {
    const made = await bench(pier, { against: 'V_L1' });
    const line = corners(made, 'I_L1');
    const middle = (line.length - 1) / 2;
    const origin = line[middle]!;
    const height = (place: number): number => origin[1] - line[place]![1];
    for (let k = 1; k <= middle; k++) expect(height(middle + k)).to.be.closeTo(-height(middle - k), 0.2);
    const slopes = [1, Math.round(middle / 2), middle].map((k) => height(middle + k) / k);
    expect(slopes[0]! > slopes[1]! && slopes[1]! > slopes[2]!).to.equal(true);
    made.board.set('B1', '12');
    await settled();
    expect(heard(made)).to.equal('p.d. across L1 12.0 volts: current through L1 0.500 amperes');
  });

  it('of an LED: next to nothing backwards, its rated current at its forward p.d.', async () => {
    const made = await bench(pier, { against: 'V_LED1' });
    const line = corners(made, 'I_LED1');
    const foot = Math.max(...line.map(([, y]) => y));
    const backwards = line.slice(0, Math.floor(line.length / 2));
    for (const [, y] of backwards) expect(y).to.be.closeTo(foot, 0.2);
    const rows = made
      .all('tbody tr')
      .map((row) => [...row.children].map(({ textContent }) => textContent.trim()));
    expect(rows.find(([volts]) => Number(volts) === 2)?.[1]).to.equal('0.0200');
  });

  it('keeps its curve and its axis while the supply is turned, and the mark goes along the curve', async () => {
    const made = await bench(pier, { against: 'V_L1' });
    const before = [corners(made, 'I_L1'), made.texts('.mark')];
    const seen: (readonly [number, number])[] = [];
    for (const volts of ['0', '3', '9', '12']) {
      made.board.set('B1', volts);
      await settled();
      seen.push(dots(made, 'dot')[0]!);
    }
    expect([corners(made, 'I_L1'), made.texts('.mark')]).to.deep.equal(before);
    for (let k = 1; k < seen.length; k++) {
      expect(seen[k]![0]).to.be.above(seen[k - 1]![0]);
      expect(seen[k]![1]).to.be.below(seen[k - 1]![1]);
    }
  });

  it('is that of the whole component, also while it is taken out of the board', async () => {
    const made = await bench(pier, { against: 'V_R1' });
    const before = corners(made, 'I_R1');
    made.board.set('R1', 'broken');
    await settled();
    expect(corners(made, 'I_R1')).to.deep.equal(before);
  });

  it('goes with the temperature of a thermistor', async () => {
    const made = await bench('B1 6 V + T1 100 Ω + R1 100 Ω', { against: 'V_T1' });
    const before = corners(made, 'I_T1').at(-1)!;
    made.board.set('temperature', '60');
    await settled();
    expect(corners(made, 'I_T1').at(-1)![1] === before[1]).to.equal(false);
  });

  it('of what has none is not drawn, nor what is not its own', async () => {
    const made = await bench(pier, { against: 'V_B1' });
    expect(made.part('problem')).to.match(/^V_B1 cannot be turned here/);
    made.element.setAttribute('against', 'V_L1');
    made.element.setAttribute('of', 'I_R1');
    await made.element.updateComplete;
    expect(made.part('problem')).to.equal(
      'I_R1 is not of the component whose characteristic is drawn; ask for I_L1.',
    );
  });
});
