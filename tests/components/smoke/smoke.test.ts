import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { parseCircuit, solveExact, withValue } from '../../../src/engine/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { tags } from '../any-element/elements.ts';
import { settled } from '../beside-board.ts';
import { Bench, boardWith, drag, pumpLine, quayLine, sliderOf, text } from '../board/bench.ts';

/** A page with one board and whatever reads it. */
async function page(): Promise<{ root: HTMLElement; bench: Bench; shown: (tag: string) => string }> {
  const root = await fixture<HTMLElement>(
    html`<article>
      <rheolet-board id="quay" circuit=${quayLine}></rheolet-board>
      <p>Turn <rheolet-resistor board="quay" of="R1"></rheolet-resistor>:</p>
      <rheolet-value board="quay" of="I_A1"></rheolet-value>
      <rheolet-meter board="quay" of="A2"></rheolet-meter>
      <rheolet-rules board="quay"></rheolet-rules>
    </article>`,
  );
  const board = root.querySelector<RheoletBoard>('rheolet-board')!;
  await board.ready;
  await settled();
  const shown = (tag: string): string => text(root.querySelector(tag)!.shadowRoot as unknown as Element);
  return { root, bench: new Bench(board), shown };
}

describe('in every browser', () => {
  it('every element is defined', () => {
    expect(tags).to.include('rheolet-board');
    for (const tag of tags) expect(customElements.get(tag), tag).to.be.a('function');
  });

  it('a circuit is drawn with its ribbons and its digits', async () => {
    const { bench } = await page();
    expect(bench.all('[data-id]')).to.have.length(5);
    expect(bench.ribbons)
      .to.match(/^M[\d., \w-]+Z$/)
      .and.not.contain('NaN');
    expect(bench.digits('A1')).to.equal('1.25 A');
  });

  it('a drawing has a size on the screen, and its symbols stand apart', async () => {
    const { bench } = await page();
    const boxes = bench.all('[data-id]').map((symbol) => symbol.getBoundingClientRect());
    for (const { width, height } of boxes) expect(Math.max(width, height)).to.be.greaterThan(20);
    expect(new Set(boxes.map(({ x, y }) => `${Math.round(x)} ${Math.round(y)}`)).size).to.equal(5);
  });

  it('what is beside it reads what it shows', async () => {
    const { shown } = await page();
    expect(shown('rheolet-value')).to.contain('1.25');
    expect(shown('rheolet-meter')).to.contain('0.750');
    expect(shown('rheolet-rules')).to.contain('junction');
  });

  it('a slider turned by the arrow keys turns everything', async () => {
    const { root, shown } = await page();
    const slider = sliderOf(root.querySelector('p rheolet-resistor')!);
    slider.focus();
    await sendKeys({ press: 'Home' });
    await settled();
    expect(slider.value).to.equal('0');
    expect(shown('rheolet-value')).to.contain('2.25');
    await sendKeys({ press: 'ArrowRight' });
    await settled();
    const exact = solveExact(withValue(parseCircuit(quayLine), 'R1', 5)).quantity('I_A1');
    expect(shown('rheolet-value')).to.contain(Number(exact).toPrecision(3));
  });

  it('a slider dragged is undone and done again', async () => {
    const { root, bench, shown } = await page();
    drag(sliderOf(root.querySelector('p rheolet-resistor')!), 0, true);
    await settled();
    expect(shown('rheolet-value')).to.contain('2.25');
    bench.board.undo();
    await settled();
    expect(shown('rheolet-value')).to.contain('1.25');
    bench.board.redo();
    await settled();
    expect(shown('rheolet-value')).to.contain('2.25');
  });

  it('a switch opens by the Enter key', async () => {
    const bench = await boardWith(pumpLine);
    bench.component('S1').focus();
    await sendKeys({ press: 'Enter' });
    await bench.settled();
    expect(bench.ribbons).to.equal('');
  });

  it('the arrow keys walk from component to component', async () => {
    const bench = await boardWith(pumpLine);
    bench.component('S1').focus();
    await sendKeys({ press: 'ArrowRight' });
    expect(bench.board.shadowRoot?.activeElement).to.equal(bench.component('R1'));
  });

  it('pointing at a meter makes its component stand out', async () => {
    const { root, bench } = await page();
    const meter = root.querySelector('rheolet-meter')!;
    meter.scrollIntoView({ block: 'center' });
    const { x, y, width, height } = meter.getBoundingClientRect();
    await sendMouse({ type: 'move', position: [Math.round(x + width / 2), Math.round(y + height / 2)] });
    await settled();
    expect(bench.component('A2').classList.contains('lit')).to.equal(true);
    await sendMouse({ type: 'move', position: [0, 0] });
  });

  it('a mistake in a line is told with its column', async () => {
    const bench = await boardWith('B1 6 V + + R1');
    expect(text(bench.find('[part=problem]'))).to.match(/column 10/);
  });

  it('a board fits a narrow column', async () => {
    const { root, bench } = await page();
    root.style.width = '300px';
    await settled();
    expect(bench.board.scrollWidth).to.be.at.most(300);
  });

  it('a board as SVG is well-formed and says what it is', async () => {
    const { bench } = await page();
    const svg = new DOMParser().parseFromString(await bench.board.toSVG(), 'image/svg+xml');
    expect(svg.querySelector('parsererror')).to.equal(null);
    expect(svg.documentElement.localName).to.equal('svg');
    expect(svg.querySelector('title, desc')?.textContent).to.not.equal('');
  });

  it('axe finds nothing', async () => {
    const { root } = await page();
    await expect(root).to.be.accessible();
  });
});
