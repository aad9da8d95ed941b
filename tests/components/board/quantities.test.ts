import { expect, nextFrame } from '@open-wc/testing';
import { boardWith, drag, quayLine, text, type Bench } from './bench.ts';
import { eventually } from '../eventually.ts';

const plain = (element: Element): string => text(element).replace(/[\s\u202f]/g, ' ');
const symbols = (bench: Bench): string[] => bench.all('.quantity').map(plain).sort();
/** What follows the symbol of a quantity. */
const reading = (bench: Bench, name: string): string => plain(bench.find(`.digits [data-value="${name}"]`));

describe('quantities written beside their components', () => {
  it('are a current with an arrow on its wire, and a p.d. with a line beside its component', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R1 V_L1=' });
    expect(symbols(bench)).to.deep.equal(['IR1', 'VL1']);
    expect(bench.all('[data-arrow]').map((each) => each.getAttribute('class'))).to.deep.equal([
      'current',
      'voltage',
    ]);
    // The lamp is across 6 V.
    expect(reading(bench, 'V_L1')).to.equal('= 6.00 V');
    expect(bench.all('.digits [data-value="I_R1"]')).to.deep.equal([]);
    await expect(bench.board).to.be.accessible();
  });

  it('follow a slider, and come and go with the attribute', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R1=' });
    expect(reading(bench, 'I_R1')).to.equal('= 0.500 A');
    // The twentieth step from 4 Ω on: 24 Ω across 6 V.
    drag(bench.slider, 20, true);
    await eventually(() => reading(bench, 'I_R1') === '= 0.250 A', 'the reading follows');
    bench.board.setAttribute('quantities', 'V_R1=?');
    await eventually(() => symbols(bench)[0] === 'VR1', 'the attribute is followed');
    expect(reading(bench, 'V_R1')).to.match(/^= _+ V$/);
    bench.board.removeAttribute('quantities');
    await eventually(() => bench.all('.quantity').length === 0, 'nothing is written any more');
  });

  it('may be asked for after the circuit was drawn', async () => {
    const bench = await boardWith(quayLine);
    bench.board.quantities = 'I_L1';
    await eventually(() => symbols(bench).length === 1, 'it is written');
  });

  it('are in the letters of the course, named with either', async () => {
    const bench = await boardWith(quayLine, { course: 'voltage U', quantities: 'U_R1 V_L1' });
    expect(symbols(bench)).to.deep.equal(['UL1', 'UR1']);
  });

  it('leave a blank where the readings are kept back, until they are shown', async () => {
    const bench = await boardWith(quayLine, { hide: 'readings', quantities: 'I_L1=' });
    expect(reading(bench, 'I_L1')).to.match(/^= _+ A$/);
    expect(bench.find('desc').textContent).not.to.contain('0.750');
    bench.button('Show the readings').click();
    await eventually(() => reading(bench, 'I_L1') === '= 0.750 A', 'the reading is shown');
  });

  it('show the direction of a current by its sign, and 0 where none flows', async () => {
    // Current runs from left to right along a line, so through a component turned round against its arrow.
    const turned = await boardWith('B1 6 V + A1 reversed + R1 12 Ω', { quantities: 'I_A1=' });
    expect(reading(turned, 'I_A1')).to.equal('= −0.500 A');
    const open = await boardWith('B1 6 V + S1 + R1 12 Ω', { quantities: 'I_R1= V_S1=' });
    expect(reading(open, 'I_R1')).to.equal('= 0 A');
    expect(reading(open, 'V_S1')).to.equal('= 6.00 V');
  });

  it('are told in the words of the diagram', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R1 V_R1= I_L1=?' });
    expect(bench.find('desc').textContent).to.contain(
      'Written beside the components: the current through R1; the p.d. across R1, 6.00 volts; the current through L1, with a blank for its value.',
    );
  });

  it('that the circuit does not have are named in a sentence, and the others are written', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R9 P_R1 V_R1' });
    expect(symbols(bench)).to.deep.equal(['VR1']);
    expect(bench.notes).to.contain('“I_R9” is no current or p.d. of a component here: write I_B1 or V_B1');
  });

  it('do not stand beside half of a symbol, as a sentence says', async () => {
    const track = await boardWith('B1 6 V + potentiometer R1a 30 Ω + potentiometer R1b 70 Ω', {
      quantities: 'V_R1a= V_B1',
    });
    expect(symbols(track)).to.deep.equal(['VB1']);
    expect(track.notes).to.contain(
      '“V_R1a=” is not written: no current or p.d. stands beside one part of a potentiometer.',
    );
  });

  it('are in pictures as they are on the board', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R1= V_L1=?', hide: 'labels' });
    const picture = new DOMParser().parseFromString(await bench.board.toSVG(), 'image/svg+xml');
    const found = [...picture.querySelectorAll('.quantity, .reading')].map(plain);
    expect(found.filter((each) => !each.includes('_')).sort()).to.deep.equal(['= 0.500 A', 'IR1', 'VL1']);
    expect(picture.querySelectorAll('[data-arrow]').length).to.equal(2);
    const png = await bench.board.toPNG();
    expect(png?.size).to.be.greaterThan(0);
  });

  it('stand where they do in a page that runs right to left', async () => {
    const bench = await boardWith(quayLine, { quantities: 'I_R1= V_L1=' });
    const places = (): number[] => {
      const { left } = bench.find('.still').getBoundingClientRect();
      return bench
        .all('.quantity, .digits text, [data-arrow]')
        .map((each) => Math.round(each.getBoundingClientRect().left - left));
    };
    const before = places();
    document.documentElement.dir = 'rtl';
    await nextFrame();
    expect(places()).to.deep.equal(before);
    document.documentElement.removeAttribute('dir');
  });
});
