import { expect, nextFrame } from '@open-wc/testing';
import { accessibilityTree } from '../accessibility-tree.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { bench, held, pump, quay } from './bench.ts';

describe('what the pupil is to work out is not given away', () => {
  it('a hidden resistance is "?" in a sum, and its own V = IR has no numbers at all', async () => {
    const made = await bench('B1 12 V + R1 7 Ω hidden + R2 17 Ω', { rules: 'series-resistance ohm' });
    expect(held(made)).to.deep.equal([
      ['Rtotal = RR1 + RR2', '? = ? + 17.0 Ω', 'holds'],
      ['VR1 = IR1 × RR1', '?', 'holds'],
      ['VR2 = IR2 × RR2', '8.50 V = 0.500 A × 17.0 Ω', 'holds'],
    ]);
    expect(made.everything).to.not.match(/\b7\.0|24\.0/);
  });

  it('covered readings leave the symbols only', async () => {
    const made = await bench(quay);
    await made.show(quay, { hide: 'readings' });
    expect(new Set(made.texts('[part=numbers]'))).to.deep.equal(new Set(['?']));
    expect(held(made).map(([symbols]) => symbols)).to.include('IA1 = IR1 + IA2');
    expect(made.everything).to.not.match(/\d\.\d/);
  });
});

describe('in a page that runs right to left', () => {
  beforeEach(() => (document.documentElement.dir = 'rtl'));
  afterEach(() => document.documentElement.removeAttribute('dir'));

  it('each English sentence ends with its full stop on the right', async () => {
    const made = await bench(quay);
    for (const part of ['rule', 'why']) {
      const text = [...made.all(`[part=${part}]`)[0]!.childNodes].find(
        (node): node is Text => node instanceof Text && node.data.trim() !== '',
      )!;
      const left = (at: number): number => {
        const range = document.createRange();
        range.setStart(text, at);
        range.setEnd(text, at + 1);
        return range.getBoundingClientRect().left;
      };
      const sentence = text.data.trimEnd();
      expect(left(sentence.length - 1), sentence).to.be.greaterThan(left(text.data.search(/\S/)));
    }
  });
});

describe('the rules keep up with what moves', () => {
  it('and are exact in the first frame at rest', async () => {
    const made = await bench(pump, { rules: 'series-current' });
    made.board.move('R1', '7');
    await settled();
    expect(held(made)[0]![1]).to.equal('0.750 A = 0.750 A = 0.750 A');
    made.board.set('R1', '13');
    await nextFrame();
    await made.element.updateComplete;
    expect(held(made)[0]![1]).to.equal('0.500 A = 0.500 A = 0.500 A');
  });

  it('at most 15 times a second meanwhile', async () => {
    const made = await bench('B1 6 V + R1 [1..100] 50 Ω', { rules: 'ohm' });
    const shown = new Set<string>();
    const observer = new MutationObserver(() => shown.add(made.part('numbers')));
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

describe('a formula is seen and said', () => {
  it('as MathML that a screen reader skips, with a sentence beside it', async () => {
    const made = await bench(quay, { rules: 'junction' });
    const formulae = made.all('math');
    expect(formulae.every((math) => math.closest('[aria-hidden=true]') !== null)).to.equal(true);
    expect(formulae[0]!.namespaceURI).to.equal('http://www.w3.org/1998/Math/MathML');
    expect(made.texts('.heard')).to.deep.equal(['4.50 A equals 1.50 A plus 3.00 A:']);
    expect(made.heard('[part=line]')).to.equal(
      'A1, R1 and A2 meet at one junction. 4.50 A equals 1.50 A plus 3.00 A: holds',
    );
  });

  it('and its symbols stand in subscripts and fractions of the right namespace', async () => {
    const made = await bench(quay, { rules: 'parallel-resistance' });
    const odd = made.all('math *').filter((node) => !(node.namespaceURI ?? '').endsWith('MathML'));
    expect(odd).to.deep.equal([]);
  });

  it('an accessibility tree has the rule as the name of its list', async () => {
    await bench(quay, { rules: 'junction' });
    const tree = await accessibilityTree();
    expect(tree).to.contain('At a junction: as much current flows in as out.');
  });

  it('only when asked: it is no live region', async () => {
    const made = await bench(quay);
    expect(made.all('[aria-live], [role=status], output')).to.deep.equal([]);
  });
});

describe('the rules fit their surroundings', () => {
  const many = 'B1 12 V + R1 1 Ω + R2 2 Ω + R3 3 Ω + R4 4 Ω + R5 5 Ω + R6 6 Ω + R7 7 Ω + R8 8 Ω';

  it('a sum of nine terms breaks into lines in 280 pixels', async () => {
    const made = await bench(many);
    made.page.style.width = '280px';
    await settled();
    const wide = made.all('*').filter((node) => node.getBoundingClientRect().right > 300);
    expect(wide.map(({ outerHTML }) => outerHTML)).to.deep.equal([]);
  });

  it('an equation reads from left to right in a page from right to left', async () => {
    const made = await bench(pump, { rules: 'series-p.d.' });
    made.page.dir = 'rtl';
    const [left, right] = made.all('[part=symbols] math').map((math) => math.getBoundingClientRect().x);
    expect(left).to.be.lessThan(right!);
  });

  it('everything is printed, also what is folded away', async () => {
    const made = await bench(pump);
    const hidden = made.all('details [part=line]')[0]!;
    expect(hidden.checkVisibility()).to.equal(false);
    await emulateFeatures({}, 'print');
    expect(hidden.checkVisibility()).to.equal(true);
    expect(hidden.getBoundingClientRect().height).to.be.greaterThan(10);
  });

  const settings = [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const;
  for (const [name, features] of settings)
    it(`without a finding of axe in ${name}`, async () => {
      await emulateFeatures(features);
      const made = await bench(quay);
      Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
      made.all('summary')[0]!.click();
      await settled();
      await expect(made.element).to.be.accessible();
      await made.show('B1 6 V + A1');
      await expect(made.element).to.be.accessible();
    });
});
