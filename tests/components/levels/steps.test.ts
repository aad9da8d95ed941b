import { expect } from '@open-wc/testing';
import { reachOf } from '../../../src/components/levels/reach.ts';
import { stepOf } from '../../../src/components/levels/steps.ts';
import { momentIn, momentOf, plain, storeOf } from '../moment.ts';

/** Each component of a circuit: from where to where, and whether a current flows. */
const heights = (line: string): readonly string[] => {
  const moment = momentOf(line);
  return moment.circuit.components.map((each) => {
    const { id, heights: ends, carries } = stepOf(moment, each);
    return `${id} ${ends ? ends.join('→') : 'none'}${carries ? '' : ' still'}`;
  });
};
const spoken = (line: string, course = ''): readonly string[] => {
  const moment = momentOf(line, { course });
  return moment.circuit.components.map((each) => plain(stepOf(moment, each).spoken));
};

describe('a component as a step between two heights', () => {
  for (const [what, line, steps] of [
    [
      'a supply lifts, all else drops, and an ammeter does neither',
      'B1 6 V r 1 Ω + A1 + R1 11 Ω; V1 across R1',
      ['B1 0→5.5', 'A1 5.5→5.5', 'R1 5.5→0', 'V1 5.5→0 still'],
    ],
    [
      'a supply that is being charged drops',
      'B1 6 V + B2 2 V reversed + R1 8 Ω',
      ['B1 0→6', 'B2 6→4', 'R1 4→0'],
    ],
    [
      'an open switch takes the whole drop, and nothing flows',
      'B1 6 V + S1 open + R1 12 Ω',
      ['B1 0→6', 'S1 6→0 still', 'R1 0→0 still'],
    ],
    [
      'a constant current lifts as far as it must',
      'I1 0.5 A + B1 9 V reversed + R1 12 Ω',
      ['I1 0→15', 'B1 15→6', 'R1 6→0'],
    ],
    [
      'what is joined to nothing has no height',
      'B1 6 V + V1 + V2 + R3 3 Ω',
      ['B1 0→6', 'V1 none still', 'V2 none still', 'R3 0→0 still'],
    ],
    ['a fault leaves no height at all', 'B1 6 V + A1', ['B1 none', 'A1 none still']],
  ] as const)
    it(what, () => {
      expect(heights(line)).to.deep.equal(steps);
    });

  it('is heard with its p.d. and both heights, in the course’s figures and with its decimal sign', () => {
    expect(spoken('B1 6 V r 1 Ω + A1 + R1 11 Ω', '2 comma')).to.deep.equal([
      'B1: a lift of 5,5 volts, from 0 volts to 5,5 volts',
      'A1: no drop, at 5,5 volts',
      'R1: a drop of 5,5 volts, from 5,5 volts to 0 volts',
    ]);
    expect(spoken('B1 6 mV + R1 11 Ω')[1]).to.equal(
      'R1: a drop of 6.00 millivolts, from 6.00 millivolts to 0 volts',
    );
  });

  it('is heard with the reason where it has no height', () => {
    expect(spoken('B1 6 V + V1 + V2 + R3 3 Ω')[1]).to.equal('V1: no steady reading');
  });
});

describe('how far the heights of a board reach', () => {
  it('is from 0 as far as sliders and switches take it, so that the axis need not grow', () => {
    expect(reachOf(momentOf('B1 6 V + R1 12 Ω'), undefined)).to.deep.equal([0, 6]);
    expect(reachOf(momentOf('B1 [0..12] 6 V + R1 12 Ω'), undefined)).to.deep.equal([0, 12]);
    expect(reachOf(momentOf('B1 [-6..6] 6 V + R1 12 Ω'), undefined)).to.deep.equal([-6, 6]);
  });

  it('is never less than it was, and more where the board goes beyond', () => {
    const store = storeOf('B1 6 V + R1 12 Ω');
    expect(reachOf(momentIn(store), [-1, 2])).to.deep.equal([-1, 6]);
    store.set('B1', '9');
    expect(reachOf(momentIn(store), [-1, 6])).to.deep.equal([-1, 9]);
    store.set('B1', '3');
    expect(reachOf(momentIn(store), [-1, 9])).to.deep.equal([-1, 9]);
  });

  it('counts below 0 where a node lies below the mark of 0 V', () => {
    expect(reachOf(momentOf('B1 9 V + R1 4 Ω + @q + R2 5 Ω; 0 V @q'), undefined)).to.deep.equal([-5, 4]);
  });
});
