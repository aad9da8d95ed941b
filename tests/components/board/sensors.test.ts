import { expect } from '@open-wc/testing';
import '../../../src/components/surroundings/define.ts';
import { sliders } from '../slider/parts.ts';
import { boardWith, drag, pumpLine, type Bench } from './bench.ts';

const frost = 'B1 6 V + R1 10 kΩ + T1 10 kΩ; V1 across T1';
const labels = (bench: Bench): string[] =>
  bench.all('.acts button').map(({ textContent }) => textContent.trim());

describe('a board with sensors', () => {
  it('has its surroundings among its sliders, once for all sensors, and the others have none', async () => {
    const bench = await boardWith('B1 6 V + T1 10 kΩ + T2 10 kΩ + LDR1 8 kΩ');
    expect(bench.all('rheolet-surroundings')).to.have.length(1);
    expect(sliders(bench.find('rheolet-surroundings'))).to.have.length(2);
    expect((await boardWith(pumpLine)).all('rheolet-surroundings')).to.have.length(0);
    expect((await boardWith(frost, { hide: 'sliders' })).all('rheolet-surroundings')).to.have.length(0);
  });

  it('has its buttons from the beginning: there is something to turn', async () => {
    const bench = await boardWith(frost);
    expect(labels(bench).slice(0, 4)).to.deep.equal(['Reset', 'Undo', 'Redo', 'Hold readings']);
    expect(labels(await boardWith('B1 6 V + R1 12 Ω'))).to.not.include('Reset');
  });

  it('is undone and reset by them', async () => {
    const bench = await boardWith(frost);
    const before = bench.digits('V1');
    drag(sliders(bench.find('rheolet-surroundings'))[0]!, 40, true);
    await bench.settled();
    expect(bench.digits('V1')).to.equal('4.62 V'); // 33.6 kΩ of 43.6 kΩ, as the sensor's table has it at 0 °C
    bench.button('Undo').click();
    await bench.settled();
    expect(bench.digits('V1')).to.equal(before);
    bench.button('Redo').click();
    await bench.settled();
    bench.button('Reset').click();
    await bench.settled();
    expect([bench.board.settings, bench.digits('V1')]).to.deep.equal([{}, before]);
  });

  it('leaves room for what it reads anywhere: no reading is replaced by a dash', async () => {
    const bench = await boardWith('B1 6 V + R1 10 kΩ + T1 10 kΩ + A1');
    const [slider] = sliders(bench.find('rheolet-surroundings'));
    for (const setting of [0, 60, 165]) {
      drag(slider!, setting, true);
      await bench.settled();
      expect(bench.digits('A1')).to.match(/^\d+(\.\d+)? [mµ]?A$/);
    }
  });
});
