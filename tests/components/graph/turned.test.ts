import { expect } from '@open-wc/testing';
import { turnedOf } from '../../../src/components/graph/turned.ts';
import { parseCircuit, say } from '../../../src/engine/index.ts';

const told = (line: string, against = ''): string => {
  const circuit = parseCircuit(line);
  const turned = turnedOf(circuit, circuit, against);
  return 'code' in turned
    ? say(turned)
    : `${turned.what} ${turned.name} ${Number(turned.range.min.value)}..${Number(turned.range.max.value)}`;
};

describe('what a graph goes along', () => {
  const cases: readonly (readonly [line: string, against: string, expected: string])[] = [
    ['B1 6 V + R1 [4..40] 12 Ω', '', 'R1 R_R1 4..40'],
    ['B1 6 V + R1 [4..40] 12 Ω', 'R_R1', 'R1 R_R1 4..40'],
    ['B1 6 V + R1 [4..40] 12 Ω', 'B1', 'B1 E_B1 0..20'],
    ['B1 6 V + R1 [4..40] 12 Ω', 'r_B1', 'r_B1 r_B1 0..5'],
    ['B1 [0..9] 6 V + R1 12 Ω', '', 'B1 E_B1 0..9'],
    ['B1 6 V + R1 12 Ω + T1 10 kΩ', '', 'temperature temperature -40..125'],
    ['B1 6 V + R1 [4..40] 12 Ω + R2 [1..9] 3 Ω', '', 'Say what is turned, by against="…": R1 or R2.'],
    ['B1 6 V + R1 12 Ω', 'R1', 'R1 has no range to be turned through; write one, such as R1 [4..40] 12 Ω.'],
    ['B1 6 V + R1 12 Ω', '', 'Say what is turned, by against="…": B1 or r_B1.'],
    ['B1 6 V + R1 [4..40] 12 Ω', 'R7', 'R7 cannot be turned here. Say what is turned, by against="…": R1.'],
    ['B1 6 V + R1 [4..40] 12 Ω hidden', 'r_B1', 'r_B1 r_B1 0..5'],
    [
      'R1 12 Ω + R2 3 Ω',
      '',
      'Nothing in this circuit can be turned; write a range, such as R1 [4..40] 12 Ω.',
    ],
  ];
  for (const [line, against, expected] of cases)
    it(`${line}, against “${against}”`, () => expect(told(line, against)).to.equal(expected));

  it('never what is kept from the pupil', () => {
    expect(told('B1 6 V + R1 [4..40] 12 Ω hidden', 'R_R1')).to.match(/^R_R1 cannot be turned here/);
  });

  it('a supply without a stated range keeps the one of the start, so that no turn moves its ends', () => {
    const start = parseCircuit('B1 6 V + R1 12 Ω');
    const now = parseCircuit('B1 15 V + R1 12 Ω');
    const turned = turnedOf(now, start, 'B1');
    if ('code' in turned) throw new Error(turned.code);
    expect(turned.range.max.value.valueOf()).to.equal(20);
    expect(turned.now.value.valueOf()).to.equal(15);
  });
});
