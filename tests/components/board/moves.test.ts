import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { exact } from '../exact.ts';
import { sendKeys, sendMouse } from '@web/test-runner-commands';
import { parseCircuit, solveExact, withValue } from '../../../src/engine/index.ts';
import type { ChangeDetail } from '../../../src/components/link/index.ts';
import { settled } from '../beside-board.ts';
import { Bench, boardWith, drag, pumpLine, quayLine, sliderOf } from './bench.ts';

const current = (ohms: number, name: string): number =>
  Number(solveExact(withValue(parseCircuit(quayLine), 'R1', ohms)).quantity(name));

/** What a board tells the page from now on. */
function events(bench: Bench): { readonly type: string; readonly detail: ChangeDetail }[] {
  const heard: { type: string; detail: ChangeDetail }[] = [];
  for (const type of ['rheolet-input', 'rheolet-change'] as const) {
    bench.board.addEventListener(type, ({ detail }) => heard.push({ type, detail }));
  }
  return heard;
}

describe('a slider that is dragged', () => {
  it('takes the ribbons and its own value along in the same frame', async () => {
    const bench = await boardWith(quayLine);
    const before = bench.ribbons;
    drag(bench.slider, 20, false);
    let painted = false;
    const channel = new MessageChannel();
    channel.port1.onmessage = () => (painted = true); // a task after the frame
    await new Promise(requestAnimationFrame);
    channel.port2.postMessage('');
    expect(bench.ribbons).to.not.equal(before);
    await bench.resistor.updateComplete;
    expect(bench.slider.getAttribute('aria-valuetext')).to.equal('24 ohms');
    expect(painted, 'still before the paint').to.equal(false);
  });

  it('changes digits at most 15 times a second, and has them right in the first frame after it is let go', async () => {
    const bench = await boardWith(quayLine);
    let writes = 0;
    const observer = new MutationObserver(() => (writes += 1));
    observer.observe(bench.find('.digits'), { childList: true, characterData: true, subtree: true });
    const start = performance.now();
    let setting = 0;
    while (performance.now() - start < 500) {
      drag(bench.slider, (setting = (setting + 1) % 37), false);
      await nextFrame();
    }
    const elapsed = performance.now() - start;
    expect(writes)
      .to.be.greaterThan(3)
      .and.at.most(Math.ceil((elapsed / 1000) * 15) + 1);
    drag(bench.slider, 16, false);
    drag(bench.slider, 16, true);
    await new Promise(requestAnimationFrame);
    await new Promise((done) => queueMicrotask(() => done(undefined)));
    expect(bench.digits('A1')).to.equal('1.05 A');
    observer.disconnect();
  });

  it('gives every reader one and the same solution, exact at rest', async () => {
    const bench = await boardWith(quayLine);
    const { board } = bench;
    drag(bench.slider, 0, true);
    expect(board.solution).to.equal(board.solution);
    expect(board.snapshot?.readings).to.equal(board.solution);
    expect(exact(board.solution?.current('A1'))).to.equal('9/4');
    const seen = board.solution;
    await bench.settled();
    expect(board.solution, 'nothing was solved again').to.equal(seen);
  });

  it('is live in floating point while it moves', async () => {
    const { board, slider } = await boardWith(quayLine);
    drag(slider, 3, false);
    expect(board.snapshot?.moving).to.equal('R1');
    expect(board.snapshot?.readings.quantity('I_A1')).to.be.closeTo(current(7, 'I_A1'), 1e-14);
    drag(slider, 3, true);
    expect(board.snapshot?.moving).to.equal(undefined);
  });

  it('tells the page while it moves and once it has settled, and what it says is who, what and how much', async () => {
    const bench = await boardWith(quayLine, { id: 'quay' });
    const heard = events(bench);
    drag(bench.slider, 15, false);
    drag(bench.slider, 16, true);
    expect(heard.map(({ type }) => type)).to.deep.equal(['rheolet-input', 'rheolet-input', 'rheolet-change']);
    expect(heard.at(-1)?.detail).to.deep.equal({
      board: 'quay',
      id: 'R1',
      quantity: 'R_R1',
      value: 20,
      text: '20\u202fΩ',
      unit: 'Ω',
    });
  });

  it('moves the other slider of the same resistor, wherever it stands', async () => {
    const root = await fixture(
      html`<div>
        <rheolet-board id="quay" circuit=${quayLine}></rheolet-board
        ><rheolet-resistor board="quay" of="R1"></rheolet-resistor>
      </div>`,
    );
    const bench = new Bench(root.querySelector('rheolet-board')!);
    await bench.board.ready;
    await bench.settled();
    const outside = sliderOf(root.querySelector('rheolet-resistor')!);
    drag(outside, 20, false);
    await settled(); // another slider follows like digits
    expect(bench.slider.value).to.equal('20');
    drag(bench.slider, 4, true);
    await settled();
    expect(outside.value).to.equal('4');
  });

  it('settles although it is let go where it was grabbed', async () => {
    const bench = await boardWith(quayLine);
    const heard = events(bench);
    drag(bench.slider, 9, false);
    drag(bench.slider, 8, false);
    dispatchEvent(new PointerEvent('pointerup'));
    await new Promise((done) => setTimeout(done, 5));
    expect(bench.board.snapshot?.moving).to.equal(undefined);
    expect(heard.at(-1)?.type).to.equal('rheolet-change');
    expect(bench.board.settings).to.deep.equal({});
  });

  it('is dragged by the mouse', async () => {
    const bench = await boardWith(quayLine);
    const box = bench.slider.getBoundingClientRect();
    const y = Math.round(box.top + box.height / 2);
    await sendMouse({ type: 'move', position: [Math.round(box.left + box.width * 0.3), y] });
    await sendMouse({ type: 'down' });
    await sendMouse({ type: 'move', position: [Math.round(box.right + 30), y] });
    expect(bench.board.snapshot?.moving).to.equal('R1');
    await sendMouse({ type: 'up' });
    await bench.settled();
    expect(bench.board.snapshot?.moving).to.equal(undefined);
    expect(bench.board.settings).to.deep.equal({ R1: '40' });
    bench.board.undo();
    expect(bench.board.settings, 'one drag is one change').to.deep.equal({});
  });

  it('obeys the arrow, Page, Home and End keys', async () => {
    const bench = await boardWith(quayLine);
    bench.slider.focus();
    const after = async (key: string): Promise<string | undefined> => {
      await sendKeys({ press: key });
      await bench.settled();
      return bench.board.settings['R1'];
    };
    expect(await after('ArrowRight')).to.equal('13');
    expect(await after('Home')).to.equal('4');
    expect(Number(await after('PageUp'))).to.be.greaterThan(5);
    expect(await after('End')).to.equal('40');
    expect(bench.digits('A1')).to.equal('0.900 A');
  });
});

describe('a board out of sight', () => {
  it('is not touched while something moves, and is right again when it comes into sight', async () => {
    const bench = await boardWith(quayLine);
    const tall = document.createElement('div');
    tall.style.setProperty('height', '5000px');
    bench.board.before(tall);
    await new Promise((done) => setTimeout(done, 100));
    const before = bench.ribbons;
    bench.board.move('R1', 30);
    await bench.settled();
    expect(bench.ribbons).to.equal(before);
    tall.remove();
    await new Promise((done) => setTimeout(done, 100));
    expect(bench.ribbons).to.not.equal(before);
    expect(bench.digits('R1')).to.equal('30 Ω');
  });

  it('is drawn for print', async () => {
    const bench = await boardWith(quayLine);
    const tall = document.createElement('div');
    tall.style.setProperty('height', '5000px');
    bench.board.before(tall);
    await new Promise((done) => setTimeout(done, 100));
    bench.board.set('R1', 20);
    await bench.settled();
    expect(bench.digits('A1')).to.equal('1.25 A');
    dispatchEvent(new Event('beforeprint'));
    expect(bench.digits('A1')).to.equal('1.05 A');
    tall.remove();
  });
});

describe('ribbons', () => {
  it('keep their scale while a slider moves: half the current, half the width', async () => {
    const bench = await boardWith('B1 6 V + R1 [4..40] 4 Ω');
    /** How far the path reaches: the drawing's own width, and the ribbon's. */
    const reach = async (ohms: number): Promise<number> => {
      drag(bench.slider, ohms - 4, false);
      await bench.settled();
      return bench.path.getBBox().width;
    };
    const [whole, half, quarter] = [await reach(4), await reach(8), await reach(16)];
    expect(whole - half)
      .to.be.greaterThan(3)
      .and.be.closeTo(2 * (half - quarter), 0.05);
  });

  it('stay within bounds that stay, so that a browser need not arrange its layers anew', async () => {
    const bench = await boardWith('B1 6 V + R1 [4..40] 4 Ω');
    const moving = bench.find('.moving');
    const bounds = (): string => {
      const { x, y, width, height } = moving instanceof SVGSVGElement ? moving.getBBox() : new DOMRect();
      return [x, y, width, height].map(Math.round).join(' ');
    };
    const [before, ribbons] = [bounds(), bench.ribbons];
    drag(bench.slider, 12, false);
    await bench.settled();
    expect(bench.ribbons).to.not.equal(ribbons);
    expect(bounds()).to.equal(before);
    expect(`0 0 ${before.split(' ').slice(2).join(' ')}`).to.equal(moving.getAttribute('viewBox'));
  });

  it('vanish with the current when a switch is opened', async () => {
    const bench = await boardWith(pumpLine);
    expect(bench.ribbons).to.not.equal('');
    bench.button('S1').click();
    await bench.settled();
    expect(bench.ribbons).to.equal('');
    expect(bench.notes).to.contain('open at S1');
  });
});
