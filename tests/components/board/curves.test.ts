import { expect, fixture, html } from '@open-wc/testing';
import '../../../src/components/all.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';

describe('a board whose circuit has curves', () => {
  it('is drawn and solved once the part of the engine that it needs is there', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board circuit="B1 5 V + R1 [100..1000] 150 Ω + LED1 2 V 20 mA"></rheolet-board>`,
    );
    await board.ready;
    expect(board.solution?.status).to.equal('solved');
    expect(Number(board.solution?.current('LED1'))).to.be.closeTo(0.02, 1e-12);
    expect(board.shadowRoot?.querySelector('[data-id="LED1"]')).to.be.instanceOf(SVGGElement);
    board.set('R1', '1000');
    expect(Number(board.solution?.current('LED1'))).to.be.lessThan(0.004);
  });

  it('follows a slider, and says of the readings what there is to say', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board circuit="B1 6 V + R1 [1..100] 10 Ω + L1 6 V 3 W filament"></rheolet-board>`,
    );
    await board.ready;
    board.move('R1', '50');
    const moving = Number(board.snapshot?.readings.current('L1'));
    board.set('R1', '50');
    expect(Number(board.solution?.current('L1'))).to.be.closeTo(moving, 1e-12);
    expect(board.shadowRoot?.querySelector('[part~="notes"]')?.textContent.trim()).to.equal('');
  });

  it('is not ready with what it showed before, which the browser had no time to finish', async () => {
    const usual = requestIdleCallback;
    const finishing: IdleRequestCallback[] = [];
    globalThis.requestIdleCallback = (work) => finishing.push(work);
    try {
      const board = await fixture<RheoletBoard>(
        html`<rheolet-board circuit="B1 6 V + R1 5 Ω"></rheolet-board>`,
      );
      await new Promise(requestAnimationFrame);
      expect(finishing).not.to.deep.equal([]);
      board.circuit = 'B1 6 V + D1 + R1 5 Ω';
      for (const work of finishing) work({ didTimeout: true, timeRemaining: () => 0 });
      globalThis.requestIdleCallback = usual;
      await board.ready;
      expect(board.circuit?.components.map(({ id }) => id)).to.deep.equal(['B1', 'D1', 'R1']);
    } finally {
      globalThis.requestIdleCallback = usual;
    }
  });

  it('shows the last of the circuits that a page gives, whatever is ready first', async () => {
    const board = await fixture<RheoletBoard>(html`<rheolet-board circuit="B1 6 V + D1"></rheolet-board>`);
    board.circuit = 'B1 6 V + LED1 + R1 5 Ω';
    board.circuit = 'B1 6 V + R7 12 Ω';
    await board.ready;
    await new Promise((done) => setTimeout(done, 50));
    expect(board.circuit?.components.map(({ id }) => id)).to.deep.equal(['B1', 'R7']);
  });
});
