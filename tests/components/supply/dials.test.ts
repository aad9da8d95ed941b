import { expect } from '@open-wc/testing';
import { isSupply, parseCircuit, withValue, type Circuit } from '../../../src/engine/index.ts';
import { dialsOf } from '../../../src/components/supply/dials.ts';

/** The dials of the only supply of a circuit: its letter, where it stands, and from where to where it goes, in which steps. */
function dials(
  line: string,
  turns = '',
  turned: (circuit: Circuit) => Circuit = (same) => same,
): readonly string[] {
  const start = parseCircuit(line);
  const [first, now] = [start, turned(start)].map(({ components }) => components.find(isSupply));
  if (!first || !now) throw new Error(line);
  return dialsOf(now, first, turns).map(({ letter, quantity, range: { min, max, step } }) => {
    const [at, low, high, by] = [quantity, min, max, step].map((each) => each?.value.toFraction() ?? 'none');
    return `${letter} ${at}: ${low} to ${high} by ${by}`;
  });
}

describe('what of a supply is turned', () => {
  for (const [line, turns, expected] of [
    ['B1 6 V + R1 12 Ω', '', ['E 6: 0 to 20 by 1', 'r 0: 0 to 5 by 1/5']],
    ['B1 [0..12] 6 V + R1 12 Ω', '', ['E 6: 0 to 12 by 1/2']],
    ['B1 6 V r [0..2] 1 Ω + R1 12 Ω', '', ['r 1: 0 to 2 by 1/10']],
    ['B1 [0..12] 6 V r [0..2] 1 Ω + R1 12 Ω', '', ['E 6: 0 to 12 by 1/2', 'r 1: 0 to 2 by 1/10']],
    ['B1 6 V r 1 Ω + R1 12 Ω', 'r', ['r 1: 0 to 2 by 1/10']],
    ['B1 [0..12] 6 V + R1 12 Ω', 'r', ['r 0: 0 to 5 by 1/5']],
    ['B1 [0..12] 6 V + R1 12 Ω', ' r  E ', ['E 6: 0 to 12 by 1/2', 'r 0: 0 to 5 by 1/5']],
    ['B1 [0..12] 6 V + R1 12 Ω', 'R e', ['E 6: 0 to 12 by 1/2']],
    ['I1 0.5 A + R1 12 Ω', '', ['I 1/2: 0 to 1 by 1/20']],
    ['I1 [0..2] 0.5 A + R1 12 Ω', 'E r', ['I 1/2: 0 to 2 by 1/10']],
  ] as const)
    it(`${line}${turns && `, asked for “${turns}”`}: ${expected.join('; ')}`, () => {
      expect(dials(line, turns)).to.deep.equal(expected);
    });

  it('goes as far as at the start, however it is turned, where the circuit states no range', () => {
    expect(dials('B1 6 V + R1 12 Ω', 'E', (circuit) => withValue(circuit, 'B1', '19'))).to.deep.equal([
      'E 19: 0 to 20 by 1',
    ]);
    expect(dials('B1 6 V r 1 Ω + R1 12 Ω', 'r', (circuit) => withValue(circuit, 'B1', 'r 2'))).to.deep.equal([
      'r 2: 0 to 2 by 1/10',
    ]);
    expect(dials('I1 0.5 A + R1 12 Ω', '', (circuit) => withValue(circuit, 'I1', '0.9'))).to.deep.equal([
      'I 9/10: 0 to 1 by 1/20',
    ]);
  });

  it('is told to be hidden where the pupil is to find it', () => {
    const [supply] = parseCircuit('B1 6 V hidden + R1 12 Ω').components.filter(isSupply);
    expect(supply && dialsOf(supply, supply, '').map(({ hidden }) => hidden)).to.deep.equal([true, true]);
  });
});
