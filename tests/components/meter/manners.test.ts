import { expect, nextFrame } from '@open-wc/testing';
import { resetMouse, sendKeys } from '@web/test-runner-commands';
import { accessibilityTree } from '../accessibility-tree.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { bench } from './bench.ts';

const line = 'B1 6 V + A1 + (R1 12 Ω ∥ (A2 + L1 8 Ω))';

afterEach(() => resetMouse());

describe('a meter and its component belong together', () => {
  it('pointing at the meter makes the component stand out, and leaving ends it', async () => {
    const made = await bench(line, { of: 'A2' });
    await made.point();
    expect(made.lit).to.deep.equal(['A2']);
    await made.leave();
    expect(made.lit).to.deep.equal([]);
  });

  it('coming to it with the Tab key does the same, and going on ends it', async () => {
    const made = await bench(line, { of: 'I_R1' });
    await made.tab();
    expect(document.activeElement).to.equal(made.element);
    expect(made.lit).to.deep.equal(['R1']);
    await sendKeys({ down: 'Shift' });
    await sendKeys({ press: 'Tab' });
    await sendKeys({ up: 'Shift' });
    expect(made.lit).to.deep.equal([]);
  });

  it('what has the focus stands out again when the pointer leaves', async () => {
    const made = await bench(line, { of: 'A1' });
    await made.tab();
    await made.point();
    await made.leave();
    expect(made.lit).to.deep.equal(['A1']);
  });

  it('nothing stays lit when the meter is taken away', async () => {
    const made = await bench(line, { of: 'A2' });
    await made.tab();
    expect(made.lit).to.deep.equal(['A2']);
    made.element.remove();
    expect(made.lit).to.deep.equal([]);
  });

  it('what it is asked for next stands out instead', async () => {
    const made = await bench(line, { of: 'A2' });
    await made.tab();
    made.element.of = 'V_L1';
    await made.element.updateComplete;
    expect(made.lit).to.deep.equal(['L1']);
  });

  it('a meter that is merely on the page asks nothing of the board', async () => {
    const made = await bench(line, { of: 'A2' });
    let calls = 0;
    made.board.light = () => {
      calls += 1;
    };
    made.board.set('R1', '20');
    await settled();
    expect(calls).to.equal(0);
  });
});

describe('a meter does not jump', () => {
  it('it is as wide whatever it reads', async () => {
    const made = await bench(line, { of: 'A2' });
    const { width } = made.element.getBoundingClientRect();
    for (const other of [
      'B1 6 V + A2 reversed + R1 12 Ω',
      'B1 6 V + A2 + R1 470 kΩ',
      'B1 6 V + A2 + R1 12 Ω + S1 open',
      'B1 6 V + A2 0.001 Ω',
      'B1 6 V + A2',
    ]) {
      await made.show(other);
      expect(made.element.getBoundingClientRect().width, made.part('reading')).to.equal(width);
    }
  });

  it('it fits a column of 130 pixels', async () => {
    const made = await bench('B1 6 V + A1', { of: 'A1' });
    made.page.style.width = '130px';
    expect(made.element.getBoundingClientRect().width).to.be.at.most(130);
    expect(made.all('[part=meter]')[0]!.scrollWidth).to.be.at.most(130);
  });
});

describe('a meter keeps up with what moves', () => {
  it('follows a control that moves, and is exact when it is let go', async () => {
    const made = await bench('B1 1 V + A1 + R1 [1..9] 3 Ω', { of: 'A1', figures: '6' });
    expect(made.part('reading')).to.equal('0.333333 A');
    made.board.move('R1', '6');
    await settled();
    expect(made.part('reading')).to.equal('0.166667 A');
    made.board.set('R1', '8');
    await nextFrame();
    await made.element.updateComplete;
    expect(made.part('reading'), 'in the first frame at rest').to.equal('0.125000 A');
  });

  it('shows at most 15 readings a second meanwhile', async () => {
    const made = await bench('B1 1 V + A1 + R1 [1..100] 50 Ω', { of: 'A1' });
    const shown = new Set<string>();
    const observer = new MutationObserver(() => shown.add(made.part('reading')));
    observer.observe(made.element.shadowRoot!, { subtree: true, characterData: true, childList: true });
    const start = performance.now();
    for (let ohms = 1; ohms <= 40; ohms += 1) {
      made.board.move('R1', String(ohms));
      await nextFrame();
    }
    const seconds = (performance.now() - start) / 1000;
    observer.disconnect();
    expect(shown.size).to.be.within(2, Math.ceil(15 * seconds) + 1);
  });
});

describe('a meter is heard', () => {
  it('by its kind, its label and its reading, and what it measures', async () => {
    await bench(line, { of: 'A2' });
    const tree = await accessibilityTree();
    expect(tree).to.contain('Ammeter A2, 0.750 amperes').and.contain('current through A2');
  });

  it('only when asked: it is no live region', async () => {
    const made = await bench(line, { of: 'A2' });
    expect(made.element.shadowRoot!.querySelector('[aria-live], [role=status], output')).to.equal(null);
  });

  const settings = [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const;
  for (const [name, features] of settings)
    it(`without a finding of axe in ${name}`, async () => {
      await emulateFeatures(features);
      const made = await bench(line, { of: 'A2' });
      Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
      await expect(made.element).to.be.accessible();
      await made.show('B1 6 V + A2');
      await settled();
      await expect(made.element).to.be.accessible();
    });
});
