import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { isContent, textOf } from '../../../src/components/board/fallback.ts';
import { shown, words } from '../../../src/components/board/shown.ts';
import { readSource } from '../../../src/components/board/source.ts';

/** Nodes as an editor leaves them; an element is written [tag, child, …]. */
type Written = string | readonly [string, ...Written[]];
function node(written: Written): Node {
  if (typeof written === 'string') return document.createTextNode(written);
  const [tag, ...children] = written;
  const element = document.createElement(tag);
  element.append(...children.map(node));
  return element;
}

describe('the text of a board', () => {
  for (const [written, text] of [
    [['B1 6 V + R1 12 Ω'], 'B1 6 V + R1 12 Ω'],
    [
      [
        ['p', 'B1 6 V'],
        ['p', '+ R1 12 Ω'],
      ],
      'B1 6 V\n+ R1 12 Ω\n',
    ],
    [['B1 6 V # a battery', ['br'], '+ R1 12 Ω'], 'B1 6 V # a battery\n+ R1 12 Ω'],
    [[['p', ['b', 'B1'], ' 6 V']], 'B1 6 V\n'],
    [['B1 6 V + R1 12 Ω', ['rheolet-value', 'I_R1']], 'B1 6 V + R1 12 Ω'],
    [['B1 6 V + R1 12 Ω', ['p', 'reads ', ['rheolet-value']]], 'B1 6 V + R1 12 Ω'],
  ] as [Written[], string][]) {
    it(`of ${JSON.stringify(written)} is ${JSON.stringify(text)}`, () => {
      expect(textOf(written.map(node))).to.equal(text);
    });
  }

  it('is the text in place of the drawing; other elements of the library, and what holds them, are not', () => {
    expect(isContent(node(['rheolet-meter']))).to.equal(true);
    expect(isContent(node(['p', 'reads ', ['span', ['rheolet-value']]]))).to.equal(true);
    expect(isContent(node(['p', 'A supply and a lamp.']))).to.equal(false);
    expect(isContent(node('rheolet-value'))).to.equal(false);
  });
});

describe('what a page gives as a circuit', () => {
  it('is read, or there is a sentence with line, column and what to write', () => {
    expect(readSource('B1 6 V + R1 12 Ω')).to.have.property('components');
    expect(readSource('B1 6 V +\nR1 12'))
      .to.have.property('sentence')
      .that.matches(/line 2, column \d+: .*Ω/);
  });

  it('never spoils the page, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 60 }), (source) => {
        const read = readSource(source);
        if ('sentence' in read) expect(read.sentence).to.match(/\S+ \S+.*[.?!)]$/u);
      }),
      { numRuns: 500 },
    );
  });
});

describe('what a board shows', () => {
  const list = fc.subarray([...words]);

  it('is everything but the rules, unless the page says otherwise', () => {
    expect([...shown('', '')]).to.have.members(words.filter((word) => word !== 'rules'));
    expect([...shown('rules', '')]).to.have.members([...words]);
  });

  it('is never what the page hides, however the words are written', () => {
    fc.assert(
      fc.property(list, list, fc.constantFrom(' ', ', ', ',', '\n'), (show, hide, between) => {
        const seen = shown(show.join(between), hide.join(between).toUpperCase());
        for (const word of words) {
          const tells = hide.includes('readings') && (word === 'ribbons' || word === 'arrows');
          const usual = word !== 'rules' && !tells;
          const expected = !hide.includes(word) && (usual || show.includes(word));
          expect(seen.has(word), word).to.equal(expected);
        }
      }),
    );
  });
});
