import { expect } from '@open-wc/testing';
import { exact } from '../exact.ts';
import { usualCourse } from '../../../src/engine/index.ts';
import { BoardStore } from '../../../src/components/board/store.ts';
import { pump, quay } from './circuits.ts';

function store(circuit = quay()): { store: BoardStore; told: () => number } {
  const made = new BoardStore();
  let count = 0;
  made.subscribe(() => (count += 1));
  made.open(circuit);
  count = 0;
  return { store: made, told: () => count };
}

describe('the store of a board', () => {
  it('is empty until it gets a circuit, and does nothing in vain', () => {
    const empty = new BoardStore();
    empty.set('R1', 20);
    empty.undo();
    empty.reset();
    expect(empty.snapshot).to.equal(undefined);
  });

  it('tells of every change once, and of none where nothing changes', () => {
    const { store: board, told } = store();
    board.set('R1', 20);
    expect(told()).to.equal(1);
    board.set('R1', 20);
    board.redo();
    expect(told()).to.equal(1);
    board.undo();
    board.reset();
    expect(told()).to.equal(2);
  });

  it('tells of another course, and that readings are covered, once', () => {
    const { store: board, told } = store();
    board.show(usualCourse, false);
    expect(told()).to.equal(0);
    board.show({ ...usualCourse, figures: 2 }, false);
    expect(told()).to.equal(1);
    board.show({ ...usualCourse }, true);
    expect(told()).to.equal(2);
  });

  it('tells nobody who has left', () => {
    const { store: board } = store();
    let count = 0;
    const leave = board.subscribe(() => (count += 1));
    leave();
    board.set('R1', 20);
    expect(count).to.equal(0);
  });

  it('makes a new moment of each change; the old ones stay as they were', () => {
    const { store: board } = store();
    const before = board.snapshot;
    board.set('R1', 20);
    expect(board.snapshot).to.not.equal(before);
    expect(before?.settings).to.deep.equal({});
    expect(exact(before?.solution.current('R1'))).to.equal('1/2');
    expect(exact(board.snapshot?.solution.current('R1'))).to.equal('3/10');
  });

  it('solves a circuit once, also for the moments in which only what is shown changes', () => {
    const { store: board } = store();
    const solution = board.snapshot?.solution;
    board.show({ ...usualCourse, figures: 2 }, true);
    expect(board.snapshot?.solution).to.equal(solution);
    board.hold();
    expect(board.snapshot?.held).to.equal(solution);
    expect(board.snapshot?.solution).to.equal(solution);
  });

  it('reads in floating point while something moves, exactly at rest', () => {
    const { store: board } = store();
    board.move('R1', 20);
    expect(typeof board.snapshot?.readings.current('R1')).to.equal('number');
    board.set('R1', 20);
    expect(board.snapshot?.readings).to.equal(board.snapshot?.solution);
  });

  it('lets go of what is held when the circuit is another', () => {
    const { store: board } = store();
    board.hold();
    board.open(pump());
    expect(board.snapshot?.held).to.equal(undefined);
  });

  it('keeps settings for the circuit that is to come', () => {
    const board = new BoardStore();
    board.replace({ R1: '20', S1: 'open', R9: '1' });
    board.open(pump());
    expect(board.snapshot?.settings).to.deep.equal({ R1: '20', S1: 'open' });
  });

  it('keeps them while there is no circuit that can be read', () => {
    const { store: board } = store();
    board.set('R1', 20);
    board.open(undefined);
    expect(board.snapshot).to.equal(undefined);
    board.open(quay());
    expect(board.snapshot?.settings).to.deep.equal({ R1: '20' });
  });
});
