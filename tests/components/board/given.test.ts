import { expect, fixture, html } from '@open-wc/testing';
import { formatCircuit } from '../../../src/engine/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import { boardWith, quayLine } from './bench.ts';

const written = ({ circuit }: RheoletBoard): string =>
  (circuit ? formatCircuit(circuit) : '').replaceAll(/\s/g, ' ');

describe('what a page gives a board', () => {
  it('lets go of whoever waits for what was given before', async () => {
    const { board } = await boardWith(quayLine);
    board.circuit = 'B1 6 V + D1 + R1 5 Ω';
    const before = board.ready;
    board.circuit = 'B1 6 V + R7 3 Ω';
    await before;
    await board.ready;
    expect(written(board)).to.equal('B1 6 V + R7 3 Ω');
  });

  it('is read when the board comes into the page, and not again when it comes back', async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    const board = document.createElement('rheolet-board');
    board.circuit = 'B1 6 V + R1 [1..9] 5 Ω';
    expect(board.circuit).to.equal(undefined);
    page.append(board);
    await board.ready;
    board.set('R1', '3');
    const { circuit } = board;
    board.remove();
    page.append(board);
    await board.ready;
    expect(board.circuit).to.equal(circuit);
  });

  it('is read when it comes back, where something else was given meanwhile', async () => {
    const { board } = await boardWith(quayLine);
    const page = board.parentElement!;
    board.remove();
    board.circuit = 'B1 6 V + R7 3 Ω';
    page.append(board);
    await board.ready;
    expect(written(board)).to.equal('B1 6 V + R7 3 Ω');
  });

  it('is read when it comes back, where its text was changed meanwhile', async () => {
    const page = await fixture<HTMLElement>(html`<div><rheolet-board>B1 6 V + R1 5 Ω</rheolet-board></div>`);
    const board = page.querySelector('rheolet-board')!;
    await board.ready;
    board.remove();
    board.textContent = 'B1 6 V + R7 3 Ω';
    page.append(board);
    await board.ready;
    expect(written(board)).to.equal('B1 6 V + R7 3 Ω');
  });

  it('is told of once where it cannot be read, however often the board comes back', async () => {
    const page = await fixture<HTMLElement>(html`<div></div>`);
    const problems: ProblemDetail[] = [];
    page.addEventListener('rheolet-problem', ({ detail }) => problems.push(detail));
    const board = document.createElement('rheolet-board');
    board.setAttribute('circuit', 'B1 6 V + + R1 5 Ω');
    page.append(board);
    await board.ready;
    board.remove();
    page.append(board);
    await board.ready;
    await board.updateComplete;
    expect(problems.map(({ code }) => code)).to.deep.equal(['expected']);
  });
});
