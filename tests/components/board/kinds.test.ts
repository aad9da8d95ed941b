import { expect } from '@open-wc/testing';
import { boardWith, drag, text } from './bench.ts';

const sensors = 'B1 5 V + A1 + R1 [1..20] 10 kΩ + (T1 10 kΩ ∥ V1)';
const lights = 'B1 6 V + push S1 + F1 0.5 A + R1 [100..500 step 10] 200 Ω + LED1 2 V 20 mA';
const filament = 'B1 [0..12] 12 V + A1 + L1 12 V 24 W filament';

describe('a board of every kind of component', () => {
  it('draws each with its symbol, its label and its values', async () => {
    const bench = await boardWith(
      'B1 6 V + F1 2 A + (D1 ∥ LED1 2 V 20 mA) + (T1 1 kΩ ∥ LDR1 2 kΩ) + (H1 4 Ω ∥ M1 6 V 6 W)',
    );
    for (const id of ['F1', 'D1', 'LED1', 'T1', 'LDR1', 'H1', 'M1']) {
      expect(bench.component(id).querySelector('.symbol'), id).to.be.instanceOf(SVGPathElement);
      expect(text(bench.component(id)), id).to.include(id);
    }
    expect(text(bench.component('LED1')).replace(/\s/g, ' ')).to.include('2 V, 20 mA');
  });

  it('draws the 0 V mark, which is no component, and says where it is', async () => {
    const bench = await boardWith('B1 9 V + R1 4 Ω + @q + R2 5 Ω; 0 V @q');
    const mark = bench.board.shadowRoot!.querySelector('[data-zero=q]');
    expect(text(mark!).replace(/\s/g, ' ')).to.equal('0 V');
    expect(bench.board.shadowRoot!.querySelectorAll('[data-id]').length).to.equal(3);
    expect(text(bench.board.shadowRoot!.querySelector('desc')!)).to.contain(
      'The 0 V mark is where R1 and R2 meet.',
    );
  });

  it('names them by ear with what they are set to', async () => {
    const bench = await boardWith(lights);
    expect(bench.component('S1').getAttribute('aria-label')).to.match(/^S1, open/);
    expect(bench.component('F1').getAttribute('aria-label')).to.include('0.5 amperes');
  });

  it('a push switch is a button, and closes the circuit', async () => {
    const bench = await boardWith(lights);
    expect(bench.notes).to.equal('No current: the circuit is open at S1.');
    bench.button('S1').click();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ S1: 'closed' });
    expect(Number(bench.board.solution?.current('LED1'))).to.be.closeTo(0.02, 1e-12);
    expect(bench.notes).to.equal(
      'F1 is made for far more than flows here, so it would let a fault burn on. Choose the next rating above the current.',
    );
    bench.button('Undo').click();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({});
  });

  it('a fuse that has blown is a setting like others: drawn, said, taken back', async () => {
    const bench = await boardWith('B1 6 V + F1 1 A + R1 3 Ω');
    expect(bench.notes).to.match(
      /^Caution: F1 carries 2\.00.A, more than its rating of 1.A: the real one blows\./,
    );
    const whole = bench.component('F1').querySelector('.symbol')?.getAttribute('d');
    bench.board.set('F1', 'blown');
    await bench.settled();
    expect(bench.component('F1').querySelector('.symbol')?.getAttribute('d')).not.to.equal(whole);
    expect(bench.notes).to.include('F1 has blown');
    expect(bench.board.settings).to.deep.equal({ F1: 'blown' });
    expect(await bench.board.toText()).to.equal('B1 6 V + F1 1 A blown + R1 3 Ω');
    bench.board.undo();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({});
  });

  it('where it stands is a setting like others', async () => {
    const bench = await boardWith(sensors);
    const before = bench.digits('V1');
    bench.board.set('temperature', '5');
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ temperature: '5' });
    expect(Number(bench.board.solution?.resistance('T1'))).to.be.greaterThan(20_000);
    expect(parseFloat(bench.digits('V1'))).to.be.greaterThan(parseFloat(before));
    expect(await bench.board.toText()).to.match(/; at 5 °C$/);
    bench.board.reset();
    await bench.settled();
    expect(bench.digits('V1')).to.equal(before);
    expect(() => bench.board.set('temperature', '400')).to.throw(/outside/);
    bench.board.settings = { temperature: '60', R1: '5000' };
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ temperature: '60', R1: '5000' });
  });

  it('an LED keeps nearly its p.d. while a slider moves, and ribbons and digits follow', async () => {
    const bench = await boardWith('B1 6 V + A1 + R1 [100..500 step 10] 200 Ω + (LED1 2 V 20 mA ∥ V1)');
    const thick = bench.ribbons;
    drag(bench.slider, 30, false);
    await bench.settled();
    expect(bench.ribbons).not.to.equal(thick);
    drag(bench.slider, 30, true);
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ R1: '400' });
    const [current, volts] = [parseFloat(bench.digits('A1')), parseFloat(bench.digits('V1'))];
    expect(volts).to.be.within(1.8, 2);
    expect(current).to.be.closeTo((6 - volts) / 400, 1e-4);
  });

  it('a lamp’s filament has fewer ohms while it is dim', async () => {
    const bench = await boardWith(filament);
    expect(bench.digits('A1')).to.equal('2.00 A');
    bench.board.set('B1', '3');
    await bench.settled();
    expect(parseFloat(bench.digits('A1'))).to.be.greaterThan(0.5);
    expect(Number(bench.board.solution?.resistance('L1'))).to.be.lessThan(6);
  });

  it('a diode turned round says so, and where it is mended all is quiet', async () => {
    const bench = await boardWith('B1 6 V + R1 220 Ω + LED1 reversed');
    expect(bench.notes).to.equal(
      'LED1 is turned against the current, so it lets next to nothing through. Turn it round if it is to conduct.',
    );
    bench.board.circuit = 'B1 6 V + R1 220 Ω + LED1';
    await bench.board.ready;
    await bench.settled();
    expect(bench.notes).to.equal('');
  });
});
