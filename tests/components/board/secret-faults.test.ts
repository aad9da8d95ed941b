import { expect } from '@open-wc/testing';
import { formatCircuit } from '../../../src/engine/index.ts';
import { boardWith, type Bench } from './bench.ts';

const sound = 'B1 6 V + S1 closed + L1 8 Ω + L2 8 Ω; V1 across L2';
const faulty = 'B1 6 V + S1 closed + L1 8 Ω + L2 8 Ω secretly broken; V1 across L2';

/** All that a pupil can come by: the drawing with its words, caption, notes, tables, and what can be taken along. */
async function shown(bench: Bench): Promise<string> {
  const { board } = bench;
  await bench.settled();
  const texts = [
    await board.toText(),
    board.linkToSetting(),
    JSON.stringify(board.settings),
    await board.toSVG(),
  ];
  const attributes = bench.all('*').flatMap((each) => [...each.attributes].map(({ value }) => value));
  return [board.shadowRoot?.textContent, ...attributes, ...texts].join('\n');
}

async function press(bench: Bench, label: string): Promise<void> {
  bench.button(label).click();
  await bench.settled();
}

describe('what is secretly wrong on a board', () => {
  it('is told by the readings, and by nothing else of it', async () => {
    const bench = await boardWith(faulty);
    expect(bench.board.solution?.quantity('V_L2')?.valueOf()).to.equal(6);
    expect(bench.notes).to.equal('No current: no closed path leads through a supply.');
    expect(await bench.board.toText()).to.equal(sound);
    expect(await shown(bench)).not.to.match(/secret|broken|fault/);
    for (const id of ['L1', 'L2', 'S1']) {
      bench.component(id).focus();
      await bench.settled();
      expect(bench.caption, id).not.to.match(/secret|broken|taken out/);
    }
  });

  it('is set by a method, and is no step that a pupil could undo', async () => {
    const bench = await boardWith(sound);
    const before = await shown(bench);
    const heard: Event[] = [];
    bench.board.addEventListener('rheolet-change', (event) => heard.push(event));
    bench.board.set('L2', 'secretly broken');
    expect(bench.board.solution?.quantity('I_L1')?.valueOf()).to.equal(0);
    expect(bench.board.settings).to.deep.equal({});
    bench.board.set('L2', 'secretly intact');
    expect(await shown(bench), 'mended').to.equal(before);
    bench.board.set('L2', 'secretly broken');
    bench.board.set('L1', 'bridged');
    for (const label of ['Undo', 'Redo', 'Reset']) {
      await press(bench, label);
      const { circuit } = bench.board;
      expect(circuit && formatCircuit(circuit), label).to.contain('L2 8 Ω secretly broken');
    }
    expect(bench.board.settings).to.deep.equal({});
    expect(
      heard.filter((event) => JSON.stringify((event as CustomEvent).detail).includes('L2')),
    ).to.have.length(0);
  });

  it('comes by no link, and stays when settings are put back', async () => {
    const bench = await boardWith(faulty);
    bench.board.settings = { L1: 'secretly bridged', S1: 'open' };
    expect(bench.board.settings).to.deep.equal({ S1: 'open' });
    await bench.settled();
    expect(bench.notes).to.equal('No current: the circuit is open at S1.');
    bench.board.settings = {};
    const faults = bench.board.circuit?.components.map(({ fault }) => fault ?? '');
    expect(faults).to.deep.equal(['', '', '', 'broken', '']);
  });

  it('is found by a wire across it, in an accessible board', async () => {
    const bench = await boardWith(faulty);
    bench.board.set('L1', 'bridged');
    expect(bench.board.solution?.quantity('I_B1')?.valueOf(), 'the sound lamp').to.equal(0);
    bench.board.set('L1', 'intact');
    bench.board.set('L2', 'bridged');
    expect(bench.board.solution?.quantity('I_L1')?.valueOf(), 'the faulty one').to.equal(0.75);
    await expect(bench.board).to.be.accessible();
  });
});
