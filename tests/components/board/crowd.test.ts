import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { render } from 'lit';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { quayLine } from './bench.ts';

const isDrawn = (board: RheoletBoard): boolean => board.shadowRoot?.querySelector('[data-id=L1]') !== null;
const heightOf = ({ offsetHeight }: RheoletBoard): number => offsetHeight;
const exactHeightOf = (board: RheoletBoard): number => board.getBoundingClientRect().height;

/** Boards under each other, as their first frame left them. */
async function boardsOnPage(count: number): Promise<readonly RheoletBoard[]> {
  const page = await fixture(
    html`<div>
      ${Array.from({ length: count }, () => html`<rheolet-board circuit=${quayLine}></rheolet-board>`)}
    </div>`,
  );
  await nextFrame();
  return [...page.querySelectorAll('rheolet-board')];
}

/** Whether some of a board lies in the window. */
function isSeen(board: RheoletBoard): boolean {
  const { top, bottom } = board.getBoundingClientRect();
  return top < innerHeight && bottom > 0;
}

describe('a page with a few boards', () => {
  it('is as high in its first frame as when all are drawn, also those out of sight', async () => {
    const boards = await boardsOnPage(12);
    expect(boards.every(isDrawn), 'some wait').to.equal(false);
    const heights = boards.map(heightOf);
    await allReady(boards);
    expect(boards.every(isDrawn)).to.equal(true);
    expect(boards.map(heightOf)).to.deep.equal(heights);
  });
});

/** All boards are drawn, with what stands round them. */
async function allReady(boards: readonly RheoletBoard[]): Promise<void> {
  await Promise.all(boards.map(({ ready }) => ready));
  await Promise.all(boards.map(({ updateComplete }) => updateComplete));
}

describe('a page crowded with boards', () => {
  beforeEach(() => {
    scrollTo(0, 0);
  });

  it('draws in its first frame what is in the window, and all of it in the end', async () => {
    const boards = await boardsOnPage(40);
    expect(boards.some(isSeen)).to.equal(true);
    expect(boards.filter(isSeen).every(isDrawn)).to.equal(true);
    expect(boards.every(isDrawn), 'some wait').to.equal(false);
    await allReady(boards);
    expect(boards.every(isDrawn)).to.equal(true);
    const [first] = boards;
    expect(new Set(boards.map(heightOf))).to.deep.equal(new Set([first?.offsetHeight]));
  });

  it('answers for a board that still waits: its circuit, its readings and what it is set to', async () => {
    const last = (await boardsOnPage(40)).at(-1)!;
    expect(isDrawn(last)).to.equal(false);
    last.set('R1', '8');
    expect(last.settings).to.deep.equal({ R1: '8' });
    expect(last.solution?.current('A1')?.valueOf()).to.be.closeTo(6 / 4, 1e-12);
    await last.ready;
    await last.updateComplete;
    const digits = last.shadowRoot!.querySelector('.digits [data-value=A1]');
    expect(digits?.textContent).to.contain('1.50');
  });

  it('draws a board that comes into sight before its turn', async () => {
    const last = (await boardsOnPage(40)).at(-1)!;
    last.scrollIntoView();
    await last.ready;
    expect(isSeen(last)).to.equal(true);
    expect(isDrawn(last)).to.equal(true);
  });

  it('shows what stands round a drawing in the first frame as well', async () => {
    const [first] = await boardsOnPage(40);
    expect(first?.shadowRoot?.querySelector('rheolet-resistor')).not.to.equal(null);
    expect(first?.shadowRoot?.querySelector('[part=key]')).not.to.equal(null);
  });

  for (const [where, place] of [
    ['at its beginning', 0],
    ['in its midst', 4000],
  ] as const)
    it(`moves nothing in the window ${where} when those out of sight take their turn`, async () => {
      const boards = await boardsOnPage(40);
      scrollTo(0, place);
      await nextFrame();
      await nextFrame();
      const seen = boards.filter(isSeen);
      const tops = (): readonly number[] =>
        seen.map((board) => Math.round(board.getBoundingClientRect().top));
      const before = tops();
      await allReady(boards);
      await nextFrame();
      expect(tops()).to.deep.equal(before);
    });

  it('keeps the room that a waiting board will have', async () => {
    const boards = await boardsOnPage(40);
    const waiting = boards.map(exactHeightOf);
    await allReady(boards);
    expect(boards.map(exactHeightOf)).to.deep.equal(waiting);
  });

  it('keeps the room of each among boards of many circuits, with sliders, switches and faults', async () => {
    const lines = [
      quayLine,
      'B1 6 V + R1 12 Ω',
      'B1 6 V + S1 open + (R1 12 Ω ∥ R2 [1..9 step 1] 6 Ω) + L1 6 V 3 W',
      'B1 6 V + A1',
      'B1 9 V + (R1 10 Ω ∥ (R2 20 Ω + R3 30 Ω) ∥ (R4 40 Ω + R5 50 Ω + R6 60 Ω))',
      'B1 6 V + R1 12 Ω + @A + R2 100 Ω + @B',
    ];
    const page = await fixture(
      html`<div>
        ${Array.from({ length: 60 }, (_, place) => html`<rheolet-board circuit=${lines[place % lines.length]!}></rheolet-board>`)}
      </div>`,
    );
    await nextFrame();
    const boards = [...page.querySelectorAll('rheolet-board')];
    const waiting = boards.map(exactHeightOf);
    expect(new Set(waiting).size, 'they differ').to.be.greaterThan(3);
    expect(boards.filter((board) => !board.shadowRoot!.querySelector('.stage')).length).to.be.greaterThan(40);
    await allReady(boards);
    expect(boards.map(exactHeightOf)).to.deep.equal(waiting);
  });

  it('keeps the room of boards narrower than their drawings', async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    page.style.inlineSize = '217px';
    render(
      Array.from({ length: 40 }, () => html`<rheolet-board circuit=${quayLine}></rheolet-board>`),
      page,
    );
    await nextFrame();
    const boards = [...page.querySelectorAll('rheolet-board')];
    const waiting = boards.map(exactHeightOf);
    await allReady(boards);
    expect(boards.map(exactHeightOf)).to.deep.equal(waiting);
  });

  it('prints all boards, those that wait with what stands round them', async () => {
    const last = (await boardsOnPage(40)).at(-1)!;
    expect(isDrawn(last)).to.equal(false);
    dispatchEvent(new Event('beforeprint'));
    expect(isDrawn(last)).to.equal(true);
    await last.updateComplete;
    expect(last.shadowRoot?.querySelector('[part=controls] rheolet-resistor')).not.to.equal(null);
    expect(last.shadowRoot?.querySelector('.digits [data-value=A1]')?.textContent).to.match(/A$/);
  });

  it('leaves no room behind where there is nothing to draw', async () => {
    const page = await fixture(
      html`<div>${Array.from({ length: 40 }, () => html`<rheolet-board circuit=""></rheolet-board>`)}</div>`,
    );
    const boards = [...page.querySelectorAll('rheolet-board')];
    await allReady(boards);
    for (const { shadowRoot } of boards) expect(shadowRoot?.querySelector('.stage')).to.equal(null);
    const [board] = boards;
    board!.circuit = quayLine;
    await board!.ready;
    await board!.updateComplete;
    expect(isDrawn(board!)).to.equal(true);
  });

  it('is ready only when drawn, also where it comes in the middle of a frame, which ends with what is in sight', async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    for (let count = 0; count < 10; count++) {
      const board = document.createElement('rheolet-board');
      board.setAttribute('circuit', quayLine);
      await nextFrame();
      page.replaceChildren(board);
      expect(await board.ready.then(() => isDrawn(board))).to.equal(true);
    }
  });
});
