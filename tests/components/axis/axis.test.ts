import { expect } from '@open-wc/testing';
import fc from 'fast-check';
import { usualCourse } from '../../../src/engine/index.ts';
import { axisOver, both } from '../../../src/components/axis/index.ts';

const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
const end = fc.oneof(
  fc.constant(0),
  size,
  size.map((value) => -value),
);
const reach = fc.tuple(end, end).map(([a, b]) => [Math.min(a, b), Math.max(a, b)] as const);
const texts = (low: number, high: number, most: number): string[] =>
  axisOver([low, high], most, 'V', usualCourse).marks.map(({ text }) => text);

describe('an axis', () => {
  it('reaches as far as it must, and no step further', () => {
    fc.assert(
      fc.property(reach, fc.integer({ min: 2, max: 9 }), ([low, high], most) => {
        const axis = axisOver([low, high], most, 'V', usualCourse);
        const { marks } = axis;
        const step = (axis.high - axis.low) / (marks.length - 1);
        const slack = step * 1e-6;
        expect(axis.low).to.be.at.most(low + slack);
        expect(axis.high).to.be.at.least(high - slack);
        expect(axis.low).to.be.above(low - step);
        expect(axis.high).to.be.at.most(Math.max(high, axis.low) + step + slack);
        expect(marks.length).to.be.within(2, most + 3);
        expect([marks[0]!.value, marks.at(-1)!.value]).to.deep.equal([axis.low, axis.high]);
      }),
    );
  });

  it('has steps of 1, 2 or 5 times a power of ten, all equal, and texts that are the values', () => {
    fc.assert(
      fc.property(reach, ([low, high]) => {
        const { marks, prefix } = axisOver([low, high], 5, 'V', usualCourse);
        const power = { p: -12, n: -9, µ: -6, m: -3, '': 0, k: 3, M: 6, G: 9 }[prefix];
        const steps = marks.slice(1).map(({ value }, place) => value - marks[place]!.value);
        for (const each of steps) expect(each).to.be.closeTo(steps[0]!, Math.abs(each) * 1e-6 + 1e-12);
        expect(Number(steps[0]!.toPrecision(6)).toExponential()).to.match(/^[125]e/);
        for (const { value, text } of marks)
          expect(Number(text.replace('−', '-')) * 10 ** power).to.be.closeTo(value, Math.abs(value) * 1e-9);
      }),
    );
  });

  for (const [low, high, most, wanted] of [
    [0, 6, 5, '0 2 4 6'],
    [0, 0.3, 5, '0.0 0.1 0.2 0.3'],
    [-3, 9, 5, '−5 0 5 10'],
    [0, 0, 5, '0.0 0.2'],
    [6, 6, 5, '6.0 6.2'],
    [0, 0.004, 5, '0 1 2 3 4'],
    [0, 4700, 5, '0 1 2 3 4 5'],
  ] as const)
    it(`from ${low} to ${high}: ${wanted}`, () => {
      expect(texts(low, high, most).join(' ')).to.equal(wanted);
    });

  it('reaches as far as both', () => {
    expect(both([0, 3], [-1, 2])).to.deep.equal([-1, 3]);
  });
});
