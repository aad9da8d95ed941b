import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { sideways } from '../../../src/components/levels/sideways.ts';

const label = fc.string({ unit: fc.constantFrom('R', 'L', '1', '2', 'x'), minLength: 1, maxLength: 16 });
const labels = fc.array(label, { minLength: 1, maxLength: 24 });
const room = fc.integer({ min: 240, max: 1600 });

/** The least that the texts of a label need. */
const need = ({ length }: string): number => Math.max(62, length * 9.5);

describe('the columns of a level diagram', () => {
  it('stand evenly, from left to right', () => {
    fc.assert(
      fc.property(labels, room, (all, pixels) => {
        const { left, column, places, width } = sideways(all, pixels);
        expect(places.length).to.equal(all.length);
        places.forEach(({ x }, place) => expect(x).to.be.closeTo(left + (place + 0.5) * column, 1e-9));
        expect(places.at(-1)!.x + column / 2).to.be.below(width);
      }),
    );
  });

  it('take no more room than there is, as long as each has 20 pixels', () => {
    fc.assert(
      fc.property(labels, room, (all, pixels) => {
        const { left, column, width } = sideways(all, pixels);
        expect(column).to.be.at.least(20);
        if (left + 8 + all.length * 20 <= pixels) expect(width).to.be.at.most(pixels + 1e-9);
        else expect(column).to.equal(20);
      }),
    );
  });

  it('have texts that lie on no other, and inside the picture', () => {
    fc.assert(
      fc.property(labels, room, (all, pixels) => {
        const { places, width, rows } = sideways(all, pixels);
        const texts = places.map(({ middle, row }, place) => {
          const half = need(all[place]!) / 2;
          return { from: middle - half, to: middle + half, row };
        });
        for (const { from, to, row } of texts) {
          expect(row).to.be.within(0, rows - 1);
          expect(from).to.be.at.least(-1e-9);
          expect(to).to.be.at.most(Math.max(width, to - from) + 1e-9);
          const others = texts.filter((each) => each.row === row && each.from !== from);
          for (const other of others) expect(other.to <= from || other.from >= to).to.equal(true);
        }
      }),
    );
  });

  it('stand side by side in one row where there is room, or none is known', () => {
    fc.assert(
      fc.property(labels, (all) => {
        for (const pixels of [0, 60 + all.length * Math.max(...all.map(need))]) {
          const { column, rows, places } = sideways(all, pixels);
          expect(rows).to.equal(1);
          expect(column).to.equal(Math.max(...all.map(need)));
          for (const { x, middle } of places) expect(middle).to.equal(x);
        }
      }),
    );
  });

  it('do not move for the length of what another circuit of the same labels reads', () => {
    expect(sideways(['B1', 'R1'], 300)).to.deep.equal(sideways(['B2', 'L9'], 300));
  });
});
