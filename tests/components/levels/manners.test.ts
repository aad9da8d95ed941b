import { expect } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { bench, group, heard, lit, pump, quay, type LevelsBench } from './bench.ts';

describe('a level diagram and its board point at each other', () => {
  it('what is pointed at in the diagram stands out on the board, and no longer', async () => {
    const made = await bench(quay);
    await made.point(group(made, 'R2').querySelector('.hit')!);
    expect(made.lit).to.deep.equal(['R2']);
    await made.leave();
    expect(made.lit).to.deep.equal([]);
  });

  it('what is pointed at on the board stands out in the diagram, and no longer', async () => {
    const made = await bench(quay);
    await made.point(made.board.shadowRoot!.querySelector('[data-id=R1] .hit')!);
    expect(lit(made)).to.deep.equal(['R1']);
    await made.point(made.board.shadowRoot!.querySelector('[data-id=A1] .hit')!);
    expect(lit(made), 'from one straight to another').to.deep.equal(['A1']);
    await made.leave();
    expect(lit(made)).to.deep.equal([]);
  });

  it('by the keyboard, in both directions', async () => {
    const made = await bench(quay);
    await made.tab();
    expect(made.lit).to.deep.equal(['B1']);
    await sendKeys({ press: 'ArrowRight' });
    await sendKeys({ press: 'ArrowRight' });
    expect(made.lit).to.deep.equal(['R1']);
    await sendKeys({ press: 'Home' });
    expect(made.lit).to.deep.equal(['B1']);
    made.board.shadowRoot!.querySelector<SVGGElement>('[data-id=L1]')!.focus();
    await settled();
    expect(made.lit).to.deep.equal([]);
    expect(lit(made)).to.deep.equal(['L1']);
    made.board.shadowRoot!.querySelector<SVGGElement>('[data-id=R2]')!.focus();
    await settled();
    expect(lit(made), 'from one straight to another').to.deep.equal(['R2']);
  });
});

describe('a level diagram without heights says why', () => {
  const cases = [
    ['R1 4 Ω + R2 8 Ω', {}, 'There is no supply in this circuit, so there are no potentials to draw.'],
    [pump, { hide: 'readings' }, 'covered: predict it first'],
  ] as const;
  for (const [circuit, attributes, sentence] of cases)
    it(sentence, async () => {
      const made = await bench(pump);
      await made.show(circuit, attributes);
      expect(made.texts('[part=obstacle]')).to.deep.equal([sentence]);
      expect(made.all('svg')).to.deep.equal([]);
      expect(made.everything).to.not.match(/\d\.\d/);
    });

  it('a circuit that is very large', async () => {
    const made = await bench(pump);
    await made.show(`B1 9 V + ${Array.from({ length: 200 }, (_, k) => `R${k} 1 Ω`).join(' + ')}`);
    expect(made.part('obstacle')).to.match(/very large/);
    expect(made.all('svg')).to.deep.equal([]);
  });

  it('a short circuit', async () => {
    const made = await bench('B1 6 V + A1');
    expect(made.part('obstacle')).to.match(/B1/);
    await made.show(pump);
    expect(made.all('.step').length).to.equal(3);
  });
});

/** No text of a diagram lies on another. */
function expectApart(made: LevelsBench): void {
  const boxes = made.all('text').map((text) => [text.textContent, text.getBoundingClientRect()] as const);
  expect(boxes.length).to.be.greaterThan(12);
  for (const [name, a] of boxes)
    for (const [other, b] of boxes.filter(([, box]) => box !== a)) {
      const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      expect(apart, `${name} on ${other}`).to.equal(true);
    }
}

describe('a level diagram fits its surroundings', () => {
  const long =
    'B1 12 V r 1 Ω + Rharbournorth1 1 kΩ + (R2 2 Ω ∥ R3 3 Ω ∥ (R4 4 Ω + L5 5 Ω)) + R6 6 mΩ; V1 across B1';

  for (const dir of ['ltr', 'rtl'])
    it(`no text lies on another, in a page ${dir}, 320 pixels wide`, async () => {
      const made = await bench(long);
      Object.assign(made.page, { dir });
      made.page.style.width = '300px';
      await settled();
      expectApart(made);
      expect(made.all('[part=levels]')[0]!.getBoundingClientRect().width).to.be.at.most(300);
      expect(document.documentElement.scrollWidth).to.be.at.most(document.documentElement.clientWidth);
    });

  const crowded =
    'B1 12 V + A1 + R1 1 Ω + (R2 2 Ω ∥ R3 3 Ω) + R4 2 Ω + (L1 3 Ω ∥ L2 5 Ω ∥ S1 open) + R5 1 Ω + R6 2 Ω';
  for (const [circuit, columns] of [
    [quay, 6],
    [long, 8],
    [crowded, 11],
  ] as const)
    it(`${columns} columns stand in a window of 320 pixels, nothing to be scrolled, no text on another`, async () => {
      const made = await bench(circuit);
      made.page.style.width = '284px';
      await settled();
      const [scroller] = made.all('[part=levels]');
      expect(made.all('.component').length).to.equal(columns);
      expect(scroller!.scrollWidth).to.be.at.most(scroller!.clientWidth);
      expectApart(made);
    });

  it('columns are closer, and texts in rows, only where there is no room', async () => {
    const made = await bench(quay);
    const rows = (): number => new Set(made.all('.label').map((each) => each.getAttribute('y'))).size;
    expect(rows()).to.equal(1);
    made.page.style.width = '284px';
    await settled();
    expect(rows()).to.equal(2);
    made.page.style.width = '';
    await settled();
    expect(rows()).to.equal(1);
  });

  it('more than can be told apart scroll by themselves', async () => {
    const made = await bench(
      `B1 12 V + ${Array.from({ length: 30 }, (_, k) => `R${k} ${k + 1} Ω`).join(' + ')}`,
    );
    made.page.style.width = '284px';
    await settled();
    expect(document.documentElement.scrollWidth).to.be.at.most(document.documentElement.clientWidth);
    const [scroller] = made.all('[part=levels]');
    expect(scroller!.scrollWidth).to.be.greaterThan(scroller!.clientWidth);
    await made.tab();
    await sendKeys({ press: 'End' });
    await settled();
    expect(scroller!.scrollLeft).to.be.greaterThan(0);
  });

  it('the current runs from left to right in a page from right to left', async () => {
    const made = await bench(pump);
    made.page.dir = 'rtl';
    await settled();
    const [first, , last] = ['B1', 'R1', 'R2'].map((id) => group(made, id).getBoundingClientRect().x);
    expect(first).to.be.lessThan(last!);
  });

  it('it is printed whole', async () => {
    const made = await bench(long);
    made.page.style.width = '300px';
    await emulateFeatures({}, 'print');
    expect(made.all('svg')[0]!.getBoundingClientRect().width).to.be.at.most(300);
  });

  it('its axis takes the decimal sign of the course at once', async () => {
    const made = await bench('B1 0.5 V + R1 1 Ω');
    expect(made.texts('.mark')[1]).to.equal('0.1');
    made.board.setAttribute('course', 'comma');
    await settled();
    expect(made.texts('.mark')[1]).to.equal('0,1');
  });

  it('its words are those of the course: a decimal comma', async () => {
    const made = await bench(pump);
    await made.show('B1 0,5 V + R1 1 Ω + R2 3 Ω', { course: 'comma' });
    expect(made.texts('.mark').join(' ')).to.equal('0,0 0,1 0,2 0,3 0,4 0,5');
    expect(heard(made)[1]).to.equal('R1: a drop of 0,125 volts, from 0,500 volts to 0,375 volts');
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
      await settled();
      await expect(made.element).to.be.accessible();
    });
});
