import { expect } from '@open-wc/testing';
import { executeServerCommand, resetMouse, sendKeys, sendMouse } from '@web/test-runner-commands';
import { emulateFeatures } from '../emulate-features.ts';
import { bench, settled } from './bench.ts';

const line = 'B1 6 V + A1 + (R1 12 Ω ∥ (A2 + L1 8 Ω))';

afterEach(async () => {
  await emulateFeatures();
  await resetMouse();
});

describe('a meter and its component belong together', () => {
  it('pointing at the meter makes the component stand out, and leaving ends it', async () => {
    const made = await bench(line, { of: 'A2' });
    await made.point();
    expect(made.board.lit).to.deep.equal(['A2']);
    await sendMouse({ type: 'move', position: [790, 590] });
    expect(made.board.lit).to.deep.equal([]);
  });

  it('focusing it by the Tab key does the same', async () => {
    const made = await bench(line, { of: 'I_R1' });
    await sendKeys({ press: 'Tab' });
    expect(document.activeElement).to.equal(made.meter);
    expect(made.board.lit).to.deep.equal(['R1']);
    made.meter.blur();
    await sendKeys({ press: 'Tab' });
    expect(made.board.lit).to.deep.equal([]);
  });

  it('what has the focus stands out again when the pointer leaves', async () => {
    const made = await bench(line, { of: 'A1' });
    await sendKeys({ press: 'Tab' });
    await made.point();
    await sendMouse({ type: 'move', position: [790, 590] });
    expect(made.board.lit).to.deep.equal(['A1']);
  });

  it('nothing stays lit when the meter is taken away', async () => {
    const made = await bench(line, { of: 'A2' });
    await sendKeys({ press: 'Tab' });
    expect(made.board.lit).to.deep.equal(['A2']);
    made.meter.remove();
    expect(made.board.lit).to.deep.equal([]);
  });

  it('a meter that is merely on the page asks nothing of the board', async () => {
    const made = await bench(line, { of: 'A2' });
    let calls = 0;
    made.board.light = () => {
      calls += 1;
    };
    await made.show(line);
    expect(calls).to.equal(0);
  });
});

describe('a meter does not jump', () => {
  it('its width is the same whatever it reads', async () => {
    const made = await bench(line, { of: 'A2' });
    const { width } = made;
    for (const other of [
      'B1 6 V + A2 reversed + R1 12 Ω',
      'B1 6 V + A2 + R1 470 kΩ',
      'B1 6 V + A2 + R1 12 Ω + S1 open',
      'B1 6 V + A2 0.001 Ω',
      'B1 6 V + A2',
    ]) {
      await made.show(other);
      expect(made.width, made.part('reading')).to.equal(width);
    }
  });

  it('it fits a column of 130 pixels', async () => {
    const made = await bench('B1 6 V + A1', { of: 'A1' });
    made.page.style.width = '130px';
    expect(made.meter.scrollWidth).to.be.at.most(130);
  });
});

describe('a meter reads exactly as soon as things are at rest', () => {
  it('a third is written alike from floating point and from the exact solution', async () => {
    const made = await bench('B1 1 V + A1 + R1 3 Ω', { of: 'A1' });
    await made.show('B1 1 V + A1 + R1 [1..9] 6 Ω', { moving: 'R1' });
    expect(made.part('reading')).to.equal('0.167 A');
    await made.show('B1 1 V + A1 + R1 [1..9] 6 Ω');
    expect(made.part('reading')).to.equal('0.167 A');
  });
});

describe('a meter is heard', () => {
  it('by its kind, its label and its reading, and what it measures', async () => {
    await bench(line, { of: 'A2' });
    await sendKeys({ press: 'Tab' });
    const tree = JSON.stringify(await executeServerCommand<unknown, object>('a11y-snapshot', {}));
    expect(tree).to.contain('Ammeter A2, 0.750 amperes').and.contain('current through A2');
  });

  it('only when asked: it is no live region', async () => {
    const made = await bench(line, { of: 'A2' });
    expect(made.meter.shadowRoot!.querySelector('[aria-live], [role=status], output')).to.equal(null);
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
      made.page.style.colorScheme = 'light dark';
      await expect(made.meter).to.be.accessible();
      await made.show('B1 6 V + A2');
      await settled();
      await expect(made.meter).to.be.accessible();
    });
});
