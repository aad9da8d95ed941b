import { expect } from '@open-wc/testing';
import { Fraction } from '../../../src/engine/index.ts';
import { columnOf, entryOf, isSigned, numberIn, type Entry } from '../../../src/components/table/entry.ts';
import { entryFrom, entryText, Records } from '../../../src/components/table/records.ts';
import { fromJSON, textsOf } from '../../../src/components/table/texts.ts';
import { momentIn, momentOf, storeOf } from '../moment.ts';

/** An entry as a test writes it: the exact value, and the words in its place. */
const written = ({ value, words }: Entry): string =>
  [value === undefined ? 'none' : new Fraction(value).toFraction(), words].filter(Boolean).join(', ');

/** 6 V against 2 V, a reversed ammeter, 12 Ω: 1/3 A. */
const charging = 'B1 6 V + B2 2 V reversed + A1 reversed + R1 12 Ω; V1 across R1';

describe('what a table reads of a quantity', () => {
  const charged = momentOf(charging);

  it('has the sign of a meter and of a power, and is a magnitude else', () => {
    for (const [name, signed, entry] of [
      ['I_A1', true, '-1/3'],
      ['I_R1', false, '1/3'],
      ['V_V1', true, '4'],
      ['V_R1', false, '4'],
      ['P_B1', true, '2'],
      ['P_B2', true, '-2/3'],
      ['P_R1', true, '4/3'],
      ['R_R1', false, '12'],
    ] as const) {
      expect(isSigned(charged, name), name).to.equal(signed);
      expect(written(entryOf(charged, name)), name).to.equal(entry);
    }
  });

  it('is words where there is no value, and both where a circuit is open: no current is 0', () => {
    const open = momentOf('B1 6 V + S1 open + A1 + R1 12 Ω');
    expect(written(entryOf(open, 'I_A1'))).to.equal('0, no current');
    expect(written(entryOf(open, 'V_S1'))).to.equal('6');
    expect(written(entryOf(open, 'R_total'))).to.equal('none, no path for a current');
    expect(written(entryOf(charged, 'R_total'))).to.equal('none, —');
  });

  it('is a question mark where the pupil is to find it', () => {
    const line = 'B1 6 V + A1 + R1 12 Ω hidden';
    expect(written(entryOf(momentOf(line), 'R_R1'))).to.equal('none, ?');
    expect(written(entryOf(momentOf(line), 'I_R1'))).to.equal('1/2');
    expect(written(entryOf(momentOf(line, { covered: true }), 'I_R1'))).to.equal('none, ?');
  });

  it('follows a slider while it moves, with the sign of a meter as well', () => {
    const store = storeOf('B1 6 V + A1 reversed + R1 [4..40] 12 Ω');
    store.move('R1', '24');
    const [meter, power] = ['I_A1', 'P_R1'].map((name) => entryOf(momentIn(store), name).value);
    expect(Number(meter)).to.be.closeTo(-0.25, 1e-12);
    expect(Number(power)).to.be.closeTo(1.5, 1e-12);
  });
});

describe('a column of a table', () => {
  const at = (...values: readonly number[]): readonly Entry[] =>
    values.map((value) => ({ value: new Fraction(value), words: '' }));
  const quay = momentOf('B1 6 V + R1 12 Ω');
  const comma = momentOf('B1 6 V + R1 12 Ω', { course: '2 comma' });

  it('has the prefix that suits its largest entry; of resistances the smallest, so that none begins with zeros', () => {
    expect(columnOf(quay, at(0.0002, -0.5), 'A').prefix).to.equal('');
    expect(columnOf(quay, at(0.0002, -0.005), 'A').prefix).to.equal('m');
    expect(columnOf(quay, at(4, 4700), 'Ω').prefix).to.equal('');
    expect(columnOf(quay, at(1200, 4700), 'Ω').prefix).to.equal('k');
  });

  it('looks past what is 0 or has no value, and has none where that is all', () => {
    const nothing: Entry = { value: undefined, words: '—' };
    expect(columnOf(quay, [...at(0, 4700), nothing], 'Ω').prefix).to.equal('k');
    expect(columnOf(quay, [...at(0), nothing], 'A').prefix).to.equal('');
    expect(columnOf(quay, [], 'A').prefix).to.equal('');
  });

  it('has the prefix that the page asks for instead', () => {
    expect(columnOf(quay, at(0.002), 'A', '').prefix).to.equal('');
    expect(columnOf(quay, at(0.5), 'A', 'm').prefix).to.equal('m');
  });

  it('writes its numbers with the figures and the decimal sign of the course, without the unit', () => {
    expect(numberIn(columnOf(quay, at(0.00457), 'A'), new Fraction(0.00457))).to.equal('4.57');
    expect(numberIn(columnOf(comma, at(0.0457), 'A', ''), new Fraction(0.0457))).to.equal('0,046');
    expect(numberIn(columnOf(comma, at(-3), 'A'), new Fraction(-3))).to.equal('−3,0');
  });
});

describe('the rows that a pupil records', () => {
  const row = (amperes: number): Readonly<Record<string, Entry>> => ({
    I_A1: { value: new Fraction(amperes), words: '' },
  });

  it('are taken back act by act, to those that were there at first, and no further', () => {
    const records = new Records();
    expect(records.undoable).to.equal(false);
    const [one, two] = [row(1), row(2)];
    records.become([one]);
    records.become([one, two]);
    records.become([]);
    expect(records.undoable).to.equal(true);
    const back: (readonly object[])[] = [];
    while (records.undoable) {
      records.undo();
      back.push(records.rows);
    }
    expect(back).to.deep.equal([[one, two], [one], []]);
    records.undo();
    expect(records.rows).to.deep.equal([]);
  });

  it('that a form brings back are no act of the pupil, and what was there before is gone', () => {
    const records = new Records();
    records.become([row(1)]);
    records.open([row(2), row(3)]);
    expect(records.undoable).to.equal(false);
    expect(records.rows).to.deep.equal([row(2), row(3)]);
    records.become([]);
    records.undo();
    expect(records.rows).to.deep.equal([row(2), row(3)]);
  });

  it('are kept as texts, and read back as they were: exact, or in words', () => {
    for (const [entry, text] of [
      [{ value: new Fraction(1, 3), words: '' }, '1/3'],
      [{ value: new Fraction(-2, 7), words: '' }, '-2/7'],
      [{ value: new Fraction(20), words: '' }, '20'],
      [{ value: undefined, words: 'no path for a current' }, 'no path for a current'],
      [{ value: undefined, words: '?' }, '?'],
    ] as const) {
      expect(entryText(entry)).to.equal(text);
      expect(written(entryFrom(text)), text).to.equal(written(entry));
    }
    expect(entryText({ value: 0.25, words: '' }), 'also what was read from a curve').to.equal('1/4');
  });

  it('take whatever stands in a text that somebody has altered as words', () => {
    for (const text of ['1/0', '1/', '/2', '--1', '0.5', '1e9', ' 1', '1/01', '9'.repeat(41), 'NaN', ''])
      expect(written(entryFrom(text)), text).to.equal(['none', text].filter(Boolean).join(', '));
  });
});

describe('what a form gives back to a table', () => {
  it('is read where it is JSON', () => {
    expect(fromJSON('{"V_R1":"4.5"}')).to.deep.equal({ V_R1: '4.5' });
    for (const text of ['', '{', 'V_R1 = 4', 'undefined']) expect(fromJSON(text), text).to.equal(undefined);
  });

  it('counts as filled in where it is a text, without blanks round it', () => {
    const from = { V_R1: ' 4.5 ', I_R1: '', R_R1: '  ', P_R1: 3, A: null, B: ['x'], 'C D': 'x' };
    expect(textsOf(from)).to.deep.equal({ V_R1: '4.5', 'C D': 'x' });
    for (const nothing of [null, undefined, 3, true, []]) expect(textsOf(nothing)).to.deep.equal({});
  });
});
