import { expect, oneEvent } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import { settled } from '../beside-board.ts';
import { emulateFeatures } from '../emulate-features.ts';
import { isChromium } from '../chromium.ts';
import { bench, heard, plane, quay } from './bench.ts';

describe('a graph is read by keys', () => {
  it('setting by setting, by a tenth, from end to end, and back to where the board stands', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    await made.tab();
    const seen: string[] = [];
    for (const press of [
      'ArrowRight',
      'ArrowUp',
      'ArrowLeft',
      'ArrowDown',
      'PageUp',
      'PageDown',
      'Home',
      'End',
      'Escape',
    ]) {
      await sendKeys({ press });
      await made.element.updateComplete;
      seen.push(/R1 ([\d.]+) ohms/.exec(heard(made))![1]!);
    }
    expect(seen).to.deep.equal(['13', '14', '13', '12', '16', '12', '4', '40', '12']);
    expect(made.board.settings, 'nothing is turned').to.deep.equal({});
  });

  it('with the readings of each setting, under the graph and to be heard', async () => {
    const made = await bench(quay, { of: 'I_A1 I_A2' });
    await made.tab();
    await sendKeys({ press: 'Home' });
    await made.element.updateComplete;
    expect(heard(made)).to.equal(
      'resistance of R1 4 ohms: current through A1 2.25 amperes, current through A2 0.750 amperes',
    );
    expect(made.part('caption').replace(/\s/g, ' ')).to.equal('RR1 = 4 Ω, IA1 = 2.25 A, IA2 = 0.750 A');
    expect(plane(made).getAttribute('aria-valuenow')).to.equal('4');
    expect(made.all('.read')).to.have.length(1);
  });

  it('and leaves other keys to the page', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    const event = new KeyboardEvent('keydown', {
      key: 'ArrowRight',
      ctrlKey: true,
      cancelable: true,
      bubbles: true,
    });
    plane(made).dispatchEvent(event);
    expect(event.defaultPrevented).to.equal(false);
  });
});

describe('a graph is read by pointer', () => {
  it('at the setting nearest to it, until the pointer leaves', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    await made.leave();
    await made.point(plane(made));
    const ohms = Number(/R1 ([\d.]+) ohms/.exec(heard(made))![1]);
    expect(ohms).to.be.within(15, 25);
    await made.leave();
    await made.element.updateComplete;
    expect(heard(made)).to.match(/R1 12 ohms/);
  });

  it('and what it shows stands out on the board meanwhile, as with the focus', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    await made.leave();
    await made.point(plane(made));
    expect(made.lit).to.have.members(['A1', 'R1']);
    await made.leave();
    expect(made.lit).to.deep.equal([]);
    await made.tab();
    expect(made.lit).to.have.members(['A1', 'R1']);
  });
});

describe('a graph and its page', () => {
  it('has a name: what is drawn against what, or the page’s own', async () => {
    const made = await bench(quay, { of: 'I_A1 I_A2' });
    expect(plane(made).getAttribute('aria-label')).to.equal(
      'Graph of current through A1 and current through A2 against resistance of R1',
    );
    made.element.setAttribute('label', 'The quay');
    await made.element.updateComplete;
    expect(plane(made).getAttribute('aria-label')).to.equal('The quay');
  });

  it('tells it what cannot be drawn, once', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    const told = oneEvent<CustomEvent<ProblemDetail>>(made.element, 'rheolet-problem');
    made.element.setAttribute('of', 'I_A1 V_R1');
    expect((await told).detail.code).to.equal('one unit');
  });

  it('fits into a narrow column, no text of its axes on another', async () => {
    const made = await bench('B1 5 V + R1 10 kΩ + LDR1 5 kΩ', { of: 'V_LDR1 V_R1', against: 'light' });
    for (const width of [288, 480, 900]) {
      made.page.style.inlineSize = `${width}px`;
      await settled();
      expect(made.element.scrollWidth).to.be.at.most(made.element.clientWidth);
      const boxes = made
        .all('svg text')
        .map((text) => [text.textContent, text.getBoundingClientRect()] as const);
      expect(boxes.length).to.be.above(6);
      for (const [name, a] of boxes)
        for (const [other, b] of boxes.filter(([, box]) => box !== a)) {
          const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
          expect(apart, `${name} on ${other} at ${width}`).to.equal(true);
        }
    }
  });

  it('stays as it is in a page that goes from right to left', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    made.page.dir = 'rtl';
    await settled();
    expect(getComputedStyle(plane(made)).direction).to.equal('ltr');
  });

  for (const scheme of ['light', 'dark'] as const)
    it(`is accessible, with its values open: ${scheme}`, async () => {
      await emulateFeatures({ 'prefers-color-scheme': scheme });
      const made = await bench(quay, { of: 'I_A1 I_A2' });
      made.element.shadowRoot!.querySelector('details')!.open = true;
      await settled();
      await expect(made.element).to.be.accessible();
    });

  it('is printed whole on one page, as wide as that: without buttons, and without values that are folded', async () => {
    const made = await bench(quay, { of: 'I_A1' });
    const [picture] = made.all('svg');
    const look = (selector: string): CSSStyleDeclaration => getComputedStyle(made.all(selector)[0]!);
    expect(look('[part=plane]').overflowX).not.to.equal('visible');
    await emulateFeatures({}, 'print');
    expect(getComputedStyle(made.element).breakInside).to.equal('avoid');
    expect(look('[part=plane]').overflowX).to.equal('visible');
    expect(look('details').display).to.equal('none');
    made.all('details')[0]!.toggleAttribute('open', true);
    expect(look('details').display).to.equal('block');
    expect(look('.buttons').display).to.equal('none');
    expect(look('.scroll').overflowX).to.equal('visible');
    expect(look('tr').breakInside).to.equal('avoid');
    made.page.style.inlineSize = '120px';
    expect(picture!.getBoundingClientRect().width).to.be.at.most(120);
  });

  it('keeps curves and axes apart from the ground in forced colours', async function () {
    if (!isChromium) this.skip();
    await emulateFeatures({ 'forced-colors': 'active' });
    const made = await bench(quay, { of: 'I_A1' });
    const { stroke } = getComputedStyle(made.all('.curve')[0]!);
    expect(stroke).not.to.equal(getComputedStyle(document.body).backgroundColor);
    await expect(made.element).to.be.accessible();
  });
});
