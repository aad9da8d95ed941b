import { expect, fixture, html, nextFrame, oneEvent } from '@open-wc/testing';
import '../../../src/components/board/define.ts';
import '../../../src/components/value/define.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import type { RheoletValue } from '../../../src/components/value/index.ts';

async function reading(
  circuit: string,
  attributes: Readonly<Record<string, string>>,
): Promise<{ board: RheoletBoard; value: RheoletValue }> {
  const root = await fixture(
    html`<p><rheolet-value></rheolet-value><rheolet-board circuit=${circuit}></rheolet-board></p>`,
  );
  const [board, value] = [root.querySelector('rheolet-board')!, root.querySelector('rheolet-value')!];
  for (const [name, text] of Object.entries(attributes)) value.setAttribute(name, text);
  await board.ready;
  await settled(value);
  return { board, value };
}

async function settled(value: RheoletValue): Promise<void> {
  await nextFrame();
  await nextFrame();
  await value.updateComplete;
}

const seen = (value: RheoletValue): string =>
  (value.shadowRoot!.querySelector('[part]')?.textContent ?? '').replace(/\s/g, ' ').trim();
const heard = (value: RheoletValue): string => value.shadowRoot!.querySelector('.heard')?.textContent ?? '';

const series = 'B1 6 V + R1 [4..40] 12 Ω + A1';

describe('a value in a sentence', () => {
  for (const [attributes, shown, said] of [
    [{ of: 'I_A1' }, '0.500 A', '0.500 amperes'],
    [{ of: 'I_A1', figures: '2' }, '0.50 A', '0.50 amperes'],
    [{ of: 'I_A1', unit: 'mA' }, '500 mA', '500 milliamperes'],
    [{ of: 'V_R1' }, '6.00 V', '6.00 volts'],
    [{ of: 'P_total' }, '3.00 W', '3.00 watts'],
    [{ of: 'R_total', as: 'fraction' }, '12 Ω', '12 ohms'],
  ] as const) {
    it(`shows ${JSON.stringify(attributes)} as ${shown}, and says ${said}`, async () => {
      const { value } = await reading(series, attributes);
      expect(seen(value)).to.equal(shown);
      expect(heard(value)).to.equal(said);
    });
  }

  it('is exact where a fraction is asked for', async () => {
    const { value } = await reading('B1 1 V + R1 3 Ω', { of: 'I_R1', as: 'fraction' });
    expect(seen(value)).to.equal('1/3 A');
  });

  it('is a magnitude, unless its sign is asked for', async () => {
    const { value } = await reading('B1 6 V + R1 12 Ω + A1 reversed', { of: 'I_A1' });
    expect(seen(value)).to.equal('0.500 A');
    value.as = 'signed';
    await settled(value);
    expect(seen(value)).to.equal('−0.500 A');
  });

  it('follows the circuit, at most 15 times a second, and is right once it has settled', async () => {
    const { board, value } = await reading(series, { of: 'I_A1' });
    let writes = 0;
    const observer = new MutationObserver(() => (writes += 1));
    observer.observe(value.shadowRoot!, { childList: true, characterData: true, subtree: true });
    const start = performance.now();
    for (let ohms = 4; performance.now() - start < 400; ohms = 4 + ((ohms + 1) % 37)) {
      board.move('R1', ohms);
      await nextFrame();
    }
    expect(writes).to.be.at.most(8);
    board.set('R1', 24);
    await new Promise(requestAnimationFrame);
    await value.updateComplete;
    expect(seen(value)).to.equal('0.250 A');
    observer.disconnect();
  });

  it('keeps its place, so that the sentence does not jump', async () => {
    const { board, value } = await reading(series, { of: 'I_A1' });
    const width = (): number => value.getBoundingClientRect().width;
    const before = width();
    for (const ohms of [4, 5, 30, 40]) {
      board.set('R1', ohms);
      await settled(value);
      expect(width(), `${ohms} Ω`).to.be.closeTo(before, 0.5);
    }
  });

  it('shows a dash on a faulty board, with the reason as its name', async () => {
    const { value } = await reading('B1 6 V + A1', { of: 'I_A1' });
    expect(seen(value)).to.equal('—');
    expect(heard(value)).to.equal('The circuit has a fault, so there is no reading.');
  });

  it('has "no current" where nothing can flow', async () => {
    const { value } = await reading('B1 6 V + S1 open + R1 12 Ω', { of: 'I_R1' });
    expect(seen(value)).to.equal('no current');
  });

  it('is covered with its board', async () => {
    const { board, value } = await reading(series, { of: 'I_A1' });
    board.hide = 'readings';
    await settled(value);
    await settled(value);
    expect(seen(value)).to.equal('?');
    expect(heard(value)).to.not.match(/\d/);
  });

  for (const [attributes, sentence] of [
    [{ of: 'I_A2' }, '“I_A2” is not a quantity of this circuit'],
    [{ of: 'A1' }, '“A1” is not a quantity of this circuit; did you mean I_A1?'],
    [{ of: '' }, 'Say what is to be read, by of="…", such as I_total.'],
    [{ of: 'I_A1', unit: 'kΩ' }, 'kΩ'],
  ] as const) {
    it(`is a sentence and an event for ${JSON.stringify(attributes)}`, async () => {
      const { value } = await reading(series, { of: 'I_A1' });
      const problem = oneEvent<CustomEvent<ProblemDetail>>(value, 'rheolet-problem');
      for (const [name, text] of Object.entries(attributes)) value.setAttribute(name, text);
      expect((await problem).detail.text).to.contain(sentence);
      expect(seen(value)).to.contain(sentence);
    });
  }

  it('tells what to ask for instead of the one current of a potentiometer', async () => {
    const { value } = await reading('B1 6 V + potentiometer R1a 4 Ω + potentiometer R1b 8 Ω', { of: 'I_R1' });
    expect(seen(value)).to.equal('The two parts of R1 may carry different currents; ask for I_R1a or I_R1b.');
  });
});
