import { expect, fixture, html, nextFrame, oneEvent } from '@open-wc/testing';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import { Reader, StubBoard } from './reader.ts';

customElements.define('rheolet-board', StubBoard);
customElements.define('x-reader', Reader);

const shown = (element: Element | null): string => element?.shadowRoot?.textContent ?? '';

async function page(template: ReturnType<typeof html>): Promise<HTMLElement> {
  const root = await fixture<HTMLElement>(template);
  await nextFrame();
  return root;
}

describe('an element finds its board', () => {
  it('by the id it names', async () => {
    const root = await page(
      html`<div>
        <rheolet-board id="a"></rheolet-board><rheolet-board id="b"></rheolet-board
        ><x-reader board="b"></x-reader>
      </div>`,
    );
    expect(shown(root.querySelector('x-reader'))).to.match(/^b\|/);
  });

  it('by standing inside it, also inside its shadow root', async () => {
    const root = await page(
      html`<div>
        <rheolet-board id="a"
          ><p><x-reader></x-reader></p></rheolet-board
        ><rheolet-board id="b"></rheolet-board>
      </div>`,
    );
    expect(shown(root.querySelector('x-reader'))).to.match(/^a\|/);
    const inner = new Reader();
    const board = root.querySelector('#b')!;
    board.attachShadow({ mode: 'open' }).append(inner);
    await inner.updateComplete;
    expect(shown(inner)).to.match(/^b\|/);
  });

  it('as the only board of its root where a host has prefixed the ids', async () => {
    const root = await page(
      html`<div>
        <rheolet-board id="user-content-quay"></rheolet-board><x-reader board="quay"></x-reader>
      </div>`,
    );
    expect(shown(root.querySelector('x-reader'))).to.match(/^user-content-quay\|/);
  });

  it('in its own root before the page, and outwards where its own root has none', async () => {
    const root = await page(
      html`<div>
        <rheolet-board id="a" class="outer"></rheolet-board>
        <p id="host"></p>
        <p id="bare"></p>
      </div>`,
    );
    const host = root.querySelector('#host')!.attachShadow({ mode: 'open' });
    const bare = root.querySelector('#bare')!.attachShadow({ mode: 'open' });
    const [inside, outside] = [new Reader(), new Reader()];
    inside.board = outside.board = 'a';
    const own = new StubBoard();
    own.id = 'a';
    host.append(own, inside);
    bare.append(outside);
    expect(inside.link.board).to.equal(own);
    expect(outside.link.board).to.equal(root.querySelector('.outer'));
  });

  it('says the names there are where none fits, in the element and in one event', async () => {
    const root = await page(
      html`<div><rheolet-board id="quay"></rheolet-board><rheolet-board id="pump"></rheolet-board></div>`,
    );
    const reader = new Reader();
    reader.board = 'key';
    const problem = oneEvent<CustomEvent<ProblemDetail>>(root, 'rheolet-problem');
    root.append(reader);
    const { detail } = await problem;
    expect(detail).to.include({ board: 'key', code: 'no board' });
    expect(detail.text).to.equal('There is no board “key” here; there is quay and pump.');
    await reader.updateComplete;
    expect(shown(reader)).to.equal(`-|${detail.text}`);
  });
});

describe('an element stays with its board', () => {
  it('when the board is renamed, taken away and put back', async () => {
    const root = await page(
      html`<div>
        <rheolet-board id="a"></rheolet-board><rheolet-board id="b"></rheolet-board
        ><x-reader board="c"></x-reader>
      </div>`,
    );
    const reader = root.querySelector<Reader>('x-reader')!;
    const board = root.querySelector<StubBoard>('#a')!;
    expect(shown(reader)).to.contain('There is no board “c”');
    board.id = 'c';
    await nextFrame();
    expect(shown(reader)).to.match(/^c\|/);
    board.remove();
    await nextFrame();
    expect(shown(reader), 'the only one left').to.match(/^b\|/);
    expect(board.listeners.size).to.equal(0);
    root.append(board);
    await nextFrame();
    expect(shown(reader)).to.match(/^c\|/);
  });

  it('and leaves no listener behind when it is removed a thousand times', async () => {
    const root = await page(html`<div><rheolet-board id="a"></rheolet-board></div>`);
    const board = root.querySelector<StubBoard>('#a')!;
    const reader = new Reader();
    for (let round = 0; round < 1000; round += 1) {
      root.append(reader);
      reader.remove();
    }
    expect(board.listeners.size).to.equal(0);
    root.append(reader);
    expect(board.listeners.size).to.equal(1);
  });

  it('renders once for many changes in one frame', async () => {
    const root = await page(html`<div><rheolet-board id="a"></rheolet-board><x-reader></x-reader></div>`);
    const board = root.querySelector<StubBoard>('#a')!;
    const reader = root.querySelector<Reader>('x-reader')!;
    const before = reader.renders;
    for (let change = 0; change < 20; change += 1) board.change({});
    await nextFrame();
    await nextFrame();
    expect(reader.renders).to.equal(before + 1);
  });
});
