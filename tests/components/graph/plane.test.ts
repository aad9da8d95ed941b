import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { axisOver, decadesOver } from '../../../src/components/axis/index.ts';
import { apart, pathOf, planeOf } from '../../../src/components/graph/plane.ts';
import { usualCourse } from '../../../src/engine/index.ts';

const up = axisOver([0, 2], 5, 'A', usualCourse);
const room = fc.integer({ min: 0, max: 2000 });

describe('the plane of a graph', () => {
  it('gives back the value that stands at a place, on either kind of axis', () => {
    fc.assert(
      fc.property(
        room,
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.boolean(),
        (width, share, logarithmic) => {
          const along = logarithmic ? decadesOver([1, 10_000], 'Ω') : axisOver([0, 40], 8, 'Ω', usualCourse);
          const plane = planeOf(along, up, logarithmic, width);
          const value = logarithmic ? 10_000 ** share : 40 * share;
          const near = logarithmic ? value * 0.01 + 1e-9 : 40 * 0.001;
          expect(plane.valueAt(plane.x(value))).to.be.closeTo(value, near);
        },
      ),
    );
  });

  it('lies inside its picture, which is as wide as there is room, within bounds', () => {
    fc.assert(
      fc.property(room, (width) => {
        const along = axisOver([0, 40], 8, 'Ω', usualCourse);
        const plane = planeOf(along, up, false, width);
        expect(plane.width).to.equal(width === 0 ? 640 : Math.min(Math.max(width, 240), 640));
        expect([plane.x(0), plane.x(40)]).to.deep.equal([plane.left, plane.right]);
        expect([plane.y(0), plane.y(up.high)]).to.deep.equal([plane.bottom, plane.top]);
        expect(plane.right).to.be.below(plane.width);
        expect(plane.valueAt(-1e6)).to.equal(0);
        expect(plane.valueAt(1e6)).to.equal(40);
      }),
    );
  });

  it('a curve has a gap where it has no value', () => {
    const plane = planeOf(axisOver([0, 40], 8, 'Ω', usualCourse), up, false, 400);
    const path = pathOf([0, 10, 20, 30, 40], [undefined, 1, 2, undefined, 1], plane);
    expect(path.match(/[ML]/g)?.join('')).to.equal('MLM');
    expect(pathOf([0, 10], [undefined, undefined], plane)).to.equal('');
  });
});

describe('the names beside curves', () => {
  const heights = fc.array(fc.integer({ min: 10, max: 290 }), { minLength: 1, maxLength: 8 });
  it('stand apart and above the foot, each in the order of its curve, and stay where they have room', () => {
    fc.assert(
      fc.property(heights, (all) => {
        const placed = apart(all, 16, 290);
        const order = [...all.keys()].sort((a, b) => all[a]! - all[b]!);
        const sorted = order.map((place) => placed[place]!);
        for (const [k, height] of sorted.entries())
          if (k > 0) expect(height - sorted[k - 1]!).to.be.at.least(16);
        expect(Math.max(...placed)).to.be.at.most(290);
        const free = order.every((place, k) => k === 0 || all[place]! - all[order[k - 1]!]! >= 16);
        if (free) expect(placed).to.deep.equal(all);
      }),
    );
  });
});

describe('an axis of powers of ten', () => {
  const texts = (low: number, high: number, unit: 'Ω' | 'lx'): string[] =>
    decadesOver([low, high], unit).marks.map(({ text }) => text);
  it('reaches from one power to another, with prefixes as on a component', () => {
    expect(texts(1, 1e6, 'Ω')).to.deep.equal(['1', '10', '100', '1k', '10k', '100k', '1M']);
    expect(texts(0.1, 100_000, 'lx')).to.deep.equal(['0.1', '1', '10', '100', '1000', '10000', '100000']);
    expect(texts(15, 900, 'Ω')).to.deep.equal(['10', '100', '1k']);
    expect(texts(10, 10, 'Ω')).to.deep.equal(['10', '100']);
  });
  it('covers what it is asked for', () => {
    const end = fc.double({ min: 1e-6, max: 1e9, noNaN: true });
    fc.assert(
      fc.property(end, end, (a, b) => {
        const [low, high] = [Math.min(a, b), Math.max(a, b)];
        const axis = decadesOver([low, high], 'Ω');
        expect(axis.low).to.be.at.most(low * (1 + 1e-6));
        expect(axis.high).to.be.at.least(high * (1 - 1e-6));
        expect(axis.marks.length).to.equal(Math.round(Math.log10(axis.high / axis.low)) + 1);
      }),
    );
  });
});
