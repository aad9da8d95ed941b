import { expect } from '@open-wc/testing';
import type { BoardFace } from '../../../src/components/link/index.ts';
import { Spotlight } from '../../../src/components/spotlight/index.ts';

/** A board that only writes down what it is asked to light up. */
function boardWith(asked: string[]): BoardFace {
  const board = document.createElement('div');
  return Object.assign(board, {
    snapshot: undefined,
    settings: {},
    subscribe: () => () => {},
    set: () => {},
    move: () => {},
    act: () => undefined,
    light: (ids: readonly string[]) => asked.push(ids.join(' ')),
  });
}

const host = {
  addController: () => {},
  removeController: () => {},
  requestUpdate: () => {},
  updateComplete: Promise.resolve(true),
};

describe('a spotlight', () => {
  it('asks the board only where something changes', () => {
    const asked: string[] = [];
    const board = boardWith(asked);
    const spotlight = new Spotlight(host);
    for (const ids of [[], ['R1'], ['R1'], ['R1', 'R2'], [], []]) spotlight.shine(board, ids);
    expect(asked).to.deep.equal(['R1', 'R1 R2', '']);
  });

  it('goes out on the board that its host leaves for another', () => {
    const [before, after]: [string[], string[]] = [[], []];
    const spotlight = new Spotlight(host);
    spotlight.shine(boardWith(before), ['R1']);
    spotlight.shine(boardWith(after), ['R1']);
    expect(before).to.deep.equal(['R1', '']);
    expect(after).to.deep.equal(['R1']);
  });

  it('goes out when its host is taken away, and can shine again', () => {
    const asked: string[] = [];
    const board = boardWith(asked);
    const spotlight = new Spotlight(host);
    spotlight.shine(board, ['R1']);
    spotlight.hostDisconnected();
    spotlight.shine(board, ['R1']);
    expect(asked).to.deep.equal(['R1', '', 'R1']);
  });

  it('shines nowhere without a board', () => {
    const spotlight = new Spotlight(host);
    expect(() => spotlight.shine(undefined, ['R1'])).to.not.throw();
  });
});
