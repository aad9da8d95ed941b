import { expect } from '@open-wc/testing';
import { settled } from '../beside-board.ts';
import { emulateFeatures, type Features } from '../emulate-features.ts';
import { buttonOf, pump, switchBeside } from './bench.ts';

describe('switches of one circuit', () => {
  it('follow each other and the board, wherever they stand', async () => {
    const { element, page, board } = await switchBeside(pump);
    const other = document.createElement('rheolet-switch');
    board.append(other);
    await settled();
    buttonOf(element).click();
    await settled();
    expect(buttonOf(other).getAttribute('aria-checked')).to.equal('true');
    page.append(other);
    board.reset();
    await settled();
    expect([element, other].map(({ value }) => value)).to.deep.equal(['open', 'open']);
  });

  it('show the board that they name, moved, removed, named anew', async () => {
    const { element, page, board } = await switchBeside(pump);
    const second = document.createElement('rheolet-board');
    second.id = 'fog';
    second.setAttribute('circuit', 'B1 6 V + S4 closed + L1 8 Ω');
    page.append(second);
    await second.ready;
    element.board = 'fog';
    await settled();
    expect([buttonOf(element).ariaLabel, element.value]).to.deep.equal(['S4', 'closed']);
    element.remove();
    board.append(element);
    element.board = '';
    await settled();
    expect([buttonOf(element).ariaLabel, element.value]).to.deep.equal(['S1', 'open']);
  });
});

describe('the button of a switch', () => {
  it('is at least 24 pixels high, as wide open as closed, and has its word on the side where the text goes', async () => {
    const { element, page } = await switchBeside(pump);
    const size = (): DOMRect => buttonOf(element).getBoundingClientRect();
    const open = size();
    buttonOf(element).click();
    await settled();
    expect(Math.min(open.width, open.height)).to.be.at.least(24);
    expect([size().width, size().height]).to.deep.equal([open.width, open.height]);
    const left = (name: string): number =>
      element.shadowRoot!.querySelector(`[part=${name}]`)!.getBoundingClientRect().left;
    expect(left('state')).to.be.greaterThan(left('label'));
    page.dir = 'rtl';
    await settled();
    expect(left('state')).to.be.lessThan(left('label'));
  });

  it('has 44 pixels for a coarse pointer', async () => {
    const { element } = await switchBeside(pump);
    const rules = element.shadowRoot!.adoptedStyleSheets.flatMap(({ cssRules }) => [...cssRules]);
    const coarse = rules.find(
      (rule): rule is CSSMediaRule =>
        rule instanceof CSSMediaRule && rule.conditionText === '(pointer: coarse)',
    );
    const sheet = new CSSStyleSheet();
    sheet.replaceSync([...coarse!.cssRules].map(({ cssText }) => cssText).join('\n'));
    element.shadowRoot!.adoptedStyleSheets.push(sheet);
    expect(buttonOf(element).getBoundingClientRect().height).to.be.at.least(44);
  });

  it('is printed with its state', async () => {
    await emulateFeatures({}, 'print');
    const bench = await switchBeside(pump);
    expect(
      bench.all('[part=symbol], [part=state]').every((part) => part.getClientRects().length > 0),
    ).to.equal(true);
  });

  for (const [name, features, scheme] of [
    ['the light scheme', {}, 'light'],
    ['the dark scheme', { 'prefers-color-scheme': 'dark' }, 'light dark'],
    ['forced colours', { 'forced-colors': 'active' }, 'light'],
  ] as readonly [string, Features, string][])
    it(`is accessible in ${name}`, async () => {
      await emulateFeatures(features);
      document.documentElement.style.setProperty('color-scheme', scheme);
      document.documentElement.style.setProperty('background', 'Canvas');
      const { element } = await switchBeside(pump);
      await expect(element).to.be.accessible();
      const button = getComputedStyle(buttonOf(element));
      expect(getComputedStyle(element.shadowRoot!.querySelector('[part=symbol]')!).stroke).to.equal(
        button.color,
      );
      document.documentElement.removeAttribute('style');
    });
});
