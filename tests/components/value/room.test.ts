import { expect } from '@open-wc/testing';
import { parseCircuit, readCourse } from '../../../src/engine/index.ts';
import type { BoardStore } from '../../../src/components/board/store.ts';
import { readingOf } from '../../../src/components/link/index.ts';
import { Room } from '../../../src/components/value/room.ts';
import { momentIn, plain, storeOf } from '../moment.ts';

/** The room for the current of an ammeter as its board stands. */
function roomIn(room: Room, store: BoardStore, text?: string): string {
  const moment = momentIn(store);
  const shown = text ?? readingOf(moment, 'I_A1').text;
  return plain(room.for(moment, shown, (at) => readingOf(at, 'I_A1').text));
}

describe('the room for a reading in a sentence', () => {
  it('is as wide as any that a slider can bring, with all digits alike', () => {
    const store = storeOf('B1 6 V + A1 + R1 [1..40] 12 Ω');
    expect(roomIn(new Room(), store)).to.equal('0.000 A');
    expect(roomIn(new Room(), storeOf('B1 60 V + A1 + R1 [5..700] 6 Ω'))).to.equal('0.0000 A');
  });

  it('stays while something is turned, and grows where a text needs more', () => {
    const [room, store] = [new Room(), storeOf('B1 6 V + A1 + R1 [4..40] 12 Ω')];
    const before = roomIn(room, store);
    store.set('R1', '4');
    expect(roomIn(room, store)).to.equal(before);
    expect(roomIn(room, store, 'no path for a current')).to.equal('no path for a current');
    expect(roomIn(room, store), 'and not less again').to.equal('no path for a current');
  });

  it('is anew for another circuit', () => {
    const [room, store] = [new Room(), storeOf('B1 6 V + A1 + R1 [4..40] 12 Ω')];
    roomIn(room, store, 'no path for a current');
    store.open(parseCircuit('B1 6 V + A1 + R1 2 Ω'));
    expect(roomIn(room, store)).to.equal('0.00 A');
  });

  it('tells nothing of what is covered, and is there as soon as it is shown', () => {
    const room = new Room();
    const store = storeOf('B1 60 kV + A1 + R1 7 MΩ', { covered: true });
    expect(roomIn(room, store)).to.equal('?');
    store.show(readCourse('').course, false);
    expect(roomIn(room, store)).to.equal('0.00 mA');
  });
});
