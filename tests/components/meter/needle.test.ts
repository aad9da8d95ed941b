import { expect, nextFrame } from '@open-wc/testing';
import { settled, type BesideBoard } from '../beside-board.ts';
import type { RheoletMeter } from '../../../src/components/meter/index.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { bench, named } from './bench.ts';

const line = 'B1 6 V + A1 + R1 [2..30] 12 Ω; V1 across R1';
const needle = (made: BesideBoard<RheoletMeter>): SVGPathElement | null =>
  made.element.shadowRoot!.querySelector('.needle');
/** The angle that the needle is to stand at, or is on its way to. */
const angle = (made: BesideBoard<RheoletMeter>): number =>
  Number(/rotate\((.*)\)/.exec(needle(made)?.getAttribute('transform') ?? '')?.[1]);
const numerals = (made: BesideBoard<RheoletMeter>): string[] =>
  made.texts('svg text:not([part], .said)').filter(Boolean);

describe('a needle', () => {
  // 100° for the whole scale.
  for (const [range, at] of [
    ['1 A', 0],
    ['0.5 A', 50],
    ['2 A', -25],
    ['-1..1 A', 25],
    ['400 mA', 54],
  ] as const)
    it(`stands at ${at}° for 0.5 A on a scale of ${range}`, async () => {
      expect(angle(await bench(line, { of: 'A1', face: 'needle', range }))).to.equal(at);
    });

  it('stands against its lower stop when the leads are reversed, and turns the other way on a scale with 0 in the middle', async () => {
    const made = await bench('B1 6 V + A1 reversed + R1 12 Ω', { of: 'A1', face: 'needle', range: '0.6 A' });
    expect(angle(made)).to.equal(-54);
    expect(named(made)).to.equal('Ammeter A1, less than 0 amperes');
    made.element.range = '-1..1 A';
    await made.element.updateComplete;
    expect(angle(made)).to.equal(-25);
    expect(named(made)).to.equal('Ammeter A1, −0.500 amperes');
  });

  it('is read to half a division by those who hear it', async () => {
    const made = await bench('B1 1 V + A1 + R1 3 Ω', { of: 'A1', face: 'needle', range: '0.6 A' });
    expect(named(made)).to.equal('Ammeter A1, 0.33 amperes');
    made.element.resolution = '0.02 A';
    await made.element.updateComplete;
    expect(named(made)).to.equal('Ammeter A1, 0.34 amperes');
  });

  it('rests at 0 without a current, with the words', async () => {
    const made = await bench('B1 6 V + S1 open + A1 + R1 12 Ω', { of: 'A1', face: 'needle', range: '0.6 A' });
    expect(angle(made)).to.equal(-50);
    expect(made.texts('.said')).to.deep.equal(['no current']);
    expect(named(made)).to.equal('Ammeter A1, no current');
  });

  it('is not there when it would say something that is not so', async () => {
    const made = await bench('B1 6 V + A1', { of: 'A1', face: 'needle', range: '0.6 A' });
    expect(needle(made)).to.equal(null);
    expect(made.texts('.said')).to.deep.equal(['—']);
  });
});

describe('a needle’s scale', () => {
  it('has round numerals in the unit’s prefix, and the unit under the pivot', async () => {
    const made = await bench(line, { of: 'A1', face: 'needle', range: '600 mA' });
    expect(numerals(made)).to.deep.equal(['0', '100', '200', '300', '400', '500', '600']);
    expect(made.part('unit')).to.equal('mA');
    made.element.unit = 'A';
    await made.element.updateComplete;
    expect(numerals(made)).to.deep.equal(['0', '0.1', '0.2', '0.3', '0.4', '0.5', '0.6']);
  });

  it('holds the largest reading of its sliders and switches where no range is given', async () => {
    // At 2 Ω 3 A flow, at 12 Ω half an ampere.
    const made = await bench('B1 6 V + S1 open + A1 + R1 [2..30] 12 Ω', { of: 'A1', face: 'needle' });
    expect(numerals(made).at(-1)).to.equal('5');
  });

  it('stays as it is, wherever the slider goes', async () => {
    const made = await bench(line, { of: 'A1', face: 'needle' });
    const scale = (): (string | null)[] =>
      made.all('svg path:not(.needle), svg text').map((each) => each.getAttribute('d') ?? each.textContent);
    const before = scale();
    for (const ohms of ['2', '30', '7']) {
      made.board.move('R1', ohms);
      await settled();
      expect(scale()).to.deep.equal(before);
    }
    made.board.set('R1', '2');
    await settled();
    expect(scale()).to.deep.equal(before);
    expect(named(made)).to.equal('Ammeter A1, 3.00 amperes');
  });

  it('gives nothing away that is covered: no needle, and no numerals unless the page chose them', async () => {
    const made = await bench(line, { of: 'A1', face: 'needle' });
    await made.show(line, { hide: 'readings' });
    expect(needle(made)).to.equal(null);
    expect(numerals(made)).to.deep.equal([]);
    expect(made.texts('.said')).to.deep.equal(['?']);
    made.element.range = '0.6 A';
    await made.element.updateComplete;
    expect(numerals(made)).to.have.length(7);
    expect(needle(made)).to.equal(null);
  });

  it('is ink without a case: nothing but lines, numerals and a pivot', async () => {
    const made = await bench(line, { of: 'A1', face: 'needle' });
    expect(new Set(made.all('svg *').map(({ localName }) => localName))).to.deep.equal(
      new Set(['path', 'text', 'circle']),
    );
    expect(getComputedStyle(made.all('[part=meter]')[0]!).borderStyle).to.equal('none');
  });

  it('has no two numerals that touch, in any of the usual ranges', async () => {
    const made = await bench(line, { of: 'A1', face: 'needle' });
    for (const range of ['0.6 A', '1 A', '3 A', '15 A', '-0.6..0.6 A', '-3..3 A', '500 mA', '10 A', '2 A']) {
      made.element.range = range;
      await made.element.updateComplete;
      const boxes = made.all('svg text:not([part], .said)').map((text) => text.getBoundingClientRect());
      const svg = made.all('svg')[0]!.getBoundingClientRect();
      boxes.forEach((box, place) => {
        expect(box.left, range).to.be.at.least(svg.left);
        expect(box.right, range).to.be.at.most(svg.right);
        const next = boxes[place + 1];
        // Digits are 0.73 em high, the box of a line in this font 1.16 em: 0.63 of it.
        const apart = !next || next.left > box.right || Math.abs(next.y - box.y) > 0.65 * box.height;
        expect(
          apart,
          `${range}: ${numerals(made)
            .slice(place, place + 2)
            .join(' and ')}`,
        ).to.equal(true);
      });
    }
  });
});

describe('a needle’s manners', () => {
  const attributes = { of: 'A1', face: 'needle', range: '1 A' } as const;
  const duration = (made: BesideBoard<RheoletMeter>): number =>
    1000 * Number.parseFloat(getComputedStyle(needle(made)!).transitionDuration);

  it('it swings to a new reading in at most 150 ms', async () => {
    const made = await bench(line, attributes);
    expect(duration(made)).to.be.within(1, 150);
    made.board.set('R1', '30');
    await nextFrame();
    await nextFrame();
    await made.element.updateComplete;
    const [swing] = needle(made)!.getAnimations();
    expect(Number(swing?.effect?.getComputedTiming().duration)).to.be.within(1, 150);
    await swing!.finished;
    const { a, b } = needle(made)!.getCTM()!;
    expect((Math.atan2(b, a) * 180) / Math.PI).to.be.closeTo(-30, 0.1);
  });

  it('not where motion is to be reduced, nor on paper', async () => {
    const made = await bench(line, attributes);
    await emulateFeatures({ 'prefers-reduced-motion': 'reduce' });
    expect(duration(made)).to.equal(0);
    await emulateFeatures({}, 'print');
    expect(duration(made)).to.equal(0);
  });

  it('it reads from left to right in a page from right to left', async () => {
    const made = await bench(line, attributes);
    made.page.dir = 'rtl';
    const texts = made.all('svg text:not([part], .said)').map((text) => text.getBoundingClientRect().x);
    expect(texts[0]).to.be.lessThan(texts.at(-1)!);
  });

  it('it fits a column of 130 pixels', async () => {
    const made = await bench(line, attributes);
    made.page.style.width = '130px';
    expect(made.all('svg')[0]!.getBoundingClientRect().right).to.be.at.most(140);
  });

  for (const [name, features] of [
    ['light', {}],
    ['dark', { 'prefers-color-scheme': 'dark' }],
    ['forced colours', { 'forced-colors': 'active' }],
  ] as const)
    it(`without a finding of axe in ${name}, its ink as dark as text`, async () => {
      await emulateFeatures(features);
      const made = await bench(line, attributes);
      Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
      await expect(made.element).to.be.accessible();
      const { stroke, color } = getComputedStyle(needle(made)!);
      expect(stroke).to.equal(color);
    });
});
