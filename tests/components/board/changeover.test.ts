import { expect } from '@open-wc/testing';
import '../../../src/components/switch/define.ts';
import { boardWith, text, type Bench } from './bench.ts';

const steps =
  'B1 6 V + ((changeover S1a closed + changeover S2a closed) ∥ (changeover S1b + changeover S2b)) + L1 12 Ω';

const lit = ({ board }: Bench): boolean => board.solution?.quantity('I_L1')?.valueOf() === 0.5;

async function press(bench: Bench, label: string): Promise<void> {
  bench.button(label).click();
  await bench.settled();
  await bench.settled();
}

describe('changeover switches on a board', () => {
  it('have one button each, and either one lights the steps and puts them out', async () => {
    const bench = await boardWith(steps);
    const heard: string[] = [];
    bench.board.addEventListener('rheolet-change', ({ detail: { id, text: now } }) =>
      heard.push(`${id} ${now}`),
    );
    expect(bench.all('[part=switch]').map(text)).to.deep.equal(['S1a: closed', 'S2a: closed']);
    expect(lit(bench)).to.equal(true);
    await press(bench, 'S1a');
    expect(lit(bench)).to.equal(false);
    expect(heard).to.deep.equal(['S1a open', 'S1b closed']);
    expect(bench.board.settings).to.deep.equal({ S1a: 'open', S1b: 'closed' });
    await press(bench, 'S2a');
    expect(lit(bench)).to.equal(true);
    await press(bench, 'Undo');
    expect(lit(bench)).to.equal(false);
    await press(bench, 'Reset');
    expect(bench.board.settings).to.deep.equal({});
  });

  it('are turned at either contact of the drawing, which moves but for its blade in nothing', async () => {
    const bench = await boardWith(steps);
    const wires = (): string =>
      bench
        .all('[data-node]')
        .map((each) => each.getAttribute('d'))
        .join();
    const before = wires();
    for (const id of ['S1b', 'S1a', 'S2b', 'S2a']) {
      const was = lit(bench);
      bench.component(id).focus();
      bench.component(id).dispatchEvent(new KeyboardEvent('keydown', { key: 'Enter', bubbles: true }));
      await bench.settled();
      await bench.settled();
      expect(lit(bench), id).to.equal(!was);
      expect(wires(), id).to.equal(before);
    }
  });

  it('have ribbons as wide as those of any circuit with such a lamp, whichever way they stand', async () => {
    const bench = await boardWith(steps.replace('S2a closed', 'S2a').replace('S2b', 'S2b closed'));
    expect(bench.ribbons).to.equal('');
    await press(bench, 'S1a');
    const other = await boardWith('B1 6 V + S1 closed + L1 12 Ω');
    expect(bench.ribbons).not.to.equal('');
    expect(text(bench.find('[part=key]'))).to.equal(text(other.find('[part=key]')));
  });

  it('are a pupil’s rheolet-switch, in an accessible board', async () => {
    const bench = await boardWith(steps);
    const own = document.createElement('rheolet-switch');
    own.setAttribute('of', 'S1b');
    bench.board.after(own);
    await bench.settled();
    own.shadowRoot?.querySelector('button')?.click();
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ S1a: 'open', S1b: 'closed' });
    own.remove();
    await expect(bench.board).to.be.accessible();
  });
});
