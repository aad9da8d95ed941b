import { expect, fixture, html } from '@open-wc/testing';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import '../../../src/components/board/define.ts';
import { settled } from '../beside-board.ts';

const line = 'B1 6 V + S1 closed + R1 [2..40] 12 Ω + (R2 [2..40] 6 Ω ∥ L1 6 Ω)';

async function made(): Promise<RheoletBoard> {
  const board = await fixture<RheoletBoard>(html`<rheolet-board id="quay" circuit=${line}></rheolet-board>`);
  await board.ready;
  await settled();
  return board;
}

describe('settings that a pupil asks for at once', () => {
  it('are one step, undone and redone in one', async () => {
    const board = await made();
    board.act({ R1: '20', R2: '8', S1: 'open' });
    expect(board.settings).to.deep.equal({ R1: '20', R2: '8', S1: 'open' });
    board.undo();
    expect(board.settings).to.deep.equal({});
    board.redo();
    expect(board.settings).to.deep.equal({ R1: '20', R2: '8', S1: 'open' });
  });

  it('leave the others as they are', async () => {
    const board = await made();
    board.set('L1', 'broken');
    board.set('R2', '10');
    board.act({ R1: '20' });
    expect(board.settings).to.deep.equal({ L1: 'broken', R2: '10', R1: '20' });
    board.undo();
    expect(board.settings).to.deep.equal({ L1: 'broken', R2: '10' });
  });

  it('are told to the page, a component at a time, and only what changes', async () => {
    const board = await made();
    const told: string[] = [];
    board.addEventListener(
      'rheolet-change',
      ({ detail }) => void told.push(`${detail.quantity || detail.id} ${detail.text}`),
    );
    board.act({ R1: '20', R2: '6', S1: 'open' });
    expect(told.map((each) => each.replace(/\s/g, ' '))).to.deep.equal(['S1 open', 'R_R1 20 Ω']);
  });

  it('make no step where all of it is so already', async () => {
    const board = await made();
    board.set('R1', '20');
    board.act({ R1: '20', S1: 'closed' });
    board.undo();
    expect(board.settings).to.deep.equal({});
  });

  it('are refused as a whole where one cannot be had', async () => {
    const board = await made();
    expect(() => board.act({ R1: '20', R9: '5' })).to.throw('R9');
    expect(() => board.act({ R1: '2000' })).to.throw();
    expect(board.settings).to.deep.equal({});
  });
});
