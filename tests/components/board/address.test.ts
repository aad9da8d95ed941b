import { expect, fixture, html } from '@open-wc/testing';
import { sendKeys } from '@web/test-runner-commands';
import fc from 'fast-check';
import { parseCircuit } from '../../../src/engine/index.ts';
import { fragmentNow, settingsIn } from '../../../src/components/board/address.ts';
import { join, leave } from '../../../src/components/board/present.ts';
import { BoardStore } from '../../../src/components/board/store.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import { boardWith, pumpLine, text, type Bench } from './bench.ts';
import { eventually } from '../eventually.ts';

const called = (id: string): HTMLElement => Object.assign(document.createElement('i'), { id });

/** Runs with boards in the page, each with its settings. */
function withBoards<T>(boards: readonly (readonly [HTMLElement, Record<string, string>])[], run: () => T): T {
  for (const [board, settings] of boards) {
    const store = new BoardStore();
    store.open(parseCircuit(pumpLine));
    store.replace(settings);
    join(board, store);
  }
  const result = run();
  for (const [board] of boards) leave(board);
  return result;
}

const settingsOfPump = fc.record(
  {
    R1: fc.integer({ min: 4, max: 40 }).map(String),
    S1: fc.constant('open'),
  },
  { requiredKeys: [] },
);
const name = fc.oneof(fc.string({ minLength: 1 }), fc.string({ unit: 'grapheme', minLength: 1 }));
const differing = (settings: Record<string, string>): Record<string, string> =>
  Object.fromEntries(Object.entries(settings).filter(([, value]) => value !== '12'));

/** Follows a link within the page. */
async function go(hash: string): Promise<void> {
  const changed = new Promise((done) => addEventListener('hashchange', done, { once: true }));
  location.hash = hash;
  await changed;
}

describe('the fragment of an address', () => {
  it('reads as it was meant to', () => {
    const settings = { R1: '20', S1: 'open' };
    expect(withBoards([[called('quay'), settings]], () => fragmentNow(''))).to.equal(
      '#rheolet=quay:S1=open,R1=20',
    );
  });

  for (const [fragment, expected] of [
    ['#rheolet=quay:R1=20,S1=closed', { R1: '20', S1: 'closed' }],
    ['#rheolet=pump:R1=4;quay:R1=20', { R1: '20' }],
    ['#chapter&rheolet=quay:R1=1%2F3', { R1: '1/3' }],
    ['#rheolet=quay:R1=20+broken&page=2', { R1: '20 broken' }],
    ['#rheolet=%71uay:R1=20', { R1: '20' }],
    ['#rheolet=quay:', {}],
    ['#rheolet=quay:__proto__=1', JSON.parse('{"__proto__":"1"}')],
    ['#rheolet=pump:R1=20', undefined],
    ['#rheolet=', undefined],
    ['#quay:R1=20', undefined],
    ['', undefined],
  ] as const)
    it(`${fragment || 'nothing'} asks a board called quay for ${expected ? JSON.stringify(expected) : 'nothing'}`, () => {
      expect(settingsIn(fragment, called('quay'))).to.deep.equal(expected);
    });

  for (const fragment of [
    '#rheolet=quay:R1',
    '#rheolet=quay:R1=1=2',
    '#rheolet=quay:R1=1:2',
    '#rheolet=quay:R1=%E0%A4%A',
    '#rheolet=%:R1=1',
    `#rheolet=quay:R1=${'1'.repeat(8000)}`,
  ])
    it(`${fragment.slice(0, 30)} cannot be read`, () => {
      expect(() => settingsIn(fragment, called('quay'))).to.throw(URIError);
    });

  it('brings back what every board is set to, whatever the boards are called, and leaves what is not ours', () => {
    const others = fc.array(fc.stringMatching(/^[a-z/]{1,8}(=[a-z]{0,8})?$/), { maxLength: 3 });
    fc.assert(
      fc.property(
        fc.uniqueArray(fc.tuple(name, settingsOfPump), { selector: ([id]) => id, maxLength: 4 }),
        others,
        (named, parts) => {
          const boards = named.map(([id, settings]) => [called(id), settings] as const);
          const before = parts.length > 0 ? `#${parts.join('&')}` : '';
          const after = withBoards(boards, () => fragmentNow(before));
          for (const [board, settings] of boards)
            expect(settingsIn(after, board) ?? {}).to.deep.equal(differing(settings));
          expect(after).to.satisfy((text: string) => text.startsWith(before));
          expect(after, 'stands in an address as it is').to.equal(new URL(`https://a.invalid/${after}`).hash);
          expect(withBoards([], () => fragmentNow(after))).to.equal(before);
        },
      ),
      { numRuns: 300 },
    );
  });

  it('of any letters is read or refused, and nothing else happens', () => {
    const signs = fc.constantFrom(
      ...'# & ; : , = + % @ rheolet= quay R1 20 %4 é \ud800 __proto__'.split(' '),
    );
    const any = fc.oneof(
      fc.string(),
      fc.array(signs, { maxLength: 30 }).map((all) => all.join('')),
    );
    fc.assert(
      fc.property(any, fc.oneof(fc.constantFrom('quay', '', '@1', '\ud800'), fc.string()), (fragment, id) => {
        const board = called(id);
        try {
          const settings = settingsIn(fragment, board) ?? {};
          expect(Object.getPrototypeOf(settings)).to.equal(Object.prototype);
          for (const value of Object.values(settings)) expect(value).to.be.a('string');
        } catch (error) {
          expect(error).to.be.instanceOf(URIError);
        }
        const now = withBoards([[board, { R1: '20' }]], () => fragmentNow(fragment));
        expect(settingsIn(now, board)).to.deep.equal({ R1: '20' });
      }),
      { numRuns: 1000 },
    );
  });
});

describe('a board that is opened by a link', () => {
  const open = async (hash: string, ids: readonly string[]): Promise<readonly RheoletBoard[]> => {
    history.replaceState(null, '', hash);
    const root = await fixture<HTMLElement>(
      html`<div>
        ${ids.map((id) =>
          id
            ? html`<rheolet-board id=${id} circuit=${pumpLine}></rheolet-board>`
            : html`<rheolet-board circuit=${pumpLine}></rheolet-board>`,
        )}
      </div>`,
    );
    const boards = [...root.querySelectorAll('rheolet-board')];
    await Promise.all(boards.map(({ ready }) => ready));
    return boards;
  };
  const problems: string[] = [];
  const hear = ({ detail }: CustomEvent<{ code: string }>): void => void problems.push(detail.code);

  beforeEach(() => {
    problems.length = 0;
    document.addEventListener('rheolet-problem', hear);
  });
  afterEach(() => {
    document.removeEventListener('rheolet-problem', hear);
    history.replaceState(null, '', location.pathname + location.search);
  });

  it('stands as the link says, each board of the page by its name or its place; a reset leads to the circuit of the page', async () => {
    const boards = await open('#rheolet=@2:S1=open;quay:R1=20', ['', 'quay', '']);
    expect(boards.map(({ settings }) => settings)).to.deep.equal([{}, { R1: '20' }, { S1: 'open' }]);
    const [, quay] = boards;
    quay?.undo();
    expect(quay?.settings, 'that is where its history begins').to.deep.equal({ R1: '20' });
    quay?.reset();
    expect(quay?.settings).to.deep.equal({});
  });

  it('gives the link again', async () => {
    const link = '#top&rheolet=@1:S1=open,R1=7;quay:R1=20';
    const [board] = await open(link, ['', 'quay']);
    expect(board?.linkToSetting()).to.equal(location.href);
    board?.reset();
    expect(board?.linkToSetting()).to.match(/#top&rheolet=quay:R1=20$/);
  });

  it('follows a new fragment, which can be undone, and no fragment that says nothing of it', async () => {
    const [quay] = await open('', ['quay']);
    await go('#rheolet=quay:R1=20');
    expect(quay?.settings).to.deep.equal({ R1: '20' });
    await go('#chapter-2');
    expect(quay?.settings).to.deep.equal({ R1: '20' });
    quay?.undo();
    expect(quay?.settings).to.deep.equal({});
  });

  it('takes what fits and leaves the rest', async () => {
    const [quay] = await open('#rheolet=quay:R1=41,S1=open,L9=3', ['quay']);
    expect(quay?.settings).to.deep.equal({ S1: 'open' });
    expect(problems).to.deep.equal([]);
  });

  it('stands as the page gave it where the link cannot be read, and tells the page once', async () => {
    const [quay] = await open('#rheolet=quay:R1=20=30', ['quay']);
    expect(quay?.settings).to.deep.equal({});
    expect(problems).to.deep.equal(['address not read']);
    await quay?.updateComplete;
    const notes = (): string => quay?.renderRoot.querySelector('[part=notes]')?.textContent ?? '';
    expect(notes()).to.contain('The setting in the address cannot be read');
    await go('#rheolet=quay:R1=20');
    await quay?.updateComplete;
    expect(notes()).to.equal('');
  });

  it('does not hear the address any more once it has left the page', async () => {
    const [quay] = await open('', ['quay']);
    quay?.remove();
    await go('#rheolet=quay:R1=20');
    expect(quay?.settings).to.deep.equal({});
  });
});

describe('the menu of a board', () => {
  /** The browser's clipboard, or one that refuses as it does in a frame without leave. */
  function clipboard(works: boolean): string[] {
    const copied: string[] = [];
    const writeText = (taken: string): Promise<void> => {
      if (works) copied.push(taken);
      return works ? Promise.resolve() : Promise.reject(new DOMException('', 'NotAllowedError'));
    };
    Object.defineProperty(navigator, 'clipboard', { value: { writeText }, configurable: true });
    return copied;
  }
  afterEach(() => Reflect.deleteProperty(navigator, 'clipboard'));

  const menu = (bench: Bench): HTMLElement => bench.find('#copy') as HTMLElement;
  const opened = async (circuit = pumpLine, attributes = {}): Promise<Bench> => {
    const bench = await boardWith(circuit, attributes);
    bench.button('Copy or save…').click();
    await eventually(() => !menu(bench).hidden);
    await bench.settled();
    return bench;
  };
  const press = async (bench: Bench, label: string): Promise<void> => {
    bench.button(label).click();
    await bench.settled();
    await bench.settled();
  };

  it('copies a link to the setting and the circuit as text, and says so', async () => {
    const copied = clipboard(true);
    const bench = await opened();
    bench.board.set('R1', 20);
    await press(bench, 'Copy a link');
    await press(bench, 'Copy the circuit');
    expect(copied).to.deep.equal([bench.board.linkToSetting(), await bench.board.toText()]);
    expect(copied[0]).to.match(/#rheolet=@\d+:R1=20$/);
    expect(parseCircuit(copied[1] ?? '')).to.deep.equal(bench.board.circuit);
    expect(text(menu(bench))).to.contain('Copied.');
    expect(bench.all('#copy input')).to.have.length(0);
  });

  it('shows the text, selected, where the browser refuses to copy it, or has no clipboard at all', async () => {
    for (const refuse of [
      (): unknown => clipboard(false),
      (): unknown => Object.defineProperty(navigator, 'clipboard', { value: undefined, configurable: true }),
    ]) {
      refuse();
      const bench = await opened();
      await press(bench, 'Copy the circuit');
      const box = bench.find('#copy input') as HTMLInputElement;
      expect(box.value).to.equal(await bench.board.toText());
      expect(box.readOnly).to.equal(true);
      expect([box.selectionStart, box.selectionEnd]).to.deep.equal([0, box.value.length]);
      expect(bench.board.shadowRoot?.activeElement).to.equal(box);
      expect(text(box.labels?.[0] ?? box)).to.contain('copy the selected text');
      await expect(bench.board).to.be.accessible();
      bench.button('Copy or save…').click();
      await bench.settled();
      expect(bench.all('#copy input')).to.have.length(0);
    }
  });

  it('opens by key and is closed by Escape, which gives the focus back', async () => {
    const bench = await boardWith(pumpLine);
    const button = bench.button('Copy or save…');
    expect([menu(bench).hidden, button.getAttribute('aria-expanded')]).to.deep.equal([true, 'false']);
    expect(bench.all('#copy *'), 'before it is wanted').to.have.length(0);
    button.focus();
    await sendKeys({ press: 'Enter' });
    await eventually(() => !menu(bench).hidden);
    expect([menu(bench).hidden, button.getAttribute('aria-expanded')]).to.deep.equal([false, 'true']);
    await sendKeys({ press: 'Tab' });
    expect(bench.board.shadowRoot?.activeElement).to.equal(bench.button('Copy a link'));
    await sendKeys({ press: 'Escape' });
    await bench.settled();
    expect(menu(bench).hidden).to.equal(true);
    expect(bench.board.shadowRoot?.activeElement).to.equal(button);
  });

  it('offers no text that tells a hidden value, and is not there where the page hides it', async () => {
    const bench = await opened('B1 6 V + R1 12 Ω hidden');
    expect(bench.all('#copy button').map(text)).to.deep.equal([
      'Copy a link to this setting',
      'Save as picture',
      'Save as picture for printing',
      'Save as SVG',
    ]);
    bench.board.hide = 'menu';
    await bench.settled();
    await bench.settled();
    expect(bench.all('#copy, [aria-controls]')).to.have.length(0);
  });

  it('is accessible while it is open', async () => {
    const bench = await opened();
    await expect(bench.board).to.be.accessible();
  });
});
