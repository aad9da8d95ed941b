import { expect } from '@open-wc/testing';
import { parseCircuit, readCourse } from '../../../src/engine/index.ts';
import { fetchComparison } from '../../../src/components/board/comparing.ts';
import { componentName, liveText, meterRoom } from '../../../src/components/board/component-text.ts';
import { News } from '../../../src/components/board/news.ts';
import { notes, spokenNotes } from '../../../src/components/board/notes.ts';
import type { BoardStore } from '../../../src/components/board/store.ts';
import { momentIn, momentOf, plain, storeOf } from '../moment.ts';

const quay = 'B1 6 V + A1 + R1 [4..40] 12 Ω + L1 8 Ω; V1 across L1';

/** What each component of a circuit is called. */
function names(line: string, withReading: boolean, covered = false): readonly string[] {
  const moment = momentOf(line, { covered });
  return moment.circuit.components.map((each) => componentName(each, moment, withReading));
}

/** What stands beside each, and the room that is kept for it. */
function texts(line: string, course = ''): readonly (readonly [string, string])[] {
  const moment = momentOf(line, { course });
  return moment.circuit.components.map((each) => [
    plain(liveText(each, moment)),
    plain(meterRoom(each, moment)),
  ]);
}

/** What is heard of an act. */
function heardOf(store: BoardStore, act: () => void): string {
  const before = momentIn(store);
  act();
  return spokenNotes(momentIn(store), before);
}

describe('a component by ear', () => {
  it('is its label, its state, what was done to it, its values and its reading, in this order', () => {
    const line =
      'B1 6 V r 1 Ω + S1 closed + A1 + (R1 22 Ω ∥ R2 11 Ω broken ∥ R3 4.7 kΩ hidden); V1 10 kΩ hidden across R2';
    expect(names(line, true)).to.deep.equal([
      'B1, 6 volts, 1 ohm, 0.263 amperes',
      'S1, closed, 0.263 amperes',
      'A1, 0.263 amperes',
      'R1, 22 ohms, 0.261 amperes',
      'R2, taken out, 11 ohms, no current',
      'R3, 0.00122 amperes',
      'V1, 5.74 volts',
    ]);
    expect(names(line, false), 'without what it reads').to.deep.equal([
      'B1, 6 volts, 1 ohm',
      'S1, closed',
      'A1',
      'R1, 22 ohms',
      'R2, taken out, 11 ohms',
      'R3',
      'V1',
    ]);
  });

  it('has the sign of a meter alone, and no reading that is covered', () => {
    const line = 'B1 6 V + A1 reversed + R1 12 Ω';
    expect(names(line, true)).to.deep.equal([
      'B1, 6 volts, 0.500 amperes',
      'A1, −0.500 amperes',
      'R1, 12 ohms, 0.500 amperes',
    ]);
    expect(names(line, true, true).join()).to.not.match(/0\.5/);
  });

  it('ends with what it has done since the readings were held', async () => {
    const store = storeOf(quay);
    await fetchComparison();
    store.hold();
    store.set('R1', '22');
    const moment = momentIn(store);
    const heard = moment.circuit.components.map((each) => plain(componentName(each, moment, true)));
    expect(heard.slice(1, 3)).to.deep.equal([
      'A1, 0.200 amperes, fell by 0.100 amperes, × 0.667',
      'R1, 22 ohms, 0.200 amperes, fell by 0.100 amperes, × 0.667',
    ]);
    const seen = moment.circuit.components.map((each) => plain(liveText(each, moment)));
    expect(seen, 'a mark at the meters').to.deep.equal(['6 V', '0.200 A ▼', '22 Ω', '8 Ω', '1.60 V ▼']);
  });
});

describe('what stands beside a component while something moves', () => {
  it('is a meter’s reading with its own resistance, of others what they are set to', () => {
    expect(texts('B1 6 V r 1 Ω + S1 open + A1 0.5 Ω + R1 [4..40] 12 Ω; V1 10 kΩ across R1')).to.deep.equal([
      ['6 V, r 1 Ω', '−0.000 mA, 6 V, r 1 Ω'],
      ['', '−0.000 mA'],
      ['—, 0.5 Ω', '−0.000 mA, 0.5 Ω'],
      ['12 Ω', '−0.000 mA, 12 Ω'],
      ['0 V, 10 kΩ', '−0.000 mV, 10 kΩ'],
    ]);
  });

  it('tells no resistance that is hidden, of a meter neither', () => {
    expect(texts('B1 6 V + A1 0.5 Ω hidden + R1 11.5 Ω hidden').slice(1)).to.deep.equal([
      ['0.500 A', '−0.000 mA'],
      ['?', '−0.000 mA'],
    ]);
  });

  it('has room for as many figures as the course reads', () => {
    for (const [course, room] of [
      ['2', '−0.00 mA'],
      ['', '−0.000 mA'],
      ['4', '−0.0000 mA'],
    ] as const)
      expect(texts('B1 6 V + A1 + R1 12 Ω', course)[1]?.[1], course).to.equal(room);
  });

  it('fits into its room, whatever the current', () => {
    for (const ohms of ['0.001 Ω', '0.7 Ω', '12 Ω', '3.3 kΩ', '47 MΩ'])
      for (const [text, room] of texts(`B1 6 V + A1 reversed + R1 ${ohms}`).slice(1, 2))
        expect(text.length, `${ohms}: ${text}`).to.be.at.most(room.length);
  });
});

describe('the notes of a board', () => {
  it('are its faults, then what to beware of, then what there is to remark; none while it is covered', () => {
    const store = storeOf(quay);
    store.set('R1', 'bridged');
    store.set('L1', 'bridged');
    const [fault = '', caution = '', ammeter = '', remark = '', ...more] = notes(momentIn(store));
    expect(fault).to.match(/^B1 is short-circuited through A1, the wire across R1 and the wire across L1/);
    expect(caution).to.match(/^Caution: B1 is short-circuited\./);
    expect(ammeter).to.match(/^Caution: A1 is straight across B1;/);
    expect(remark).to.equal('Wires are across R1 and L1, so current can go round them.');
    expect(more).to.deep.equal([]);
    store.show(readCourse('').course, true);
    expect(notes(momentIn(store))).to.deep.equal([]);
  });
});

describe('what is heard of a change', () => {
  it('is what the meters read, each with its label', () => {
    const store = storeOf(quay);
    expect(heardOf(store, () => store.set('R1', '22'))).to.equal('A1, 0.200 amperes. V1, 1.60 volts.');
  });

  it('is what is wrong or to be remarked instead, said once though it was done as well', () => {
    const store = storeOf(quay);
    expect(heardOf(store, () => store.set('L1', 'broken'))).to.equal(
      'No current: the circuit is open at L1. L1 is taken out: nothing flows through it.',
    );
    expect(heardOf(store, () => store.set('L1', 'bridged'))).to.equal(
      'A wire is across L1, so current can go round it.',
    );
  });

  it('is that a component is back, which no note says', () => {
    const store = storeOf(quay);
    store.set('L1', 'bridged');
    expect(heardOf(store, () => store.set('L1', 'intact'))).to.equal('L1, back as it was.');
  });

  it('is on a covered board what was done, and nothing that follows from it', () => {
    const store = storeOf(quay, { covered: true });
    expect(heardOf(store, () => store.set('R1', 'bridged'))).to.equal('R1, a wire across it.');
    expect(heardOf(store, () => store.set('L1', 'broken'))).to.equal('L1, taken out.');
    expect(heardOf(store, () => store.set('R1', 'intact'))).to.equal('R1, back as it was.');
    expect(heardOf(store, () => store.set('R1', '20'))).to.equal('');
  });
});

describe('the news of a board', () => {
  const settled = 'A1, 0.200 amperes. V1, 1.60 volts.';

  it('are told once a change has settled, once, and not while it moves', () => {
    const news = new News();
    const store = storeOf(quay);
    expect(news.of(momentIn(store)), 'a circuit that has come').to.equal(undefined);
    store.move('R1', '22');
    expect(news.of(momentIn(store))).to.equal(undefined);
    store.set('R1', '22');
    expect(news.of(momentIn(store))).to.equal(settled);
    expect(news.of(momentIn(store))).to.equal(undefined);
  });

  it('are none where only the way of writing has changed, or the circuit is another one', () => {
    const news = new News();
    const store = storeOf(quay);
    news.of(momentIn(store));
    store.show(readCourse('2').course, false);
    expect(news.of(momentIn(store))).to.equal(undefined);
    store.open(parseCircuit('B1 6 V + A1 + R1 4 Ω'));
    expect(news.of(momentIn(store))).to.equal(undefined);
    expect(news.of(undefined)).to.equal(undefined);
  });

  it('leave what stands under a drawing alone while a slider moves, unless the notes or the caption change', () => {
    const news = new News();
    const store = storeOf(quay);
    expect(news.differs(momentIn(store), undefined), 'at rest').to.equal(true);
    store.move('R1', '22');
    expect(news.differs(momentIn(store), undefined)).to.equal(false);
    expect(news.differs(momentIn(store), 'R1'), 'with a caption').to.equal(true);
    store.set('L1', 'broken');
    store.move('R1', '20');
    expect(news.differs(momentIn(store), undefined), 'other notes').to.equal(true);
    expect(news.differs(momentIn(store), undefined)).to.equal(false);
  });
});
