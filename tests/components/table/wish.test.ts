import { expect } from '@open-wc/testing';
import { say, type Said } from '../../../src/engine/index.ts';
import { columnsOf, givenOf, rowsOf, wordsOf } from '../../../src/components/table/wish.ts';
import { momentOf } from '../moment.ts';

const sentences = (wrong: readonly Said[]): readonly string[] => wrong.map((each) => say(each));

describe('the words of a table’s attributes', () => {
  it('stand between blanks, commas or semicolons of any number', () => {
    expect(wordsOf(' V_R1,  I_R1;R_R1\n\tP_R1 ;')).to.deep.equal(['V_R1', 'I_R1', 'R_R1', 'P_R1']);
    expect(wordsOf(' ,; ')).to.deep.equal([]);
  });
});

describe('the columns of a table', () => {
  const asked = (text: string): readonly string[] =>
    columnsOf(text).found.map(({ letter, prefix }) => `${letter} ${prefix ?? 'any'}`);

  it('are the usual four where none is asked for, else those, in that order', () => {
    expect(asked('')).to.deep.equal(['V any', 'I any', 'R any', 'P any']);
    expect(asked('P I')).to.deep.equal(['P any', 'I any']);
  });

  it('may have a prefix that is fixed, or no prefix at all', () => {
    expect(asked('V/mV I/A R/kΩ P/µW')).to.deep.equal(['V m', 'I ', 'R k', 'P µ']);
  });

  it('call a p.d. V or U', () => {
    expect(asked('U U/mV')).to.deep.equal(['V any', 'V m']);
  });

  it('are left out where they cannot be had, each with a sentence', () => {
    const { found, wrong } = columnsOf('V I/mV Q R/ohm');
    expect(found.map(({ letter }) => letter)).to.deep.equal(['V']);
    expect(sentences(wrong)).to.deep.equal([
      '“mV” is not a unit of this reading, which is in amperes.',
      '“Q” is not a column; choose V, I, R or P.',
      '“ohm” is not a unit of this reading, which is in ohms.',
    ]);
  });
});

describe('the rows of a table', () => {
  const circuit = momentOf('B1 6 V + wire W1 + A1 + A2 0.5 Ω + R1 12 Ω; V1 across R1; V2 10 kΩ across R1');

  it('are all components but wires and ideal meters, in the order of the circuit', () => {
    expect(rowsOf(circuit, '')).to.deep.equal({ found: ['B1', 'A2', 'R1', 'V2'], wrong: [] });
  });

  it('are those that are asked for, in the order of the page, whatever they are', () => {
    expect(rowsOf(circuit, 'R1 A1, W1').found).to.deep.equal(['R1', 'A1', 'W1']);
  });

  it('do without a component that is not there, which a sentence names', () => {
    const { found, wrong } = rowsOf(circuit, 'R1 R11');
    expect(found).to.deep.equal(['R1']);
    expect(sentences(wrong)).to.deep.equal(['There is no R11 in this circuit; did you mean R1?']);
  });
});

describe('the cells that a table gives', () => {
  const names = ['V_R1', 'I_R1'];

  it('are all of a live one, none of a blank one, and those that are listed of one in parts', () => {
    expect(givenOf('', 'V_R1', names)).to.deep.equal({ found: names, wrong: [] });
    expect(givenOf('live', '', names)).to.deep.equal({ found: names, wrong: [] });
    expect(givenOf('blank', 'V_R1', names)).to.deep.equal({ found: [], wrong: [] });
    expect(givenOf('part', 'I_R1', names)).to.deep.equal({ found: ['I_R1'], wrong: [] });
    expect(givenOf('part', '', names)).to.deep.equal({ found: [], wrong: [] });
  });

  it('call a p.d. V or U', () => {
    expect(givenOf('part', 'U_R1', names).found).to.deep.equal(['V_R1']);
  });

  it('are no fewer for a name or a mode that is none, but a sentence says so', () => {
    const part = givenOf('part', 'V_R1 I_R2', names);
    expect(part.found).to.deep.equal(['V_R1']);
    expect(sentences(part.wrong)).to.deep.equal([
      '“I_R2” is not a quantity of this circuit; did you mean I_R1?',
    ]);
    const typo = givenOf('prat', '', names);
    expect(typo.found, 'a live table').to.deep.equal(names);
    expect(sentences(typo.wrong)).to.deep.equal(['“prat” is not a mode; did you mean part?']);
  });
});
