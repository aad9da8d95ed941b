import { expect } from '@open-wc/testing';
import '../../../src/components/graph/define.ts';
import { RheoletGraph } from '../../../src/components/graph/index.ts';
import '../../../src/components/resistor/define.ts';
import '../../../src/components/value/define.ts';
import { RheoletValue } from '../../../src/components/value/index.ts';
import { boardWith, comparing, drag, sliderOf, text, type Bench } from './bench.ts';

/** The dimmer of the lighthouse's lamp. */
const dimmer = 'B1 6 V + potentiometer R1b 70 Ω + (potentiometer R1a [0..100 step 1] 30 Ω ∥ L1 6 V 0.6 W)';

const volts = ({ board }: Bench, id = 'L1'): number => Number(board.solution?.quantity(`V_${id}`));

async function slide(bench: Bench, setting: number, letGo = true): Promise<void> {
  drag(bench.slider, setting, letGo);
  await bench.settled();
  await bench.settled();
}

describe('a potentiometer on a board', () => {
  it('is one symbol with one slider, which dims the lamp from end to end', async () => {
    const bench = await boardWith(dimmer);
    expect(bench.all('rheolet-resistor').length).to.equal(1);
    expect(bench.all('[data-id^="R1"]').length).to.equal(2);
    expect(
      bench.all('[data-id="R1b"] .filled').length + bench.all('[data-id="R1a"] .filled').length,
    ).to.equal(1);
    await slide(bench, 0);
    expect(volts(bench)).to.equal(0);
    expect(bench.notes).to.equal('');
    await slide(bench, 100);
    expect(volts(bench)).to.equal(6);
    expect(bench.notes).to.equal('');
  });

  it('shows both resistances while the contact slides, and moves nothing else of the drawing', async () => {
    const bench = await boardWith(dimmer);
    const still = (): string[] =>
      bench
        .all('svg.still path, svg.still rect')
        .map((each) => [...each.attributes].map(({ value }) => value).join());
    const before = still();
    const ribbons = bench.ribbons;
    await slide(bench, 45, false);
    expect([bench.digits('R1a'), bench.digits('R1b')]).to.deep.equal(['45 Ω', '55 Ω']);
    expect(bench.ribbons).not.to.equal(ribbons);
    await slide(bench, 46);
    expect([bench.digits('R1a'), bench.digits('R1b')]).to.deep.equal(['46 Ω', '54 Ω']);
    expect(still()).to.deep.equal(before);
  });

  it('tells what both parts have become, is undone and reset in one', async () => {
    const bench = await boardWith(dimmer);
    const heard: string[] = [];
    bench.board.addEventListener('rheolet-change', ({ detail: { quantity, text: now } }) =>
      heard.push(`${quantity} ${now.replace(/\s/g, ' ')}`),
    );
    bench.board.set('R1b', '20');
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ R1b: '20', R1a: '80' });
    bench.button('Undo').click();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({});
    expect(heard).to.have.members(['R_R1a 30 Ω', 'R_R1b 70 Ω']);
    bench.button('Redo').click();
    await bench.settled();
    expect(bench.slider.valueAsNumber).to.equal(80);
    bench.button('Reset').click();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({});
    expect(bench.slider.valueAsNumber).to.equal(30);
  });

  it('takes the settings of a link, and of another circuit as far as they fit', async () => {
    const bench = await boardWith(dimmer);
    bench.board.settings = { R1a: '80', R1b: '20' };
    await bench.settled();
    expect(bench.slider.valueAsNumber).to.equal(80);
    bench.board.setAttribute('circuit', dimmer.replace('0.6 W', '1.2 W'));
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ R1b: '20', R1a: '80' });
    bench.board.setAttribute('circuit', dimmer.replace('[0..100 step 1]', '[0..60 step 1]'));
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({});
  });

  it('is turned by either part from anywhere in the page, and both sliders keep step', async () => {
    const bench = await boardWith(dimmer);
    const own = document.createElement('rheolet-resistor');
    own.setAttribute('of', 'R1b');
    bench.board.after(own);
    await bench.settled();
    expect(sliderOf(own).valueAsNumber).to.equal(70);
    drag(sliderOf(own), 25, true);
    await bench.settled();
    await bench.settled();
    expect(bench.slider.valueAsNumber).to.equal(75);
    expect(own.value).to.equal('25');
    own.remove();
  });

  it('is read as a whole beside the board: its resistance stays, its p.d. follows, and of its current it is said why not', async () => {
    const bench = await boardWith(dimmer.replace('L1 6 V 0.6 W', 'L1 60 Ω') + ' + R2 20 Ω');
    const values = ['R_R1', 'V_R1', 'I_R1'].map((of) => {
      const value = new RheoletValue();
      value.of = of;
      bench.board.after(value);
      return value;
    });
    const shown = async (): Promise<string[]> => {
      await bench.settled();
      await Promise.all(values.map((value) => value.updateComplete));
      return values.map(
        ({ shadowRoot }) =>
          shadowRoot?.querySelector('[part=value]')?.textContent.trim().replace(/\s/g, ' ') ?? '',
      );
    };
    // 70 Ω + 30 Ω ∥ 60 Ω = 90 Ω of 110 Ω; at the end 100 Ω ∥ 60 Ω = 37.5 Ω of 57.5 Ω.
    expect((await shown()).slice(0, 2)).to.deep.equal(['100 Ω', '4.91 V']);
    await slide(bench, 100);
    expect((await shown()).slice(0, 2)).to.deep.equal(['100 Ω', '3.91 V']);
    expect(values[2]?.shadowRoot?.textContent).to.contain('different currents; ask for I_R1a or I_R1b.');
    for (const value of values) value.remove();
  });

  it('says what is too far', async () => {
    const bench = await boardWith(dimmer.replace('[0..100 step 1] ', ''));
    expect(bench.all('rheolet-resistor')).to.deep.equal([]);
    expect(() => {
      bench.board.set('R1a', '101');
    }).to.throw(/outside/);
  });

  it('is held and compared like any other resistor', async () => {
    const bench = await boardWith(dimmer);
    bench.board.hold();
    await comparing(bench);
    await slide(bench, 40);
    const rows = bench.all('[part=table] tbody tr').map(text);
    expect(rows.find((row) => row.startsWith('R1a'))).to.match(/40\.0 Ω rose/);
    expect(rows.find((row) => row.startsWith('R1b'))).to.match(/60\.0 Ω fell/);
  });

  it('is what a graph goes along, where nothing else can be turned', async () => {
    const bench = await boardWith(dimmer);
    const graph = new RheoletGraph();
    graph.setAttribute('of', 'V_L1 V_R1b');
    bench.board.after(graph);
    await bench.settled();
    await graph.updateComplete;
    expect(text(graph.shadowRoot?.querySelector('[part=problem]') ?? document.createElement('i'))).to.equal(
      '',
    );
    expect(graph.shadowRoot?.querySelectorAll('svg path[class*=curve]').length).to.be.above(0);
    graph.remove();
  });

  it('is as wide in its ribbons at its ends as there is room for', async () => {
    const bench = await boardWith(
      'B1 6 V + potentiometer R1b 99 Ω + (potentiometer R1a [0..100 step 1] 1 Ω ∥ L1 6 V 6 W)',
    );
    const widths: number[] = [];
    for (const at of [0, 50, 100]) {
      await slide(bench, at);
      widths.push(Number(bench.board.solution?.quantity('I_B1')));
    }
    expect(widths.at(-1)).to.be.closeTo(1.06, 1e-9);
    expect(bench.ribbons).not.to.equal('');
  });

  it('warns of a track that carries more than it may, until it does not', async () => {
    const bench = await boardWith(dimmer.replace('30 Ω', '30 Ω 0.4 W'));
    expect(bench.notes).to.match(/^Caution: R1b carries/);
    await slide(bench, 0);
    expect(bench.notes).to.equal('');
  });

  it('can be walked along and altered part by part, in an accessible board', async () => {
    const bench = await boardWith(dimmer);
    bench.component('R1a').focus();
    await bench.settled();
    expect(bench.caption).to.match(/R1a/);
    bench.board.set('R1b', 'broken');
    await bench.settled();
    await bench.settled();
    expect(volts(bench)).to.equal(0);
    expect(bench.find('[data-id="R1b"]').getAttribute('data-condition')).to.equal('broken');
    await expect(bench.board).to.be.accessible();
  });
});
