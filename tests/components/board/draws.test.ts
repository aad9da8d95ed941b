import { expect, fixture, html, nextFrame, oneEvent } from '@open-wc/testing';
import { render } from 'lit';
import { parseCircuit } from '../../../src/engine/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import { Bench, boardWith, quayLine, text } from './bench.ts';

const isShown = (element: Element): boolean => element.getClientRects().length > 0;

describe('a board draws its circuit', () => {
  it('with a group for each component and a path for the wires of each node', async () => {
    const bench = await boardWith(quayLine);
    const { components } = parseCircuit(quayLine);
    expect(bench.all('[data-id]').map((group) => group.getAttribute('data-id'))).to.have.members(
      components.map(({ id }) => id),
    );
    const nodes = new Set(bench.all('[data-node]').map((path) => path.getAttribute('data-node')));
    expect(bench.all('[data-node]').length).to.equal(nodes.size);
    const label = bench.find('[data-label=R1]');
    expect(text(label)).to.equal('R1');
    const below = label.querySelector('tspan')!;
    expect(text(below), 'a subscript').to.equal('1');
    expect(parseFloat(getComputedStyle(below).fontSize)).to.be.lessThan(
      parseFloat(getComputedStyle(label).fontSize),
    );
    expect(text(bench.find('[data-value=B1]'))).to.equal('6 V');
  });

  it('with every component named by its values and its reading', async () => {
    const bench = await boardWith(quayLine);
    expect(bench.find('.still').getAttribute('role')).to.equal('graphics-document');
    const group = bench.component('R1');
    expect(group.getAttribute('role')).to.equal('graphics-object');
    expect(group.getAttribute('aria-label')).to.equal('R1, 12 ohms, 0.500 amperes');
    expect(bench.component('A1').getAttribute('aria-label')).to.equal('A1, 1.25 amperes');
  });

  it('anew with the name of the focused component in the same frame: it would be heard without', async () => {
    const bench = await boardWith(quayLine);
    const before = bench.component('R1');
    before.focus();
    bench.board.symbols = 'ansi';
    await bench.board.updateComplete;
    await nextFrame();
    const group = bench.component('R1');
    expect(group).not.to.equal(before);
    expect(bench.board.shadowRoot?.activeElement).to.equal(group);
    expect(group.getAttribute('aria-label')).to.equal('R1, 12 ohms, 0.500 amperes');
  });

  it('with what its ammeters read beside them', async () => {
    const bench = await boardWith(quayLine);
    expect(bench.digits('A1')).to.equal('1.25 A');
    expect(bench.digits('A2')).to.equal('0.750 A');
  });

  it('from its text, as editors leave it, where it has no circuit attribute', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board
        ><p>“B1 6 V + R1 12 Ω</p>
        <p>+ R2 3&nbsp;Ω”</p></rheolet-board
      >`,
    );
    await board.ready;
    expect(board.circuit?.components.map(({ id }) => id)).to.deep.equal(['B1', 'R1', 'R2']);
    expect(isShown(board.querySelector('p')!), 'the text is not read twice').to.equal(false);
  });

  it('anew when its text is changed', async () => {
    const board = await fixture<RheoletBoard>(html`<rheolet-board>B1 6 V + R1 12 Ω</rheolet-board>`);
    await board.ready;
    board.textContent = 'B1 6 V + L1 8 Ω';
    await nextFrame();
    await board.ready;
    expect(board.circuit?.components.map(({ id }) => id)).to.deep.equal(['B1', 'L1']);
  });

  it('and leaves the other elements that stand in it', async () => {
    const board = await fixture<RheoletBoard>(
      html`<rheolet-board circuit=${quayLine}
        ><p id="words">A supply.</p>
        <p id="live">Turn <rheolet-resistor of="R1"></rheolet-resistor></p
      ></rheolet-board>`,
    );
    await board.ready;
    await board.updateComplete;
    expect(isShown(board.querySelector('#words')!)).to.equal(false);
    expect(isShown(board.querySelector('#live')!)).to.equal(true);
  });

  it('in a table of readings where it has more components than are drawn', async () => {
    const line = ['B1 6 V', ...Array.from({ length: 200 }, (_, at) => `R${at + 1} ${at + 1} Ω`)].join(' + ');
    const bench = await boardWith(line);
    expect(text(bench.find('[part=table]'))).to.contain('R200');
    expect(bench.all('.still')).to.have.length(0);
    expect(bench.all('tbody tr')).to.have.length(201);
    await expect(bench.board).to.be.accessible();
  });
});

describe('a circuit that cannot be read', () => {
  it('leaves the text readable, with one sentence that says where and what to write', async () => {
    const board = await fixture<RheoletBoard>(html`<rheolet-board>A supply and a resistor.</rheolet-board>`);
    const problem = oneEvent<CustomEvent<ProblemDetail>>(board, 'rheolet-problem');
    board.setAttribute('circuit', 'B1 6 V - R1 12 Ω');
    const { detail } = await problem;
    await board.ready;
    await board.updateComplete;
    const sentence = text(board.shadowRoot!.querySelector('[part=problem]')!);
    expect(sentence).to.match(/line 1, column 8: .*\+/);
    expect(detail.text).to.equal(sentence);
    expect(board.snapshot).to.equal(undefined);
    const range = document.createRange();
    range.selectNodeContents(board);
    expect(range.getClientRects().length, 'the text is seen').to.be.greaterThan(0);
  });

  it('is forgotten once it is mended, and settings that fit come back', async () => {
    const bench = await boardWith(quayLine);
    bench.board.set('R1', '20');
    bench.board.setAttribute('circuit', 'B1 6 V + R1');
    await bench.board.ready;
    expect(bench.board.circuit).to.equal(undefined);
    bench.board.setAttribute('circuit', quayLine);
    await bench.board.ready;
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ R1: '20' });
    expect(bench.all('[part=problem]')).to.have.length(0);
  });

  it('is a sentence too where there is none at all', async () => {
    const board = await fixture<RheoletBoard>(html`<rheolet-board></rheolet-board>`);
    await board.ready;
    await board.updateComplete;
    expect(text(board.shadowRoot!.querySelector('[part=problem]')!)).to.contain('no circuit yet');
  });
});

describe('a board in its page', () => {
  it('is as wide as it may be and no wider, down to 320 pixels', async () => {
    const bench = await boardWith(quayLine);
    const { board } = bench;
    for (const width of [320, 768, 1600]) {
      board.style.setProperty('width', `${width}px`);
      await nextFrame();
      await nextFrame();
      expect(bench.find('.stage').scrollWidth, `at ${width}`).to.be.at.most(width);
      expect(bench.find('.still').getBoundingClientRect().width).to.be.at.most(width);
    }
  });

  it('gives its drawing as an SVG text that stands by itself', async () => {
    const { board } = await boardWith(quayLine);
    const svg = new DOMParser().parseFromString(await board.toSVG(), 'image/svg+xml');
    expect(svg.querySelector('parsererror')).to.equal(null);
    expect(svg.querySelectorAll('[data-id]')).to.have.length(5);
  });

  it('keeps its setting when it is moved, and nothing of it stays when it goes', async () => {
    const bench = await boardWith(quayLine);
    bench.board.set('R1', '20');
    const other = document.createElement('section');
    bench.board.before(other);
    other.append(bench.board);
    await bench.settled();
    expect(bench.board.settings).to.deep.equal({ R1: '20' });
    expect(new Bench(bench.board).digits('A1')).to.equal('1.05 A');
  });

  const usual = requestIdleCallback;
  afterEach(() => {
    globalThis.requestIdleCallback = usual;
  });

  /** What a window that shows nothing new makes of it: it is never idle, and comes back only when the time is over. */
  const neverIdle: typeof requestIdleCallback = (work, options) =>
    options?.timeout === undefined ? 0 : window.setTimeout(work, options.timeout);

  for (const [where, idle] of [
    ['', usual],
    [', and where the browser is never idle', neverIdle],
  ] as const)
    it(`draws in the end also what is out of sight${where}`, async () => {
      globalThis.requestIdleCallback = idle;
      const page = document.createElement('div');
      page.style.paddingBlockStart = '20000px';
      render(html`<rheolet-board circuit=${quayLine}></rheolet-board>`, page);
      document.body.append(page);
      const board = page.querySelector<RheoletBoard>('rheolet-board')!;
      await board.ready;
      expect(board.shadowRoot!.querySelectorAll('[data-id]')).to.have.length(5);
      page.remove();
    });
});

describe('the controls of a board', () => {
  for (const [circuit, controls] of [
    ['B1 6 V + R1 12 Ω', ''],
    ['B1 [0..12] 6 V + R1 12 Ω', 'rheolet-supply B1'],
    ['B1 6 V r [0..2] 0.5 Ω + R1 [4..40] 12 Ω', 'rheolet-supply B1, rheolet-resistor R1'],
    ['B1 6 V + B2 [0..3] 1 V + R1 12 Ω', 'rheolet-supply B2'],
  ] as const)
    it(`of ${circuit}: ${controls || 'none'}`, async () => {
      const bench = await boardWith(circuit);
      const found = bench
        .all('[part=controls] > *')
        .map((each) => `${each.localName} ${each.getAttribute('of')}`);
      expect(found.join(', ')).to.equal(controls);
      bench.board.hide = 'sliders';
      await bench.settled();
      await bench.settled();
      expect(bench.all('[part=controls] > *')).to.have.length(0);
    });
});
