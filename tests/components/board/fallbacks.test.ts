import { expect, fixture, html, nextFrame } from '@open-wc/testing';
import { exact } from '../exact.ts';
import { circuitFrom, formatCircuit } from '../../../src/engine/index.ts';
import type { RheoletBoard } from '../../../src/components/board/index.ts';
import type { ProblemDetail } from '../../../src/components/link/index.ts';
import { Bench, boardWith, pumpLine, quayLine, text } from './bench.ts';

/** Content as an editor may leave it: a text for words, a list of a tag and its content for elements. */
type Content = string | readonly Content[];

function grown(content: Content): Node {
  if (typeof content === 'string') return document.createTextNode(content);
  const [tag, ...inner] = content;
  const element = document.createElement(String(tag));
  element.append(...inner.map(grown));
  return element;
}

/** A board with this content in place of a circuit attribute. */
async function boardOf(...content: readonly Content[]): Promise<RheoletBoard> {
  const page = await fixture<HTMLElement>(html`<div></div>`);
  const board = document.createElement('rheolet-board');
  board.append(...content.map(grown));
  page.append(board);
  await board.ready;
  await board.updateComplete;
  return board;
}

const written = ({ circuit }: RheoletBoard): string => (circuit ? formatCircuit(circuit) : '');
const problemOf = (board: RheoletBoard): string => {
  const part = board.shadowRoot!.querySelector('[part=problem]');
  return part ? text(part) : '';
};

describe('text that an editor has rewritten is read as it was meant', () => {
  const meant = 'B1 6 V + (R1 12 Ω ∥ R2 6 Ω)';
  for (const [what, ...content] of [
    ['as it is', meant],
    ['blanks and lines around it', `\n    ${meant}\n  `],
    ['a line break in it', 'B1 6 V +\n(R1 12 Ω ∥\nR2 6 Ω)'],
    ['tabs', 'B1\t6\tV + (R1 12 Ω ∥ R2 6 Ω)'],
    ['no-break spaces', 'B1\u00a06\u00a0V + (R1\u00a012\u00a0Ω ∥ R2\u00a06\u00a0Ω)'],
    ['narrow no-break spaces', 'B1 6\u202fV + (R1 12\u202fΩ ∥ R2 6\u202fΩ)'],
    ['curly quotes', `“${meant}”`],
    ['curly single quotes', `‘${meant}’`],
    ['straight quotes', `"${meant}"`],
    ['the ohm sign of old fonts', 'B1 6 V + (R1 12 \u2126 ∥ R2 6 \u2126)'],
    ['ohms in words', 'B1 6 V + (R1 12 ohm ∥ R2 6 ohms)'],
    ['two bars', 'B1 6 V + (R1 12 Ω || R2 6 Ω)'],
    ['the double bar of mathematics', 'B1 6 V + (R1 12 Ω ‖ R2 6 Ω)'],
    ['two slashes', 'B1 6 V + (R1 12 Ω // R2 6 Ω)'],
    ['decimal commas', 'B1 6,0 V + (R1 12 Ω ∥ R2 6 Ω)'],
    ['subscript digits', 'B₁ 6 V + (R₁ 12 Ω ∥ R₂ 6 Ω)'],
    ['a remark', `${meant} # the quay lights`],
    ['a semicolon at the end', `${meant};`],
    ['one paragraph', ['p', meant]],
    ['two paragraphs', ['p', 'B1 6 V'], ['p', '+ (R1 12 Ω ∥ R2 6 Ω)']],
    ['an empty paragraph after it', ['p', meant], ['p', '\u00a0']],
    ['a break', 'B1 6 V', ['br'], '+ (R1 12 Ω ∥ R2 6 Ω)'],
    ['breaks at the end', meant, ['br'], ['br']],
    ['a remark that a break ends', 'B1 6 V # a battery', ['br'], '+ (R1 12 Ω ∥ R2 6 Ω)'],
    ['a remark that a paragraph ends', ['p', 'B1 6 V # battery'], ['p', '+ (R1 12 Ω ∥ R2 6 Ω)']],
    ['bold labels', ['b', 'B1'], ' 6 V + (', ['b', 'R1'], ' 12 Ω ∥ ', ['b', 'R2'], ' 6 Ω)'],
    ['digits in subscripts', 'B', ['sub', '1'], ' 6 V + (R', ['sub', '1'], ' 12 Ω ∥ R2 6 Ω)'],
    ['spans in spans', ['span', ['span', 'B1 6 V + (R1 12 '], ['font', 'Ω ∥ R2 6 Ω)']]],
    ['code', ['code', meant]],
    ['a list', ['ul', ['li', 'B1 6 V'], ['li', '+ (R1 12 Ω ∥ R2 6 Ω)']]],
  ] as const)
    it(what, async () => {
      const board = await boardOf(...content);
      expect(problemOf(board)).to.equal('');
      expect(written(board).replace('6.0', '6').replace(/\s/g, ' ')).to.equal(meant);
    });

  for (const [what, found, canonical] of [
    ['a count with a times sign', 'B1 3 × 1.5 V + R1 9 Ω', 'B1 3 × 1.5 V + R1 9 Ω'],
    ['long dashes in a place', 'B1 6 V + @p + R1 9 Ω + @q + R2 3 Ω; V1 @p—@q', 'V1 across R1'],
    ['dots of a range that became one sign', 'B1 6 V + R1 [4…40] 12 Ω', 'R1 [4..40'],
    ['a minus sign', 'B1 −6 V + R1 9 Ω', 'B1 -6 V'],
    ['± written as +-', 'B1 6 V + R1 9 Ω +-5%', 'R1 9 Ω ±5%'],
  ] as const)
    it(what, async () => {
      const board = await boardOf(found);
      expect(problemOf(board)).to.equal('');
      expect(written(board).replace(/\s/g, ' ')).to.contain(canonical);
    });
});

describe('what counts as the circuit', () => {
  it('is the attribute, where there is one; the text is for readers without scripts', async () => {
    const page = await fixture(
      html`<div><rheolet-board circuit="B1 6 V + R1 5 Ω">B1 9 V + L1 8 Ω</rheolet-board></div>`,
    );
    const board = page.querySelector('rheolet-board')!;
    await board.ready;
    expect(written(board)).to.match(/^B1 6\sV \+ R1 5\sΩ$/);
    board.textContent = 'Something else.';
    await nextFrame();
    expect(written(board)).to.match(/^B1 6\sV \+ R1 5\sΩ$/);
  });

  it('is the text again once the attribute is taken away', async () => {
    const board = await boardOf('B1 9 V + L1 8 Ω');
    board.setAttribute('circuit', 'B1 6 V + R1 5 Ω');
    await board.ready;
    expect(written(board)).to.contain('R1');
    board.removeAttribute('circuit');
    await board.ready;
    expect(written(board)).to.contain('L1');
  });

  it('may be given as a property: notation, a circuit, or null for the text', async () => {
    const board = await boardOf('B1 9 V + L1 8 Ω');
    board.circuit = 'B1 6 V + R1 5 Ω';
    await board.ready;
    expect(written(board)).to.contain('R1');
    board.circuit = circuitFrom({
      version: 1,
      components: [
        { id: 'B1', kind: 'supply', from: 'a', to: 'b', emf: 6 },
        { id: 'R9', kind: 'resistor', from: 'a', to: 'b', resistance: 3 },
      ],
    });
    await board.ready;
    expect(exact(board.solution?.current('R9'))).to.equal('2');
    board.circuit = null;
    await board.ready;
    expect(written(board)).to.contain('L1');
  });

  it('does not include what other elements of the library say', async () => {
    const board = await boardOf('B1 9 V + L1 8 Ω', ['rheolet-value', 'R7 nonsense']);
    expect(problemOf(board)).to.equal('');
    expect(written(board)).to.match(/^B1 9\sV \+ L1 8\sΩ$/);
  });
});

describe('a new circuit keeps the settings that still fit', () => {
  for (const [what, circuit, settings] of [
    ['the same again', pumpLine, { S1: 'open', R1: '20' }],
    ['another value', 'B1 9 V + S1 closed + R1 [4..40] 5 Ω', { S1: 'open', R1: '20' }],
    ['a range that ends below it', 'B1 6 V + S1 closed + R1 [4..19] 12 Ω', { S1: 'open' }],
    ['a range whose steps pass it over', 'B1 6 V + S1 closed + R1 [4..40 step 3] 4 Ω', { S1: 'open' }],
    ['no switch', 'B1 6 V + R1 [4..40] 12 Ω', { R1: '20' }],
    ['a lamp of the same label', 'B1 6 V + lamp S1 5 Ω + R1 [4..40] 12 Ω', { R1: '20' }],
    ['the value that it was set to', 'B1 6 V + S1 open + R1 [4..40] 20 Ω', {}],
    ['something else', 'B1 6 V + R7 12 Ω', {}],
  ] as const)
    it(what, async () => {
      const { board } = await boardWith(pumpLine);
      board.set('S1', 'open');
      board.set('R1', 20);
      board.setAttribute('circuit', circuit);
      await board.ready;
      expect(board.settings).to.deep.equal(settings);
    });

  it('and settings given before there is a circuit wait for it', async () => {
    const board = document.createElement('rheolet-board');
    board.settings = { R1: '20', R9: '1' };
    board.setAttribute('circuit', quayLine);
    (await fixture(html`<div></div>`)).append(board);
    await board.ready;
    expect(board.settings).to.deep.equal({ R1: '20' });
  });
});

describe('a circuit that cannot be read is one sentence, with its place, and harms nothing else', () => {
  for (const [circuit, place, sentence] of [
    ['B1 6 V - R1 12 Ω', 'line 1, column 8', '+'],
    ['B1 6 V + R1 12', 'line 1, column 13', 'unit'],
    ['B1 6 V + R1', 'line 1, column 10', 'value'],
    ['B1 6 V R1 12 Ω', 'line 1, column 8', '+'],
    ['B1 6 V + (R1 12 Ω ∥ R2 6 Ω', 'line 1, column 10', 'never closed'],
    ['B1 6 V + R1 12 Ω)', 'line 1, column 17', 'closes nothing'],
    ['B1 6 V + R1 12 Ω +', 'line 1, column 19', 'component'],
    ['+ B1 6 V', 'line 1, column 1', 'component'],
    ['B1 6 V + R1 1,000 Ω', 'line 1, column 13', 'two ways'],
    ['B1 6 V + R1 470 R', 'line 1, column 13', 'two ways'],
    ['B1 6 V | R1 12 Ω', 'line 1, column 8', '∥'],
    ['B1 6 V + R1 [40..4] 12 Ω', 'line 1, column 13', 'smaller'],
    ['B1 6 V + R1 [2–40] 12 Ω', 'line 1, column 13', '[2..40]'],
    ['B1 6 V + R1 [4..40] 50 Ω', 'line 1, column 13', 'outside'],
    ['B1 6 V + R1 12 Ω + R1 6 Ω', 'line 1, column 20', 'two components'],
    ['B1 6 V + R1 12 V', 'line 1, column 13', 'suit'],
    ['B1 6 V + R1 12 Ω 6 Ω', 'line 1, column 18', 'one too many'],
    ['B1 6 V + Xq7 12 Ω', 'line 1, column 10', 'Xq7'],
    ['B1 6 V + R1 12 Ω; V1 across R7', 'line 1, column 29', 'R7'],
    ['B1 6 V + @p + R1 12 Ω', 'line 1, column 10', '@p'],
    ['B1 6 V + R1 12 Ω & R2 6 Ω', 'line 1, column 18', '&'],
    ['B16V + R1 12 Ω', 'line 1, column 1', 'space after the label'],
    ['B1 6 V + R112Ω', 'line 1, column 10', 'space after the label'],
    ['B1 6 V +\nR1 12', 'line 2, column 4', 'unit'],
    ['B1 6 V +\n\n(R1 12 Ω', 'line 3, column 1', 'never closed'],
    ['B1 6 V + C1 12 µF', 'line 1, column 10', 'not understood yet'],
    ['B1 6 V + L1 0 Ω', 'line 1, column 13', 'more than 0'],
    ['B1 6 V + L1 6 V', 'line 1, column 10', 'two'],
    ['B1 6 V + R1 -12 Ω', 'line 1, column 13', '0 or more'],
    ['hello', 'line 1, column 1', 'hello'],
    ['6 V + 12 Ω', 'line 1, column 1', 'Write B1 6 V'],
    ['()', 'line 1, column 2', 'component'],
    [`${'('.repeat(65)}R1 1 Ω${')'.repeat(65)}`, 'line 1, column 65', '64'],
    ['R1 2 Ω @a–@b; R2 3 Ω @b–@c', 'line 1, column 1', 'ends'],
  ] as const)
    it(`${JSON.stringify(circuit.slice(0, 40))}: ${place}`, async () => {
      const page = await fixture<HTMLElement>(
        html`<div>
          <p id="words">The pump.</p>
          <rheolet-board id="well" circuit=${quayLine}></rheolet-board>
        </div>`,
      );
      const well = page.querySelector<RheoletBoard>('#well')!;
      await well.ready;
      const problems: ProblemDetail[] = [];
      page.addEventListener('rheolet-problem', ({ detail }) => problems.push(detail));
      const ill = document.createElement('rheolet-board');
      ill.id = 'ill';
      ill.setAttribute('circuit', circuit);
      page.append(ill);
      await ill.ready;
      await new Bench(ill).settled();
      expect(problemOf(ill)).to.contain(`${place}:`).and.contain(sentence).and.match(/[.?]$/);
      expect(problems.map(({ board, text: said }) => [board, said.replace(/\s+/g, ' ')])).to.deep.equal([
        ['ill', problemOf(ill)],
      ]);
      expect([ill.circuit, ill.solution, await ill.toSVG()]).to.deep.equal([undefined, undefined, '']);
      expect(new Bench(well).digits('A1')).to.equal('1.25 A');
      expect(page.querySelector('#words')!.textContent).to.equal('The pump.');
    });
});

describe('a board without a circuit', () => {
  for (const act of [
    (board: RheoletBoard): void => board.reset(),
    (board: RheoletBoard): void => board.undo(),
    (board: RheoletBoard): void => board.redo(),
    (board: RheoletBoard): void => board.hold(),
    (board: RheoletBoard): void => board.release(),
    (board: RheoletBoard): void => board.light(['R1']),
    (board: RheoletBoard): void => board.set('R1', 20),
  ])
    it(`has nothing to do for ${/board\.\w+/.exec(String(act))?.[0] ?? ''}`, async () => {
      const board = await boardOf('A sentence that is no circuit');
      act(board);
      await board.updateComplete;
      expect([board.snapshot, board.held, board.settings]).to.deep.equal([undefined, undefined, {}]);
    });
});
