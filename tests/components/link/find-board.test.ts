import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { findBoard, rootsOf } from '../../../src/components/link/find-board.ts';
import { watchBoards } from '../../../src/components/link/watch-boards.ts';

/** A part of a page, with nothing defined: a board is found before it is one. */
const page = (inside: ReturnType<typeof html>): Promise<HTMLElement> =>
  fixture<HTMLElement>(html`<div>${inside}</div>`);
const reader = (within: ParentNode): Element => within.querySelector('span') ?? document.body;
/** Which board an element finds, or which there are. */
function found(element: Element, name = ''): string {
  const { board, present } = findBoard(element, name);
  return board ? board.id || 'without an id' : `none of ${present.join() || 'none'}`;
}
/** A part of a page in a shadow root of its own. */
function shadow(host: Element, tags: readonly (readonly [string, string])[]): ShadowRoot {
  const root = host.attachShadow({ mode: 'open' });
  for (const [tag, id] of tags) root.append(Object.assign(document.createElement(tag), { id }));
  return root;
}

describe('the board of an element', () => {
  it('is the one that it names, wherever both stand', async () => {
    const within = await page(
      html`<span></span><rheolet-board id="quay"></rheolet-board><rheolet-board id="pump"></rheolet-board>`,
    );
    expect(found(reader(within), 'pump')).to.equal('pump');
    const inside = await page(
      html`<rheolet-board id="fog"
        ><p><span></span></p
      ></rheolet-board>`,
    );
    expect(found(reader(inside), 'pump'), 'from inside another').to.equal('pump');
    expect(found(reader(inside), 'fog lamp'), 'a name that is none').to.equal('fog');
  });

  it('is unless it names one the one in which it stands, also by way of shadow roots', async () => {
    const within = await page(
      html`<rheolet-board id="quay"
          ><p><span></span></p></rheolet-board
        ><rheolet-board id="pump"></rheolet-board>`,
    );
    expect(found(reader(within))).to.equal('quay');
    expect(found(shadow(reader(within), [['b', '']]).firstElementChild ?? within)).to.equal('quay');
  });

  it('is the only one of the nearest root that has any', async () => {
    const within = await page(html`<span></span><rheolet-board></rheolet-board>`);
    expect(found(reader(within))).to.equal('without an id');
    const nested = shadow(reader(within), [
      ['b', ''],
      ['rheolet-board', 'fog'],
    ]);
    expect(found(nested.firstElementChild ?? within)).to.equal('fog');
    nested.lastElementChild?.remove();
    expect(found(nested.firstElementChild ?? within), 'outwards').to.equal('without an id');
  });

  it('is none where there are several: their ids are told, those that have one', async () => {
    const within = await page(
      html`<span></span><rheolet-board id="quay"></rheolet-board><rheolet-board></rheolet-board
        ><rheolet-board id="fog"></rheolet-board>`,
    );
    expect(found(reader(within))).to.equal('none of quay,fog');
    expect(found(reader(within), 'pump')).to.equal('none of quay,fog');
    expect(found(reader(await page(html`<span></span>`)), 'a "b" \\ c')).to.match(/^none of/);
  });

  it('may have any id, also one that is no name in CSS', async () => {
    for (const id of ['1', 'a b', '#quay', 'ü.x', '"', '\\', '-']) {
      const within = await page(
        html`<span></span><rheolet-board id=${id}></rheolet-board><rheolet-board></rheolet-board>`,
      );
      expect(found(reader(within), id), id).to.equal(id);
      within.remove();
    }
  });

  it('is looked for in no root that is not in the page', () => {
    const loose = document.createElement('div');
    expect(rootsOf(loose)).to.deep.equal([]);
    expect(found(loose)).to.equal('none of none');
    expect(rootsOf(document.body)).to.deep.equal([document]);
  });
});

describe('whoever waits for a board', () => {
  /** Counts how often it is told. */
  async function watched(act: (within: HTMLElement) => void): Promise<number> {
    const within = await page(html`<p></p>`);
    let told = 0;
    const stop = watchBoards(within, () => (told += 1));
    act(within);
    await nextFrame();
    stop();
    return told;
  }
  const board = (id = ''): HTMLElement => Object.assign(document.createElement('rheolet-board'), { id });

  it('is told, once for all that happens at once, when one comes, goes or is renamed', async () => {
    expect(await watched((within) => within.append(board(), board()))).to.equal(1);
    const quay = board('quay');
    const comeAndGo = (within: HTMLElement): void => {
      within.append(quay);
      quay.remove();
    };
    expect(await watched(comeAndGo)).to.equal(1);
    const within = await page(html`<p></p>`);
    within.append(quay);
    let told = 0;
    const stop = watchBoards(within, () => (told += 1));
    quay.id = 'pump';
    await nextFrame();
    stop();
    expect(told).to.equal(1);
  });

  it('is told of one that comes within something else', async () => {
    const around = document.createElement('section');
    around.append(board());
    expect(await watched((within) => within.firstElementChild?.append(around))).to.equal(1);
  });

  it('is not told of anything else, however much of it', async () => {
    expect(
      await watched((within) => {
        for (let place = 0; place < 9; place += 1) within.append(document.createElement('p'), 'text');
        within.id = 'other';
        within.firstElementChild?.setAttribute('class', 'x');
      }),
    ).to.equal(0);
  });

  it('is not told any more once it has stopped, others are', async () => {
    const within = await page(html`<p></p>`);
    const told: string[] = [];
    const [first, second] = ['first', 'second'].map((name) =>
      watchBoards(within, () => void told.push(name)),
    );
    first?.();
    within.append(board());
    await nextFrame();
    expect(told).to.deep.equal(['second']);
    second?.();
    second?.();
    within.append(board());
    await nextFrame();
    expect(told).to.deep.equal(['second']);
    const stop = watchBoards(within, () => void told.push('third'));
    within.append(board());
    await nextFrame();
    stop();
    expect(told, 'from the beginning').to.deep.equal(['second', 'third']);
  });
});
