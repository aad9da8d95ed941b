import { expect } from '@open-wc/testing';
import { executeServerCommand, resetMouse } from '@web/test-runner-commands';
import { emulateFeatures } from '../emulate-features.ts';
import { settled } from '../beside-board.ts';
import { needsChromium } from '../chromium.ts';
import { bench, cells, press, quay } from './bench.ts';

afterEach(() => resetMouse());

const wishes = [
  ['of readings', { label: 'The quay lights', totals: '' }],
  ['to be filled in', { mode: 'part', given: 'V_R1 R_R2' }],
  ['of records', { record: 'R_R1 I_A1' }],
] as const;

describe('a table is a table', () => {
  it('with heads for its rows and columns, in a group with its name', async () => {
    needsChromium(); // the accessibility tree
    const made = await bench(quay, { label: 'The quay lights' });
    expect(made.all('thead th').every((each) => each.getAttribute('scope') === 'col')).to.equal(true);
    expect(made.all('tbody th').every((each) => each.getAttribute('scope') === 'row')).to.equal(true);
    const tree = JSON.stringify(await executeServerCommand<unknown, object>('a11y-snapshot', {}));
    expect(tree).to.contain('"role":"group"').and.contain('The quay lights');
  });

  it('that is no live region', async () => {
    const made = await bench(quay);
    expect(made.all('[aria-live], [role=status], output')).to.deep.equal([]);
  });

  it('and says once how many rows are recorded, in the page’s one voice', async () => {
    const made = await bench(quay, { record: 'R_R1' });
    await press(made, 'Record');
    await press(made, 'Record');
    await new Promise((done) => setTimeout(done, 700));
    expect(document.querySelector('[data-rheolet-voice]')?.textContent).to.contain('2 rows recorded.');
  });

  it('pointing at a row makes its component stand out, and leaving ends it', async () => {
    const made = await bench(quay);
    await made.point(made.all('tbody tr')[2]);
    expect(made.lit).to.deep.equal(['R2']);
    await made.leave();
    expect(made.lit).to.deep.equal([]);
  });

  for (const [name, wish] of wishes)
    for (const [scheme, features] of [
      ['light', {}],
      ['dark', { 'prefers-color-scheme': 'dark' }],
      ['forced colours', { 'forced-colors': 'active' }],
    ] as const)
      it(`${name}, without a finding of axe in ${scheme}`, async () => {
        await emulateFeatures(features);
        const made = await bench(quay, wish);
        Object.assign(made.page.style, { colorScheme: 'light dark', background: 'Canvas' });
        if ('record' in wish) await press(made, 'Record');
        await expect(made.element).to.be.accessible();
      });
});

describe('a table fits its surroundings', () => {
  it('a column of 320 pixels, in which it scrolls by itself', async () => {
    const made = await bench(quay, { totals: '' });
    made.page.style.inlineSize = '300px';
    const [scroll] = made.all('.scroll');
    expect(made.element.getBoundingClientRect().width).to.be.at.most(300);
    expect(scroll!.scrollWidth).to.be.at.least(scroll!.clientWidth);
    expect(scroll!.tabIndex, 'by key too').to.equal(0);
  });

  it('its buttons and boxes are at least 24 pixels either way', async () => {
    const made = await bench(quay, { record: 'R_R1' });
    await press(made, 'Record');
    for (const each of made.all('button, input')) {
      const { width, height } = each.getBoundingClientRect();
      expect(Math.min(width, height), each.textContent).to.be.at.least(24);
    }
  });

  it('its heads stay on the right in a page from right to left', async () => {
    const made = await bench(quay);
    made.page.dir = 'rtl';
    const [head, cell] = made.all('tbody tr:first-child > *').map((each) => each.getBoundingClientRect().x);
    expect(head).to.be.greaterThan(cell!);
  });

  it('on paper it is whole: no buttons, and empty boxes to write in', async () => {
    const made = await bench(quay, { mode: 'part', given: 'V_R1' });
    made.page.style.inlineSize = '200px';
    await emulateFeatures({}, 'print');
    expect(made.all('.buttons')[0]!.checkVisibility()).to.equal(false);
    expect(getComputedStyle(made.all('.scroll')[0]!).overflowX).to.equal('visible');
    const empty = made.all('td:has(input)')[0]!;
    expect(empty.getBoundingClientRect().height).to.be.at.least(24);
    expect(getComputedStyle(empty).borderStyle).to.equal('solid');
  });

  it('and does not jump while a slider moves', async () => {
    const made = await bench(quay);
    const { width } = made.element.getBoundingClientRect();
    for (const ohms of ['4', '20', '40']) {
      made.board.move('R1', ohms);
      await settled();
      expect(made.element.getBoundingClientRect().width, cells(made).join()).to.equal(width);
    }
  });
});
