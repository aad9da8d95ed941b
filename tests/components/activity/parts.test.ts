// In which order the parts of an activity are covered and revealed.
import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { partsOf, usualOrder } from '../../../src/components/activity/parts.ts';

/** The words for what a board hides by its own. */
const ofBoard = ['ribbons', 'readings'];
const tags = ['board', 'meter', 'value', 'table', 'rules', 'graph'] as const;

/** A page of some elements, some with ids; boards have the words that they hide. */
function page(list: readonly { readonly tag: string; readonly id: string }[]): HTMLElement {
  const activity = document.createElement('div');
  for (const { tag, id } of list) {
    const element = document.createElement(`rheolet-${tag}`);
    if (id) element.id = id;
    if (tag === 'board') Object.assign(element, { hide: 'arrows' });
    const wrapped = document.createElement('p');
    wrapped.append(element);
    activity.append(wrapped);
  }
  return activity;
}

const pages = fc.array(
  fc.record({ tag: fc.constantFrom(...tags), id: fc.constantFrom('', '', 'quay', 'fog', 'Pump') }),
  { maxLength: 8 },
);
const orders = fc
  .array(
    fc.constantFrom(...tags, 'ribbons', 'readings', 'quay', 'fog', 'PUMP', 'none', 'nonsense', 'constructor'),
    {
      maxLength: 6,
    },
  )
  .chain((words) => fc.constantFrom(' ', ', ', '\n').map((space) => words.join(space)));

describe('the parts of an activity', () => {
  it('are each revealed once, in the order of the words, and of the page under one word', () => {
    fc.assert(
      fc.property(pages, orders, (list, order) => {
        const activity = page(list);
        const all = [...activity.querySelectorAll<HTMLElement>('*')];
        const parts = partsOf(activity, order);
        const words = (order.trim() || usualOrder).toLowerCase().split(/[\s,]+/);
        const places = parts.map(({ element }) => {
          const own = words.findIndex(
            (word) => element.id.toLowerCase() === word || element.localName === `rheolet-${word}`,
          );
          return [
            own < 0 ? words.findIndex((word) => ofBoard.includes(word)) : own,
            all.indexOf(element),
          ] as const;
        });
        for (const [word] of places) expect(word, order).to.be.at.least(0);
        const whole = parts.filter(
          ({ element }) => !('hide' in element) || !ofBoard.some((word) => words.includes(word)),
        );
        expect(new Set(whole.map(({ element }) => element)).size, 'each once').to.equal(whole.length);
      }),
      { numRuns: 300 },
    );
  });

  it('are as they were once all that was covered is revealed, in whatever order', () => {
    fc.assert(
      fc.property(pages, orders, fc.array(fc.nat(), { maxLength: 8 }), (list, order, draws) => {
        const activity = page(list);
        const look = (): string =>
          [...activity.querySelectorAll<HTMLElement & { hide?: string }>('*')]
            .map(({ hide = '', style }) => `${hide}|${style.visibility}`)
            .join();
        const before = look();
        const parts = partsOf(activity, order);
        for (const part of parts) part.cover();
        if (parts.length > 0) expect(look()).to.not.equal(before);
        const mixed = parts.map((part, k) => ({ part, key: draws[k] ?? k })).sort((a, b) => a.key - b.key);
        for (const { part } of mixed) part.reveal();
        expect(look()).to.equal(before);
      }),
      { numRuns: 300 },
    );
  });

  it('are, unless the page says otherwise, what reads the board, after its ribbons; none with “none”', () => {
    const list = [...tags].reverse().map((tag) => ({ tag, id: '' }));
    const found = partsOf(page(list), '').map(({ element }) => element.localName.replace('rheolet-', ''));
    expect(found).to.deep.equal(['board', 'value', 'meter', 'graph', 'table', 'rules']);
    expect(partsOf(page(list), 'none')).to.deep.equal([]);
  });

  it('of one board are covered beside each other and revealed one by one', () => {
    const activity = page([{ tag: 'board', id: 'quay' }]);
    const board = activity.querySelector<HTMLElement & { hide: string }>('#quay');
    if (!board) throw new Error('no board');
    board.hide = '';
    const parts = partsOf(activity, 'readings ribbons');
    for (const part of parts) part.cover();
    expect(board.hide).to.equal('readings ribbons arrows');
    parts[0]?.reveal();
    expect(board.hide).to.equal('ribbons arrows');
    parts[0]?.cover();
    expect(board.hide).to.equal('ribbons arrows readings');
    parts[1]?.reveal();
    expect(board.hide).to.equal('readings');
  });

  it('of a board are its ribbons, hidden by its own words, or all of it, by its tag or its id', () => {
    const activity = page([{ tag: 'board', id: 'quay' }]);
    const board = activity.querySelector<HTMLElement & { hide: string }>('#quay');
    if (!board) throw new Error('no board');
    const [ribbons] = partsOf(activity, 'ribbons');
    ribbons?.cover();
    expect([board.hide, board.style.visibility]).to.deep.equal(['arrows ribbons', '']);
    ribbons?.reveal();
    expect(board.hide).to.equal('arrows');
    for (const word of ['board', 'QUAY']) {
      const [whole] = partsOf(activity, word);
      whole?.cover();
      expect([board.hide, board.style.visibility]).to.deep.equal(['arrows', 'hidden']);
      whole?.reveal();
      expect(board.style.visibility).to.equal('');
    }
  });
});
