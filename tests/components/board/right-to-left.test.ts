import { expect } from '@open-wc/testing';
import { boardWith, pumpLine, type Bench } from './bench.ts';

/** Where the first and the last letter of an element's text stand. */
function ends(element: Element): readonly [number, number] {
  const walker = document.createTreeWalker(element, NodeFilter.SHOW_TEXT);
  const texts: Text[] = [];
  while (walker.nextNode())
    if (walker.currentNode instanceof Text && walker.currentNode.data.trim()) texts.push(walker.currentNode);
  const place = (text: Text | undefined, at: number): number => {
    if (!text) throw new Error('no text');
    const range = document.createRange();
    range.setStart(text, at);
    range.setEnd(text, at + 1);
    return range.getBoundingClientRect().left;
  };
  const [first, last] = [texts[0], texts.at(-1)];
  return [place(first, first?.data.search(/\S/) ?? 0), place(last, (last?.data.trimEnd().length ?? 1) - 1)];
}

const sentences: Readonly<Record<string, (bench: Bench) => Promise<Element>>> = {
  'a hint': (bench) => Promise.resolve(bench.find('.hint')),
  'a remark': async (bench) => {
    bench.board.set('S1', 'open');
    await bench.settled();
    return bench.find('[part=notes] p');
  },
  'a reading that is compared': async (bench) => {
    bench.board.hold();
    bench.component('R1').focus();
    await bench.settled();
    return bench.find('.reading:last-child');
  },
  'what is wrong with a circuit': async (bench) => {
    bench.board.circuit = 'B1 6 V + L1 ? Ω';
    await bench.settled();
    return bench.find('[part=problem]');
  },
};

describe('in a page that runs right to left', () => {
  beforeEach(() => (document.documentElement.dir = 'rtl'));
  afterEach(() => document.documentElement.removeAttribute('dir'));

  for (const [name, sentence] of Object.entries(sentences))
    it(`${name} begins on the left and ends with its full stop on the right, and says that it is English`, async () => {
      const bench = await boardWith(pumpLine);
      bench.board.parentElement?.style.setProperty('width', '1600px');
      await bench.settled();
      const element = await sentence(bench);
      const [first, last] = ends(element);
      expect(last).to.be.greaterThan(first);
      expect(element.closest('[lang]')?.getAttribute('lang')).to.equal('en');
    });

  it('buttons still stand from right to left', async () => {
    const bench = await boardWith(pumpLine);
    const left = (label: string): number => bench.button(label).getBoundingClientRect().left;
    expect(left('Reset')).to.be.greaterThan(left('Undo'));
  });
});

describe('what is to be said of a circuit', () => {
  it('takes no room where there is nothing to say, and moves nothing that stands above it', async () => {
    const bench = await boardWith(pumpLine);
    bench.board.parentElement?.style.setProperty('width', '780px');
    await bench.settled();
    await bench.settled();
    const tops = (): number[] =>
      bench
        .all('.stage, .strip, [part=controls] > *, .acts > *')
        .map((each) => each.getBoundingClientRect().top - bench.board.getBoundingClientRect().top);
    const before = tops();
    const under =
      bench.board.getBoundingClientRect().bottom - bench.find('.foot').getBoundingClientRect().bottom;
    expect(under, 'the padding of the sheet').to.be.closeTo(12, 1);
    bench.board.set('S1', 'open');
    await bench.settled();
    expect(bench.notes).to.contain('S1');
    expect(tops()).to.deep.equal(before);
  });
});
